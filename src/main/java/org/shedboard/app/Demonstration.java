package org.shedboard.app;

import java.nio.file.Path;
import java.util.Map;
import org.shedboard.app.command.CannotDo;
import org.shedboard.day.Setup;
import org.shedboard.estimate.Catalogue;
import org.shedboard.files.Seed;
import org.shedboard.store.Address;
import org.shedboard.store.Store;
import org.shedboard.store.StoreFailure;

/** The demonstration shop. */
final class Demonstration {
    private Demonstration() {}

    /** Where the demonstration inside this home is; made when there is none yet. */
    static Address ready(Path home) {
        Address place = new Address.InHome(Homes.demonstration(home));
        if (!Store.exists(place)) {
            Catalogue catalogue = Seed.catalogue();
            Setup setup = Seed.shop(catalogue);
            makeUnlessThere(place, catalogue, setup);
        }
        return place;
    }

    /** Another program may have made it meanwhile. */
    private static void makeUnlessThere(Address place, Catalogue catalogue, Setup setup) {
        try {
            Workshop.make(place, catalogue, setup);
        } catch (StoreFailure failure) {
            if (failure.kind() != StoreFailure.Kind.SHOP_EXISTS) {
                throw failure;
            }
        }
    }

    /** As {@link #ready}, but made anew. Whatever else stands in its place is left alone. */
    static Address fresh(Path home) {
        Path place = Homes.demonstration(home);
        if (Store.exists(place)) {
            expectDemonstration(place);
            Store.remove(place);
            new DraftFile(place).keep(Map.of());
        }
        return ready(home);
    }

    private static void expectDemonstration(Path place) {
        try (Store store = Store.open(place)) {
            if (!store.read(ShopClock::isDemonstration)) {
                throw new CannotDo("command.demo.not_one", place);
            }
            if (!store.isOwner()) {
                throw new CannotDo("command.demo.in_use", place);
            }
        }
    }
}
