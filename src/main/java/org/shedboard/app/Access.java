package org.shedboard.app;

import org.shedboard.store.Address;
import org.shedboard.store.Store;

/** What may be done with a shop from here. */
enum Access {
    /** Everything. */
    WORK,
    /** Nothing but looking: no change gets as far as the records. */
    LOOK;

    Store open(Address address) {
        return this == LOOK ? Store.openToLook(address) : Store.open(address);
    }
}
