package org.shedboard.pack.story;

import java.util.List;

/**
 * One link of a chain of whys: a task, and the reasons it does not start earlier. The link after it is about what one of those
 * reasons waits for.
 *
 * @param stay the stay's place in the job
 * @param start the minute at which the plan has it
 */
public record Link(String job, int stay, String task, int start, List<Reason> reasons) {
    public Link {
        reasons = List.copyOf(reasons);
    }
}
