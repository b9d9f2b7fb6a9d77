package org.shedboard.pack.search;

import org.shedboard.pack.numbers.Chance;

/** Says which jobs of a plan have most to gain, and picks one of them by chance. */
final class Excess {
    private final Outlook outlook;
    private final Chance chance;
    /** The jobs to pick from. */
    private final int[] jobs;

    Excess(Outlook outlook, Chance chance, int[] jobs) {
        this.outlook = outlook;
        this.chance = chance;
        this.jobs = jobs;
    }

    /** Of so many jobs picked at random the one that costs most more than it would alone in the shop, by the minutes they finish. */
    int pick(int[] finish, int picked) {
        int best = jobs[chance.below(jobs.length)];
        for (int more = 1; more < picked; more++) {
            int other = jobs[chance.below(jobs.length)];
            best = isMore(other, best, finish) ? other : best;
        }
        return best;
    }

    private boolean isMore(int job, int than, int[] finish) {
        long difference = of(job, finish[job]) - of(than, finish[than]);
        return difference > 0 || (difference == 0 && finish[job] > finish[than]);
    }

    private long of(int job, int finish) {
        return outlook.points(job, finish) - outlook.points(job, outlook.finish[job]);
    }
}
