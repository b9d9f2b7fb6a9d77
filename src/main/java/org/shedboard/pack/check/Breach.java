package org.shedboard.pack.check;

/** One rule a plan breaks, and where. {@code stay} is -1 and {@code task} empty where the whole job or plan is meant. */
public record Breach(Rule rule, String job, int stay, String task, String what) {
    static Breach of(Rule rule, String job, String what) {
        return new Breach(rule, job, -1, "", what);
    }

    @Override
    public String toString() {
        String where = (job + (stay < 0 ? "" : " stay " + stay) + " " + task).strip();
        return rule + (where.isEmpty() ? "" : " " + where) + ": " + what;
    }
}
