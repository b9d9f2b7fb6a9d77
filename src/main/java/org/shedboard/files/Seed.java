package org.shedboard.files;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Year;
import org.shedboard.day.Setup;
import org.shedboard.estimate.Catalogue;

/** The files that come inside the program: the invented catalogue, shop and history of the demonstration. */
public final class Seed {
    private Seed() {}

    /** No part of it ends with a year, which a test proves, so it is sound in whatever year it is read. */
    public static Catalogue catalogue() {
        return CatalogueFile.read(text("catalogue.json"), Year.of(PartFields.FIRST_YEAR))
                .expectValue();
    }

    /** The demonstration shop with its past visits and its morning. */
    public static Setup shop(Catalogue catalogue) {
        Setup shop = ShopFile.read(text("shop.json"), catalogue).expectValue();
        return shop.withPast(
                HistoryFile.read(text("history.json"), shop, catalogue).expectValue());
    }

    /** A seed file's text. */
    static String text(String name) {
        try (InputStream in = Seed.class.getResourceAsStream("/seed/" + name)) {
            if (in == null) {
                throw new IllegalStateException("this program was built without seed/" + name);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
