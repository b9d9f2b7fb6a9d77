package org.shedboard.app;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import org.shedboard.app.command.CannotDo;
import org.shedboard.disk.AtMost;
import org.shedboard.pack.fault.Fault;
import org.shedboard.words.Words;

/** Files named on the command line; {@code -} is what is piped in. */
final class Input {
    /** A hundred times what the largest day file that was ever packed has. */
    private static final long MOST_BYTES = 64L << 20;

    private Input() {}

    /** So many bytes tell what a file is. */
    private static final int BEGINNING = 200;

    /** What is in a file, from its beginning; can be read to a little way in and then again. */
    static InputStream open(Path file, InputStream piped) throws IOException {
        try {
            return new BufferedInputStream(isPiped(file) ? piped : Files.newInputStream(file), 2 * BEGINNING);
        } catch (NoSuchFileException missing) {
            throw new CannotDo("command.no_file", file);
        }
    }

    /** The first letters of what was just opened, which is still to be read. */
    static String beginning(InputStream opened) throws IOException {
        opened.mark(BEGINNING);
        byte[] first = opened.readNBytes(BEGINNING);
        opened.reset();
        return new String(first, StandardCharsets.ISO_8859_1);
    }

    private static boolean isPiped(Path file) {
        return file.toString().equals("-");
    }

    static String text(Path file, InputStream piped) {
        try (InputStream in = AtMost.bytes(isPiped(file) ? piped : Files.newInputStream(file), MOST_BYTES)) {
            return decoded(in.readAllBytes());
        } catch (CharacterCodingException notText) {
            throw new BadFile(List.of(new Fault("", Words.say("command.not_utf8"))));
        } catch (NoSuchFileException missing) {
            throw new CannotDo("command.no_file", file);
        } catch (AtMost.TooLarge large) {
            throw new BadFile(List.of(new Fault("", Words.say("command.too_large", MOST_BYTES >> 20))));
        } catch (IOException unreadable) {
            throw new CannotDo("command.file_unreadable", file, unreadable.getMessage());
        }
    }

    private static String decoded(byte[] bytes) throws CharacterCodingException {
        return StandardCharsets.UTF_8
                .newDecoder()
                .decode(ByteBuffer.wrap(bytes))
                .toString();
    }
}
