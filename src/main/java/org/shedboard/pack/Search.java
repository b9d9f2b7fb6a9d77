package org.shedboard.pack;

/** How long to look for a better plan, and by which chances: the same search of the same problem ends in the same plan. */
public record Search(long seed, long tries) {
    public Search {
        if (tries < 0) {
            throw new IllegalArgumentException("tries cannot be negative: " + tries);
        }
    }

    public static Search of(long seed, long tries) {
        return new Search(seed, tries);
    }
}
