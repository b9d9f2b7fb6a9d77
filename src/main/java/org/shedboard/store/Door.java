package org.shedboard.store;

/** The way in to the records at an address. */
interface Door {
    /** A way to the records, new each time; fails with a sentence when there is none. */
    Link enter();

    /** As {@link #enter}, for somebody who would rather wait for a while than be told that there is no way just now. */
    default Link enterPatiently() {
        return enter();
    }

    /** What was erased from the records is to leave no trace where they are kept either. */
    void compactWhenClosed();

    /** Whether there are records behind the door, as far as can be known without opening it. */
    static boolean hasShop(Address address) {
        return !(address instanceof Address.InHome in) || Home.at(in.home()).hasShop();
    }

    /** @param mayMake whether records are made where there are none; otherwise their absence is a failure */
    static Door to(Address address, Schema schema, boolean mayMake) {
        if (address instanceof Address.InHome in) {
            return HomeDoor.to(Home.at(in.home()), schema, mayMake);
        }
        if (address instanceof Address.AtServer server) {
            return ServerDoor.to(server, schema, mayMake);
        }
        throw new StoreFailure(
                StoreFailure.Kind.OTHER, "records cannot be kept in a database server yet; leave out --db");
    }
}
