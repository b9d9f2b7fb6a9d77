package org.shedboard.app;

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
import org.shedboard.pack.fault.Fault;
import org.shedboard.store.AtMost;
import org.shedboard.words.Words;

/** Files named on the command line; {@code -} is what is piped in. */
final class Input {
    /** A hundred times what the largest day file that was ever packed has. */
    private static final long MOST_BYTES = 64L << 20;

    private Input() {}

    static String text(Path file, InputStream piped) {
        try (InputStream in =
                AtMost.bytes(file.toString().equals("-") ? piped : Files.newInputStream(file), MOST_BYTES)) {
            byte[] bytes = in.readAllBytes();
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
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
}
