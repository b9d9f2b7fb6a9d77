package org.shedboard.estimate;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Step;

/**
 * A finished visit as another record tells it: what was done, and the minutes it took.
 *
 * @param minutes worked minutes of each step
 * @param people id of who worked on each step
 */
public record PastVisit(
        LocalDate date,
        String machineId,
        Mud mud,
        Depth depth,
        List<String> workIds,
        Map<Step, Integer> minutes,
        Map<Step, String> people) {}
