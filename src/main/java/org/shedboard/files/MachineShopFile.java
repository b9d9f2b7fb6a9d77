package org.shedboard.files;

import java.util.List;
import java.util.Optional;
import org.shedboard.pack.Problem;
import org.shedboard.pack.fault.Fault;

/**
 * A published shop problem of either kind. They are told apart by counting: a job shop of n jobs and m machines has exactly n × m
 * pairs after its first two numbers, a flexible one as many as its own counts say. A text that is both is refused.
 */
public final class MachineShopFile {
    private MachineShopFile() {}

    /** The shop as a packing problem whose cost is the makespan, or what is wrong with its text. */
    public static Reading<Problem> read(String text) {
        Reading<Problem> jobShop = JobShopFile.read(text);
        Reading<Problem> flexible = FlexibleShopFile.read(text);
        if (jobShop.value().isPresent() && flexible.value().isPresent()) {
            return refused(new Fault("the file", "can be read as a job shop and as a flexible one"));
        }
        if (jobShop.value().isPresent() || flexible.value().isPresent()) {
            return jobShop.value().isPresent() ? jobShop : flexible;
        }
        return hasCountOfJobShop(text)
                ? jobShop
                : neither(jobShop.faults().get(0), flexible.faults().get(0));
    }

    private static boolean hasCountOfJobShop(String text) {
        NumberText numbers = NumberText.of(text);
        try {
            long jobs = numbers.next("the number of jobs", 1, MachineShop.MOST);
            return numbers.count() == 2 + 2 * jobs * numbers.next("the number of machines", 1, MachineShop.MOST);
        } catch (NumberText.Unread unread) {
            return false;
        }
    }

    private static Reading<Problem> neither(Fault asJobShop, Fault asFlexible) {
        if (asJobShop.equals(asFlexible)) {
            return refused(asJobShop);
        }
        return refused(
                new Fault(asJobShop.where(), "as a job shop: " + asJobShop.what()),
                new Fault(asFlexible.where(), "as a flexible job shop: " + asFlexible.what()));
    }

    private static Reading<Problem> refused(Fault... faults) {
        return new Reading<>(Optional.empty(), List.of(faults));
    }
}
