package org.shedboard.app;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Properties;
import org.postgresql.Driver;
import org.shedboard.day.Setup;
import org.shedboard.estimate.Catalogue;
import org.shedboard.files.Seed;
import org.shedboard.store.Address;
import org.shedboard.store.Store;
import org.shedboard.testing.PostgresServer;

/**
 * Prints what it costs to have many shops in one PostgreSQL database, made for the occasion: how long the newest takes to make, to open
 * and to read its day, how large the database is, and how long it takes to ask all of them. Run by hand; an argument says how many.
 */
public final class ShopsCount {
    private static final int STEP = 25;

    private final String url = PostgresServer.urlOfNew();
    private final Catalogue catalogue = Seed.catalogue();

    private ShopsCount() {}

    public static void main(String[] arguments) throws SQLException {
        int shops = Integer.parseInt(arguments[0]);
        ShopsCount count = new ShopsCount();
        for (int i = 1; i <= shops; i++) {
            count.add(i, i == 1 || i % STEP == 0);
        }
    }

    private void add(int index, boolean isTold) throws SQLException {
        Address.AtDatabase shop = new Address.AtDatabase(Path.of("."), url + "&currentSchema=shop" + index);
        // its PINs are wiped once they are kept, so that each needs its own
        Setup setup = Seed.shop(catalogue);
        double make = millis(() -> Workshop.make(shop, catalogue, setup));
        double open = millis(() -> read(shop));
        if (isTold) {
            List<Double> all = new ArrayList<>();
            Store.shops(shop).values().forEach(each -> all.add(millis(() -> read(each))));
            System.out.printf(
                    Locale.ROOT,
                    "%4d shops, %6.1f MB: made in %.0f ms, opened and read in %.0f ms; all of them read in %.1f s%n",
                    index,
                    megabytes(),
                    make,
                    open,
                    all.stream().mapToDouble(Double::doubleValue).sum() / 1000);
        }
    }

    private static void read(Address shop) {
        try (Workshop workshop = Workshop.open(shop, "count", Optional.empty())) {
            workshop.day();
        }
    }

    private static double millis(Runnable work) {
        long begun = System.nanoTime();
        work.run();
        return (System.nanoTime() - begun) / 1e6;
    }

    private double megabytes() throws SQLException {
        try (Connection connection = new Driver().connect(url, new Properties());
                Statement statement = connection.createStatement();
                ResultSet size = statement.executeQuery("SELECT pg_database_size(current_database())")) {
            size.next();
            return size.getLong(1) / 1e6;
        }
    }
}
