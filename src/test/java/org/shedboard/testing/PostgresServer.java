package org.shedboard.testing;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.postgresql.Driver;

/**
 * A real PostgreSQL server of this machine's own programs, started at its first use, one for all tests of a Java. It stands in a
 * folder of its own, listens on loopback only, asks for a password, and goes with everything in it when this Java does, however
 * that ends: it lives only as long as the pipe to it does.
 */
public final class PostgresServer {
    private static final String USER = "shed";
    private static final String DATABASE = "shops";

    /** Where Debian has the programs of each version. */
    private static final Path DEBIAN = Path.of("/usr/lib/postgresql");

    /** Whom Debian has run it: it refuses to be run by root. */
    private static final String NOT_ROOT = "postgres";

    /** A hundred times what a start takes on an idle machine. */
    private static final long PATIENCE_NANOSECONDS = TimeUnit.SECONDS.toNanos(200);

    /** Ends the server and clears away when the pipe to it is closed. */
    private static final String KEEPER = """
            folder=$1; shift
            "$@" >"$folder/log" 2>&1 &
            server=$!
            cat >/dev/null
            kill -INT $server
            wait $server
            rm -rf "$folder"
            """;

    private static PostgresServer running;

    private final Path programs;
    private final int port;
    private final String password = UUID.randomUUID().toString();
    private final Path folder;
    /** Kept, so that the pipe to it stays open. */
    private Process keeper;

    private PostgresServer(Path programs) throws IOException {
        this.programs = programs;
        this.port = freePort();
        this.folder = Files.createTempDirectory("postgres");
    }

    /** Skips the test where PostgreSQL is not installed, except where CI=true: there it is left to fail. */
    public static void demand() {
        boolean demanded = "true".equals(System.getenv("CI"));
        assumeTrue(demanded || findPrograms().isPresent(), "skipped: PostgreSQL is not installed");
    }

    /** The address of its database; what it asks for a password is in a file that the driver knows of. */
    public static synchronized String url() {
        if (running == null) {
            running = start();
        }
        return "jdbc:postgresql://127.0.0.1:%s/%s?user=%s".formatted(Integer.toString(running.port), DATABASE, USER);
    }

    /** The address of another database on it, made for whoever asks and as empty. */
    public static String urlOfNew() {
        String name = "d" + UUID.randomUUID().toString().replace("-", "");
        run("CREATE DATABASE " + name);
        return url().replace("/" + DATABASE + "?", "/" + name + "?");
    }

    /** Runs statements on the database as its master. */
    public static void run(String sql) {
        run(url(), sql);
    }

    /** The same at another address on it. */
    public static void run(String url, String sql) {
        try (Connection connection = new Driver().connect(url, new Properties());
                Statement statement = connection.createStatement()) {
            statement.execute(sql);
        } catch (SQLException problem) {
            throw new IllegalStateException(problem);
        }
    }

    private static PostgresServer start() {
        try {
            PostgresServer server = new PostgresServer(
                    findPrograms().orElseThrow(() -> new IllegalStateException("PostgreSQL is not installed")));
            server.make();
            server.serve();
            server.await();
            return server;
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        } catch (InterruptedException interrupt) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(interrupt);
        }
    }

    /** The newest of Debian's, or that of the path. */
    private static Optional<Path> findPrograms() {
        List<Path> folders = new ArrayList<>();
        if (Files.isDirectory(DEBIAN)) {
            try (Stream<Path> versions = Files.list(DEBIAN)) {
                versions.map(version -> version.resolve("bin"))
                        .sorted(Comparator.reverseOrder())
                        .forEach(folders::add);
            } catch (IOException problem) {
                throw new UncheckedIOException(problem);
            }
        }
        Stream.of(System.getenv("PATH").split(":")).map(Path::of).forEach(folders::add);
        return folders.stream()
                .filter(each -> Files.isExecutable(each.resolve("initdb")))
                .findFirst();
    }

    private static int freePort() throws IOException {
        try (ServerSocket socket = new ServerSocket(0)) {
            return socket.getLocalPort();
        }
    }

    /** English order of words, which is not that of their bytes: nothing of ours may depend on how a server sorts. */
    private void make() throws IOException, InterruptedException {
        Path secret = Files.writeString(folder.resolve("secret"), password + "\n");
        Path known = Files.writeString(folder.resolve("known"), "127.0.0.1:*:*:%s:%s\n".formatted(USER, password));
        Files.setPosixFilePermissions(known, PosixFilePermissions.fromString("rw-------"));
        System.setProperty("org.postgresql.pgpassfile", known.toString());
        if (isRoot()) {
            Files.setOwner(
                    folder,
                    folder.getFileSystem().getUserPrincipalLookupService().lookupPrincipalByName(NOT_ROOT));
            Files.setOwner(secret, Files.getOwner(folder));
        }
        Process process = new ProcessBuilder(asNotRoot(
                        programs.resolve("initdb").toString(),
                        "--pgdata=" + data(),
                        "--username=" + USER,
                        "--pwfile=" + secret,
                        "--auth=scram-sha-256",
                        "--encoding=UTF8",
                        "--locale=C.UTF-8",
                        "--locale-provider=icu",
                        "--icu-locale=en"))
                .redirectErrorStream(true)
                .start();
        process.getOutputStream().close();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        if (process.waitFor() != 0) {
            throw new IllegalStateException(said);
        }
    }

    private Path data() {
        return folder.resolve("data");
    }

    private void serve() throws IOException {
        keeper = new ProcessBuilder(asNotRoot(
                        "sh",
                        "-c",
                        KEEPER,
                        "keeper",
                        folder.toString(),
                        programs.resolve("postgres").toString(),
                        "-D",
                        data().toString(),
                        "-p",
                        Integer.toString(port),
                        "-c",
                        "listen_addresses=127.0.0.1",
                        "-c",
                        "unix_socket_directories="))
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
    }

    private static boolean isRoot() {
        return "root".equals(System.getProperty("user.name"));
    }

    private static List<String> asNotRoot(String... command) {
        List<String> all = new ArrayList<>();
        if (isRoot()) {
            all.addAll(List.of("setpriv", "--reuid=" + NOT_ROOT, "--regid=" + NOT_ROOT, "--clear-groups"));
        }
        all.addAll(List.of(command));
        return all;
    }

    /** Waits until it answers, and makes the database. */
    private void await() throws IOException, InterruptedException {
        long end = System.nanoTime() + PATIENCE_NANOSECONDS;
        String url = "jdbc:postgresql://127.0.0.1:%s/postgres?user=%s".formatted(Integer.toString(port), USER);
        while (true) {
            try (Connection connection = new Driver().connect(url, new Properties());
                    Statement statement = connection.createStatement()) {
                statement.execute("CREATE DATABASE " + DATABASE);
                return;
            } catch (SQLException notYet) {
                if (System.nanoTime() > end || !keeper.isAlive()) {
                    throw new IllegalStateException(Files.readString(folder.resolve("log")), notYet);
                }
                Thread.sleep(20);
            }
        }
    }
}
