package org.shedboard.app;

import java.io.InputStream;
import java.time.LocalDate;
import java.time.Year;
import java.util.List;
import java.util.Optional;
import org.shedboard.app.command.Answer;
import org.shedboard.app.command.CannotDo;
import org.shedboard.app.command.Loaded;
import org.shedboard.day.Beginning;
import org.shedboard.day.Day;
import org.shedboard.day.Setup;
import org.shedboard.day.Signer;
import org.shedboard.estimate.Catalogue;
import org.shedboard.files.CatalogueFile;
import org.shedboard.files.FileKind;
import org.shedboard.files.Reading;
import org.shedboard.files.Seed;
import org.shedboard.files.ShopFile;
import org.shedboard.pack.fault.Fault;
import org.shedboard.store.Address;
import org.shedboard.store.Store;

/** Loads a file at an address: a catalogue for its shop, or a shop where there is none. All of it or nothing. */
final class Loading {
    private final Workshops workshops;
    private final Address address;
    private final PinReader reader;

    Loading(Workshops workshops, PinReader reader) {
        this.workshops = workshops;
        this.address = workshops.place();
        this.reader = reader;
    }

    /** @param by the name of who signs for a catalogue, where one is given */
    Answer load(String text, Optional<String> by) {
        workshops.expectToWork();
        return switch (FileKind.of(text)) {
            case CATALOGUE -> catalogue(text, by);
            case SHOP -> shop(text);
            case OTHER -> throw new CannotDo("command.load.neither");
        };
    }

    /** What {@code export} wrote. */
    Answer records(InputStream in) {
        workshops.expectToWork();
        if (address instanceof Address.AtServer) {
            throw new CannotDo("command.load.at_server");
        }
        return Loaded.of(address.said(), Store.load(address, in));
    }

    private static <T> T expect(Reading<T> reading) {
        return reading.value().orElseThrow(() -> new BadFile(reading.faults()));
    }

    private Answer catalogue(String text, Optional<String> by) {
        try (Workshop workshop = workshops.open()) {
            Year year =
                    Year.of(LocalDate.ofInstant(workshop.now(), workshop.zone()).getYear());
            Catalogue catalogue = expect(CatalogueFile.read(text, year.plusYears(1)));
            Day day = workshop.day();
            Optional<String> signer = by.map(name -> day.shop()
                    .findPersonCalled(name)
                    .orElseThrow(() -> new CannotDo("person_unknown", name))
                    .id());
            return new SignatureReader(day, reader).signed(new Signer.Anybody(), signer, signature -> {
                workshop.replaceCatalogue(catalogue, signature);
                return Loaded.of(catalogue);
            });
        }
    }

    private Answer shop(String text) {
        if (Store.exists(address)) {
            throw new CannotDo("command.load.shop_exists", address.said());
        }
        Catalogue catalogue = Seed.catalogue();
        Setup setup = expect(ShopFile.read(text, catalogue));
        expectToBegin(catalogue, setup);
        Workshop.make(address, catalogue, setup);
        return Loaded.of(setup);
    }

    /** A morning of which one act would be refused is a fault of the file. */
    private static void expectToBegin(Catalogue catalogue, Setup setup) {
        try {
            Beginning.of(catalogue, setup, LocalDate.now(setup.shop().zone()));
        } catch (IllegalArgumentException impossible) {
            throw new BadFile(List.of(new Fault("morning", impossible.getMessage())));
        }
    }
}
