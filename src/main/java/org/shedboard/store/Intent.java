package org.shedboard.store;

/** With what intent somebody comes to records. */
enum Intent {
    /** To read them as they are: older ones are not brought forward. */
    LOOK,
    /** To change them; they have to be there. */
    WORK,
    /** To change them, and to make them where there are none. */
    MAKE;

    boolean mayMake() {
        return this == MAKE;
    }

    /** For whoever comes again, to records that were there. */
    Intent again() {
        return this == MAKE ? WORK : this;
    }

    /** Fails for whoever only looks at records that lack a step of the schema. */
    void expectToBringForward(int lacking) {
        if (this == LOOK) {
            throw new StoreFailure(
                    StoreFailure.Kind.OLDER,
                    "these records are of an older program (they lack schema step %s); start shedboard once to bring them forward"
                            .formatted(Integer.toString(lacking)));
        }
    }
}
