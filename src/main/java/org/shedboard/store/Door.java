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
        if (address instanceof Address.AtDatabase at) {
            return DatabaseSteps.hasShop(DatabaseUrl.parse(at.url()));
        }
        return !(address instanceof Address.InHome in) || Home.at(in.home()).hasShop();
    }

    /** The door to that address, for whoever comes with this intent; fails where a home has no records and none may be made. */
    static Door to(Address address, Schema schema, Intent intent) {
        if (address instanceof Address.InHome in) {
            return HomeDoor.to(Home.at(in.home()), schema, intent);
        }
        if (address instanceof Address.AtServer server) {
            return ServerDoor.to(server, schema, intent);
        }
        return DatabaseDoor.to(DatabaseUrl.parse(((Address.AtDatabase) address).url()), schema, intent);
    }

    /** Between two tries. */
    static void pause(int millis) {
        try {
            Thread.sleep(millis);
        } catch (InterruptedException interrupt) {
            Thread.currentThread().interrupt();
            throw new StoreFailure(
                    StoreFailure.Kind.UNREACHABLE, "interrupted while waiting for the records", interrupt);
        }
    }
}
