package org.shedboard.files;

import org.shedboard.pack.Problem;
import org.shedboard.pack.fault.ProblemCheck;

/**
 * The usual text of a job shop: the number of jobs and of machines, then for each job as many pairs of machine, counted from 0,
 * and minutes as there are machines, in the order of the operations. Line ends mean nothing.
 */
public final class JobShopFile {
    private JobShopFile() {}

    /** The shop as a packing problem whose cost is the makespan, or the first fault of its text. */
    public static Reading<Problem> read(String text) {
        return NumberText.read(text, JobShopFile::shop);
    }

    private static Problem shop(NumberText numbers) throws NumberText.Unread {
        int jobs = numbers.next("the number of jobs", 1, MachineShop.MOST);
        int machines = numbers.next("the number of machines", 1, MachineShop.MOST);
        MachineShop shop = new MachineShop(machines);
        for (int job = 0; job < jobs; job++) {
            for (int operation = 0; operation < machines; operation++) {
                int machine = numbers.next("a machine", 0, machines - 1);
                shop.operation(machine, numbers.next("the minutes", 1, ProblemCheck.LARGEST));
            }
            shop.endJob();
        }
        numbers.end();
        return shop.problem();
    }
}
