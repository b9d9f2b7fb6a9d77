package org.shedboard.app.command;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import org.shedboard.words.Words;
import picocli.CommandLine.IVersionProvider;

/** Which version of the program this is, as the build wrote it down. */
final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() throws IOException {
        try (InputStream in = Version.class.getResourceAsStream("version.txt")) {
            if (in == null) {
                throw new IllegalStateException("this program was built without its version");
            }
            return new String[] {
                Words.say("command.version", new String(in.readAllBytes(), StandardCharsets.UTF_8).strip())
            };
        }
    }
}
