package org.shedboard.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.shedboard.store.Samples.STAMP;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shedboard.hours.Activity;
import org.shedboard.hours.ClockEntry;
import org.shedboard.wire.Splice;
import org.shedboard.wire.Tunnel;

/** What somebody could do with a terminal's ticket and a database client of their own. */
@Timeout(60)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class TerminalRightsTest {
    /** What H2 answers whoever has not the right, and whoever is no administrator. */
    private static final List<Integer> REFUSALS = List.of(90096, 90040);

    @TempDir
    private static Path home;

    @TempDir
    private static Path away;

    private Served served;
    private Connection connection;
    private Statement statement;

    @BeforeAll
    void join() throws SQLException {
        Store.create(home).close();
        served = Served.at(home);
        served.owner().save(STAMP, "begin", tx -> {
            tx.saveSetting("a", "b");
            tx.saveEntry(entry("C1", Optional.of(60)));
            tx.saveEntry(entry("C2", Optional.empty()));
            tx.saveEntry(entry("C4", Optional.empty()));
            tx.saveEntry(entry("C5", Optional.of(60)));
        });
        connection = way().database();
        statement = connection.createStatement();
    }

    private static ClockEntry entry(String id, Optional<Integer> to) {
        return new ClockEntry(
                id,
                "P1",
                new Activity.OtherWork(Activity.OtherWork.Kind.values()[0]),
                Samples.at(0),
                to.map(Samples::at));
    }

    private ThroughTunnel way() {
        Address.AtServer address = served.address(away);
        return new ThroughTunnel(new Tunnel(address.host(), address.port(), served.ticket()));
    }

    @AfterAll
    void leave() throws SQLException {
        connection.close();
        served.close();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "UPDATE journal SET who = 'nobody'",
                "DELETE FROM journal",
                "MERGE INTO journal KEY (id) SELECT * FROM journal",
                "TRUNCATE TABLE journal",
                "DELETE FROM clock_entry",
                "TRUNCATE TABLE clock_entry",
                "UPDATE schema_history SET name = 'x'",
                "DELETE FROM schema_history",
                "DROP TABLE setting",
                "DROP TRIGGER clock_entry_stays",
                "ALTER TABLE journal ADD COLUMN x INTEGER",
                "ALTER TABLE clock_entry SET REFERENTIAL_INTEGRITY FALSE",
                "CREATE TABLE mine (x INTEGER)",
                "CREATE GLOBAL TEMPORARY TABLE mine (x INTEGER)",
                "CREATE VIEW mine AS SELECT * FROM journal",
                "CREATE INDEX mine ON setting (name)",
                "CREATE SCHEMA mine",
                "CREATE SEQUENCE mine",
                "CREATE DOMAIN mine AS INTEGER",
                "CREATE CONSTANT mine VALUE 1",
                "CREATE ALIAS mine FOR 'java.lang.System.exit'",
                "CREATE ALIAS mine AS 'int one() { return 1; }'",
                "CREATE AGGREGATE mine FOR 'org.shedboard.store.HoursStay'",
                "CREATE TRIGGER mine BEFORE INSERT ON setting FOR EACH ROW CALL 'org.shedboard.store.HoursStay'",
                "CREATE LINKED TABLE mine ('org.h2.Driver', 'jdbc:h2:mem:x', '', '', 'y')",
                "CALL LINK_SCHEMA('mine', 'org.h2.Driver', 'jdbc:h2:mem:x', '', '', 'PUBLIC')",
                "RUNSCRIPT FROM 'classpath:db/V001__shop.sql'",
                "SCRIPT",
                "SCRIPT TO 'stolen.sql'",
                "BACKUP TO 'stolen.zip'",
                "CALL CSVWRITE('stolen.csv', 'SELECT * FROM journal')",
                "SELECT * FROM CSVREAD('/etc/hostname')",
                "SELECT FILE_READ('/etc/hostname')",
                "CALL FILE_WRITE(X'00', 'stolen')",
                "SHUTDOWN",
                "SHUTDOWN IMMEDIATELY",
                "CHECKPOINT",
                "CHECKPOINT SYNC",
                "SET WRITE_DELAY 0",
                "SET MAX_MEMORY_ROWS 1",
                "SET EXCLUSIVE 1",
                "SET DB_CLOSE_DELAY 0",
                "SET DEFAULT_LOCK_TIMEOUT 1",
                "SET REFERENTIAL_INTEGRITY FALSE",
                "SET TRACE_LEVEL_FILE 3",
                "SET CLUSTER 'localhost:1'",
                "SET MODE MySQL",
                "CREATE USER mine PASSWORD '' ADMIN",
                "ALTER USER terminal ADMIN TRUE",
                "ALTER USER shop SET PASSWORD 'mine'",
                "DROP USER guest",
                "GRANT ALL ON journal TO terminal",
                "GRANT ALTER ANY SCHEMA TO terminal",
                "CREATE ROLE mine",
                "CALL ABORT_SESSION(1)",
                "CALL CANCEL_SESSION(1)",
                "CALL MEMORY_USED()",
                "ANALYZE"
            })
    void what_is_not_a_terminals_is_refused(String sql) throws SQLException {
        List<String> before = files();
        SQLException refused = assertThrows(SQLException.class, () -> statement.execute(sql), sql);
        assertTrue(REFUSALS.contains(refused.getErrorCode()), refused.getErrorCode() + " " + refused.getMessage());
        assertEquals(before, files());
    }

    private List<String> files() {
        try (Stream<Path> all = Stream.concat(Files.walk(home), Files.list(Path.of("")))) {
            return all.map(Path::toString).sorted().toList();
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"CALL \"java.lang.System.getProperty\"('user.home')", "SELECT \"java.lang.Math.sqrt\"(4)"})
    void methods_of_java_cannot_be_called(String sql) {
        assertThrows(SQLException.class, () -> statement.execute(sql));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "UPDATE clock_entry SET to_at = NULL WHERE id = 'C1'",
                "UPDATE clock_entry SET to_at = from_at WHERE id = 'C1'",
                "UPDATE clock_entry SET person_id = 'P2' WHERE id = 'C1'",
                "UPDATE clock_entry SET person_id = 'P2' WHERE id = 'C2'",
                "UPDATE clock_entry SET to_at = from_at, id = 'C9' WHERE id = 'C2'"
            })
    void hours_that_have_ended_and_who_they_are_of_stay(String sql) {
        SQLException refused = assertThrows(SQLException.class, () -> statement.execute(sql));
        assertTrue(
                refused.getMessage().contains("SB001") || refused.getMessage().contains("hours that have ended"),
                refused.getMessage());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "UPDATE setting SET name = 'backup.second' WHERE name = 'a'",
                "INSERT INTO setting SELECT 'backup.second', text FROM setting WHERE name = 'a'"
            })
    void where_backups_go_is_not_said_by_a_terminal(String sql) {
        SQLException refused = assertThrows(SQLException.class, () -> statement.execute(sql));
        assertTrue(refused.getMessage().contains("where backups go"), refused.getMessage());
    }

    @Test
    void hours_that_run_can_be_ended_and_others_added() throws SQLException {
        assertEquals(1, statement.executeUpdate("UPDATE clock_entry SET to_at = from_at WHERE id = 'C4'"));
        assertEquals(
                1,
                statement.executeUpdate("INSERT INTO clock_entry (id, person_id, other_kind, from_at) "
                        + "SELECT 'C3', person_id, other_kind, from_at FROM clock_entry WHERE id = 'C2'"));
    }

    @Test
    void the_owner_and_guests_of_its_machine_may_change_them() {
        served.owner().save(STAMP, "shorter", tx -> tx.saveEntry(entry("C5", Optional.of(30))));
        try (Store guest = Store.open(home)) {
            guest.save(STAMP, "longer", tx -> tx.saveEntry(entry("C5", Optional.of(90))));
            List<ClockEntry> all = guest.read(reader -> reader.entries(Samples.at(0), Samples.at(1)));
            assertTrue(all.contains(entry("C5", Optional.of(90))));
        }
    }

    /** The database lets everybody have tables of their own for as long as they are connected. */
    @Test
    void a_table_that_a_terminal_makes_for_itself_is_nobody_elses() throws SQLException {
        try (Connection other = way().database();
                Statement theirs = other.createStatement()) {
            statement.execute("CREATE LOCAL TEMPORARY TABLE mine (x INTEGER)");
            assertThrows(SQLException.class, () -> theirs.executeQuery("SELECT * FROM mine"));
            statement.execute("DROP TABLE mine");
        }
    }

    @Test
    void a_terminal_owns_nothing_and_sees_nobodys_password() throws SQLException {
        List<String> seen = new ArrayList<>();
        try (ResultSet users = statement.executeQuery("SELECT * FROM information_schema.users")) {
            while (users.next()) {
                seen.add(users.getString("USER_NAME") + " " + users.getString("IS_ADMIN"));
            }
        }
        assertEquals(List.of("TERMINAL FALSE"), seen);
    }

    /** A driver that says it is the owner of the file, and whose words go through the tunnel as it says them. */
    @Test
    void nobody_chooses_who_they_are() throws Exception {
        try (ServerSocket door = new ServerSocket(0, 1, SyncServer.loopback());
                Socket server = way().tunnel().open(ThroughTunnel.RECORDS)) {
            Thread porter = new Thread(() -> splice(door, server));
            porter.start();
            String url = "jdbc:h2:tcp://127.0.0.1:%s/mem:mine;INIT=SHUTDOWN".formatted(door.getLocalPort());
            try (Connection asOwner = DriverManager.getConnection(url, "shop", "");
                    ResultSet user = asOwner.createStatement().executeQuery("SELECT CURRENT_USER, DATABASE_PATH()")) {
                user.next();
                assertEquals("TERMINAL", user.getString(1));
                assertEquals(Home.at(home).real().database(), user.getString(2));
            }
        }
    }

    private static void splice(ServerSocket door, Socket server) {
        try {
            Splice.start(door.accept(), server);
        } catch (IOException closed) {
            // the test is over
        }
    }

    @Test
    void without_a_password_there_is_not_even_a_list_of_databases() {
        int port = served.address(away).port();
        for (String name :
                List.of("", "shop", "./shop", "mem:x", home.resolve("shop").toString())) {
            for (String sort : List.of("tcp", "ssl")) {
                String url = "jdbc:h2:%s://127.0.0.1:%s/%s".formatted(sort, port, name);
                assertThrows(SQLException.class, () -> DriverManager.getConnection(url, "shop", ""), url);
            }
        }
    }

    @Test
    void what_may_not_be_asked_for_is_not_there() {
        Tunnel tunnel =
                new Tunnel(served.address(away).host(), served.address(away).port(), served.ticket());
        try (Socket socket = tunnel.open("console")) {
            assertEquals(-1, socket.getInputStream().read());
        } catch (IOException reset) {
            assertFalse(reset.getMessage().isEmpty());
        }
    }
}
