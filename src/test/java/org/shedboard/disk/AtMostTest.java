package org.shedboard.disk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AtMostTest {
    private static final int MOST = 1 << 20;

    @TempDir
    Path directory;

    private static InputStream of(int bytes) {
        return AtMost.bytes(new ByteArrayInputStream(new byte[bytes]), MOST);
    }

    /** A packed file with one file of so many zeros, which pack to a thousandth. */
    private ZipFile packed(String name, long zeros) throws IOException {
        Path file = directory.resolve("some.zip");
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
            zip.putNextEntry(new ZipEntry(name));
            byte[] block = new byte[1 << 16];
            for (long left = zeros; left > 0; left -= block.length) {
                zip.write(block, 0, (int) Math.min(block.length, left));
            }
            zip.closeEntry();
        }
        return new ZipFile(file.toFile());
    }

    @Test
    void what_there_is_room_for_is_read_to_its_end() throws IOException {
        assertEquals(MOST, of(MOST).readAllBytes().length);
    }

    @Test
    void one_byte_more_is_too_large_however_it_is_read() {
        assertThrows(AtMost.TooLarge.class, () -> of(MOST + 1).readAllBytes());
        assertThrows(AtMost.TooLarge.class, () -> of(MOST + 1).skip(MOST + 1));
        assertThrows(AtMost.TooLarge.class, () -> {
            InputStream in = of(MOST + 1);
            while (in.read() >= 0) {
                in.available();
            }
        });
    }

    @Test
    void a_packed_file_that_unpacks_to_more_is_too_large_though_it_is_small() throws IOException {
        try (ZipFile zip = packed("shop.mv.db", 64L << 20)) {
            assertThrows(
                    AtMost.TooLarge.class,
                    () -> AtMost.unpacked(zip, "shop.mv.db", MOST).readAllBytes());
            assertEquals(64 << 20, AtMost.unpacked(zip, "shop.mv.db", 64L << 20).readAllBytes().length);
        }
    }

    @Test
    void only_the_file_of_exactly_that_name_is_taken_out() throws IOException {
        try (ZipFile zip = packed("../../shop.mv.db", 10)) {
            IOException none = assertThrows(IOException.class, () -> AtMost.unpacked(zip, "shop.mv.db", MOST));
            assertEquals("there is no shop.mv.db in it", none.getMessage());
        }
    }
}
