package org.shedboard.app.command;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Optional;
import org.shedboard.look.Scheme;

/**
 * What may be said with every command.
 *
 * @param home where the shop is
 * @param demo whether the demonstration inside that home is meant
 * @param at the moment to see a demonstration from, in the zone of its shop
 * @param ascii whether only plain ASCII may be shown
 * @param json whether to answer as JSON
 * @param scheme the colours that were asked for
 * @param mouse whether pointing at the full screen may press its keys
 * @param lookOnly whether nothing may be changed from here
 * @param atServer the machine that serves the records, where they are not in the home
 * @param db the database server that has the records, as its driver takes it
 */
public record Globals(
        Optional<Path> home,
        boolean demo,
        Optional<LocalDateTime> at,
        boolean ascii,
        boolean json,
        Optional<Scheme> scheme,
        boolean mouse,
        boolean lookOnly,
        Optional<ServerName> atServer,
        Optional<String> db) {
    public static final Globals USUAL = new Globals(
            Optional.empty(),
            false,
            Optional.empty(),
            false,
            false,
            Optional.empty(),
            true,
            false,
            Optional.empty(),
            Optional.empty());

    /** The same about the demonstration. */
    public Globals ofDemonstration() {
        return new Globals(home, true, at, ascii, json, scheme, mouse, lookOnly, Optional.empty(), Optional.empty());
    }
}
