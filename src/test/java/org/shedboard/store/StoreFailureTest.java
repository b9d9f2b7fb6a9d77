package org.shedboard.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.EOFException;
import java.io.IOException;
import java.nio.channels.ClosedByInterruptException;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.shedboard.store.StoreFailure.Kind;

class StoreFailureTest {
    /** Belongs to nobody. */
    private static final Link.Tie UNTIED = new Link.Tie() {
        @Override
        public void sync() {}

        @Override
        public void close() {}

        @Override
        public Sql another() {
            throw new UnsupportedOperationException();
        }
    };

    private Connection connection;
    private Sql sql;

    @BeforeEach
    void open() throws SQLException {
        connection = DriverManager.getConnection("jdbc:h2:mem:" + UUID.randomUUID());
        sql = new Sql(connection, Connection.TRANSACTION_READ_COMMITTED);
        sql.run("CREATE TABLE shop_lock (id INTEGER CONSTRAINT lock_key PRIMARY KEY)");
    }

    @AfterEach
    void close() throws SQLException {
        connection.close();
    }

    private static StoreFailure of(String state, int code) {
        return StoreFailure.from(new SQLException("first line\nsecond line", state, code));
    }

    @ParameterizedTest
    @CsvSource({
        "90146, 90146, NO_SHOP",
        "90020, 90020, BUSY",
        "HYT00, 50200, BUSY",
        "90030, 90030, DAMAGED",
        "90067, 90067, BROKEN",
        "90121, 90121, BROKEN",
        "08006, 0, BROKEN",
        "57P01, 0, BROKEN",
        "57P03, 0, BROKEN",
        "25P03, 0, BROKEN",
        "55P03, 0, BUSY",
        "53100, 0, DISK_FULL",
        "58030, 0, DISK_FAILS",
        "XX001, 0, DAMAGED",
        "08004, 0, REFUSED",
        "28P01, 0, REFUSED",
        "42501, 0, REFUSED",
        "53300, 0, REFUSED",
        "3D000, 0, REFUSED",
        "23505, 23505, CONSTRAINT",
        "42001, 42001, OTHER",
        "HY000, 50000, DISK_FAILS",
        "90028, 90028, DISK_FAILS",
        "90031, 90031, DISK_FAILS"
    })
    void what_the_database_says_is_told_apart(String state, int code, Kind kind) {
        StoreFailure failure = of(state, code);
        assertEquals(kind, failure.kind());
        assertEquals(1, failure.getMessage().lines().count());
    }

    @Test
    void a_full_disk_is_seen_through_whatever_wraps_it() {
        IOException full = new IOException("No space left on device");
        SQLException problem = new SQLException("General error", "HY000", 50000, new IllegalStateException(full));
        assertEquals(Kind.DISK_FULL, StoreFailure.from(problem).kind());
    }

    /** The last is what a guest sees when the owner of the file goes in the middle of an answer. */
    static Stream<Exception> interrupts() {
        return Stream.of(new ClosedByInterruptException(), new InterruptedException(), new EOFException());
    }

    @ParameterizedTest
    @MethodSource("interrupts")
    void a_file_closed_or_waited_for_in_vain_because_of_an_interrupt_is_a_way_that_broke(Exception interrupt) {
        SQLException problem = new SQLException("General error", "HY000", 50000, new IllegalStateException(interrupt));
        assertEquals(Kind.BROKEN, StoreFailure.from(problem).kind());
    }

    /** As H2 hands it on, without a cause. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "java.io.EOFException",
                "java.net.SocketException: Socket closed",
                "java.nio.channels.ClosedChannelException"
            })
    void what_cut_the_owner_of_the_file_off_is_a_way_that_broke_for_its_guests_too(String cause) {
        String message = "IO Exception: \"%s\" [90028-240]".formatted(cause);
        assertEquals(
                Kind.BROKEN,
                StoreFailure.from(new SQLException(message, "90028", 90028)).kind());
    }

    @ParameterizedTest
    @CsvSource({
        "'\"PUBLIC.TAG_TAKEN INDEX PUBLIC.PRIMARY_KEY_1 ON PUBLIC.TAG(NUMBER)\"', tag_taken",
        "'\"VISIT_OF_MACHINE: PUBLIC.VISIT FOREIGN KEY(MACHINE_ID)\"', visit_of_machine",
        "'violates unique constraint \"tag_taken\"', tag_taken"
    })
    void a_constraint_is_known_by_the_name_in_the_message(String message, String name) {
        StoreFailure failure = StoreFailure.from(new SQLException(message, "23505", 23505));
        assertEquals(Optional.of(name), failure.constraint());
    }

    @Test
    void a_conflict_is_tried_once_more_and_no_more() {
        Link link = new Link(sql, sql, UNTIED, true);
        AtomicInteger times = new AtomicInteger();
        assertEquals("done", link.write(one -> {
            if (times.incrementAndGet() == 1) {
                throw of("40001", 40001);
            }
            return "done";
        }));
        assertEquals(2, times.get());
        assertThrows(
                StoreFailure.class,
                () -> link.write(one -> {
                    times.incrementAndGet();
                    throw of("40001", 40001);
                }));
        assertEquals(4, times.get());
        assertThrows(
                StoreFailure.class,
                () -> link.write(one -> {
                    times.incrementAndGet();
                    throw of("23505", 23505);
                }));
        assertEquals(5, times.get());
    }

    @Test
    void a_rollback_that_fails_too_goes_along_with_the_reason() {
        IllegalStateException reason = assertThrows(
                IllegalStateException.class,
                () -> sql.inOne(one -> {
                    one.close();
                    throw new IllegalStateException("on purpose");
                }));
        assertEquals(1, reason.getSuppressed().length);
    }
}
