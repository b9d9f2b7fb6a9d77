package org.shedboard.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.shedboard.store.Samples.STAMP;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.testing.PostgresServer;
import org.shedboard.testing.Records;

/** A shop taken from its file over into PostgreSQL. */
class MovingTest {
    @TempDir
    private Path home;

    private Address file;
    private Address.AtDatabase database;

    @BeforeEach
    void fill() {
        PostgresServer.demand();
        file = new Address.InHome(home);
        database = Records.onPostgres(home);
        try (Store store = Store.create(file)) {
            WholeShop.save(store);
        }
    }

    private static Map<String, String> digests(Address address) {
        Link link = Door.to(address, new Schema(Migration.all()), Intent.WORK).enter();
        try {
            return link.read(sql -> Tables.of(sql).digests(sql));
        } finally {
            link.close();
        }
    }

    @Test
    void every_row_of_every_table_arrives_and_what_it_came_from_stays_as_it_was() {
        Map<String, String> before = digests(file);
        List<Moved> moved = Store.move(file, database);
        assertEquals(before, digests(file));
        assertEquals(before, digests(database));
        assertEquals(
                before,
                moved.stream().collect(Collectors.toMap(Moved::table, each -> each.rows() + ":" + each.digest())));
        assertTrue(
                moved.stream().allMatch(each -> each.rows() > 0),
                () -> "the test would not see it if one of these were left out: " + moved);
    }

    @Test
    void the_work_goes_on_there() {
        Store.move(file, database);
        try (Store store = Store.open(database)) {
            long last = store.read(Reader::lastJournal);
            store.save(STAMP, "goes on", tx -> tx.saveSetting("where", "there"));
            assertEquals(last + 1, store.read(Reader::lastJournal));
        }
        try (Store store = Store.open(file)) {
            assertEquals(Optional.empty(), store.read(reader -> reader.setting("where")));
        }
    }

    @Test
    void a_shop_goes_from_one_database_over_to_another() {
        Store.move(file, database);
        Address.AtDatabase other = new Address.AtDatabase(home, PostgresServer.urlOfNew());
        Store.move(database, other);
        assertEquals(digests(database), digests(other));
    }

    @Test
    void a_shop_is_never_put_over_another() {
        try (Store other = Store.create(database)) {
            other.save(STAMP, "other", tx -> tx.saveSetting("whose", "another's"));
        }
        StoreFailure failure = assertThrows(StoreFailure.class, () -> Store.move(file, database));
        assertEquals(StoreFailure.Kind.SHOP_EXISTS, failure.kind());
        try (Store other = Store.open(database)) {
            assertEquals(Optional.of("another's"), other.read(reader -> reader.setting("whose")));
        }
    }

    @Test
    void what_fails_on_the_way_leaves_nothing() {
        try (Store store = Store.open(file)) {
            store.save(STAMP, "no letter to PostgreSQL", tx -> tx.saveSetting("zero", "\u0000"));
        }
        assertThrows(StoreFailure.class, () -> Store.move(file, database));
        assertFalse(Store.exists(database));
        assertFalse(Store.shops(database).containsValue(database));
    }

    @Test
    void a_moved_shop_is_among_those_of_its_database() {
        Store.move(file, database);
        String schema = DatabaseUrl.parse(database.url()).schema();
        assertEquals(database, Store.shops(database).get(schema));
    }
}
