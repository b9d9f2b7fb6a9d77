package org.shedboard.app;

import java.nio.file.Path;
import org.shedboard.store.Store;

/** What may be done with a shop from here. */
enum Access {
    /** Everything. */
    WORK,
    /** Nothing but looking: no change gets as far as the records. */
    LOOK;

    Store open(Path home) {
        return this == LOOK ? Store.openToLook(home) : Store.open(home);
    }
}
