package org.shedboard.app;

import java.nio.file.Path;
import org.shedboard.app.command.CannotDo;
import org.shedboard.app.command.Globals;
import org.shedboard.store.Address;
import org.shedboard.store.Store;

/**
 * The shop that one command line means.
 *
 * @param home the home it names; the demonstration stands inside it
 */
record Workshops(Path home, Globals globals) {
    private static final String TERMINAL = "command";

    /** Where its records are; the demonstration is made when there is none yet. */
    Address place() {
        return globals.demo() ? Demonstration.ready(home) : Homes.address(home, globals);
    }

    private Access access() {
        return globals.lookOnly() ? Access.LOOK : Access.WORK;
    }

    /** Refuses what would make a shop, or make one anew, where this only looks. */
    void expectToWork() {
        if (globals.lookOnly()) {
            throw new CannotDo("look_only");
        }
    }

    /** Where its records are, or would be: nothing is made. */
    Address lookAt() {
        return globals.demo() ? new Address.InHome(Homes.demonstration(home)) : Homes.address(home, globals);
    }

    /** The shop that is there, to look at it whatever else may be done. */
    Workshop openToLook() {
        return Workshop.open(lookAt(), TERMINAL, globals.at(), Access.LOOK);
    }

    Workshop open() {
        Address place = place();
        if (!Store.exists(place)) {
            throw new CannotDo("command.no_shop", place.said());
        }
        return Workshop.open(place, TERMINAL, globals.at(), access());
    }
}
