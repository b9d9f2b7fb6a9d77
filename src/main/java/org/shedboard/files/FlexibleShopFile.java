package org.shedboard.files;

import java.util.LinkedHashMap;
import java.util.Map;
import org.shedboard.pack.Problem;
import org.shedboard.pack.fault.ProblemCheck;

/**
 * The usual text of a flexible job shop: a line with the number of jobs and of machines (and a third number, which some files
 * have and which means nothing here), then for each job the number of operations, then for each of these the number of machines
 * that can do it and as many pairs of machine, counted from 0, and minutes.
 */
public final class FlexibleShopFile {
    private FlexibleShopFile() {}

    /** The shop as a packing problem whose cost is the makespan, or the first fault of its text. */
    public static Reading<Problem> read(String text) {
        return NumberText.read(text, FlexibleShopFile::shop);
    }

    private static Problem shop(NumberText numbers) throws NumberText.Unread {
        int jobs = numbers.next("the number of jobs", 1, MachineShop.MOST);
        int machines = numbers.next("the number of machines", 1, MachineShop.MOST);
        if (numbers.countOfFirstLine() == 3) {
            numbers.skip();
        }
        MachineShop shop = new MachineShop(machines);
        for (int job = 0; job < jobs; job++) {
            int operations = numbers.next("the number of operations", 1, MachineShop.MOST);
            for (int operation = 0; operation < operations; operation++) {
                shop.operation(readAlternatives(numbers, machines));
            }
            shop.endJob();
        }
        numbers.end();
        return shop.problem();
    }

    private static Map<Integer, Integer> readAlternatives(NumberText numbers, int machines) throws NumberText.Unread {
        int count = numbers.next("the number of machines that can do it", 1, machines);
        Map<Integer, Integer> minutes = new LinkedHashMap<>();
        for (int each = 0; each < count; each++) {
            int machine = numbers.next("a machine", 0, machines - 1);
            int taken = numbers.next("the minutes", 1, ProblemCheck.LARGEST);
            minutes.merge(machine, taken, Math::min);
        }
        return minutes;
    }
}
