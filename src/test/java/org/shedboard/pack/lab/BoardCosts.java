package org.shedboard.pack.lab;

import java.time.LocalDate;
import org.shedboard.day.Beginning;
import org.shedboard.day.Day;
import org.shedboard.day.Outlook;
import org.shedboard.estimate.Catalogue;
import org.shedboard.files.Seed;
import org.shedboard.pack.Costs;

/** What the board packs by, asked of the board itself: any shop's day will do. */
final class BoardCosts {
    private BoardCosts() {}

    static Costs read() {
        Catalogue catalogue = Seed.catalogue();
        Day day = Beginning.of(catalogue, Seed.shop(catalogue), LocalDate.EPOCH).day();
        return Outlook.of(day, day.origin()).problem().costs();
    }
}
