package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.disk.OwnersEyes;
import org.shedboard.store.Store;

/** A home and all that is written into it is its owner's alone, whatever the umask. */
class PrivateHomeTest {
    @TempDir
    Path directory;

    @BeforeEach
    void onlyWhereThereArePermissions() {
        assumeTrue(FileSystems.getDefault().supportedFileAttributeViews().contains("posix"), "no POSIX permissions");
    }

    private static List<Path> readByOthers(Path place) throws IOException {
        try (Stream<Path> all = Files.walk(place)) {
            return all.filter(path -> !isOnly(path)).toList();
        }
    }

    private static boolean isOnly(Path path) {
        try {
            return OwnersEyes.isOnly(path);
        } catch (IOException gone) {
            return true;
        }
    }

    private static void openToAll(Path path) throws IOException {
        Files.setPosixFilePermissions(path, PosixFilePermissions.fromString("rw-rw-rw-"));
    }

    @Test
    void a_shop_made_and_worked_in_is_read_by_nobody_else() throws IOException {
        Path home = Files.createDirectory(
                directory.resolve("shed"),
                PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwxr-xr-x")));
        CommandRoom room = CommandRoom.empty(home);
        Path place = Demonstration.ready(home).home();
        assertEquals(0, room.demo("pause", "Wren").status());
        assertEquals(
                0,
                room.demo("picture", "board", home.resolve("board.svg").toString())
                        .status());
        assertTrue(new Log(place).append(new IllegalStateException()));
        new DraftFile(place).keep(java.util.Map.of("owner", "somebody"));
        assertEquals(List.of(), readByOthers(place));
        assertTrue(OwnersEyes.isOnly(home.resolve("board.svg")));
    }

    @Test
    void records_and_copies_that_others_could_read_are_taken_from_them_when_they_are_opened() throws IOException {
        Path place = Demonstration.ready(directory).home();
        Path copy = Files.writeString(
                Files.createDirectory(place.resolve("backups")).resolve("old.zip"), "x");
        openToAll(copy);
        openToAll(place.resolve("shop.mv.db"));
        try (Store store = Store.open(place)) {
            assertTrue(store.isOwner());
            assertEquals(List.of(), readByOthers(place));
        }
        assertEquals(List.of(), readByOthers(place));
    }
}
