package org.shedboard.app;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/** Where shops live on this machine. */
final class Homes {
    private Homes() {}

    /** The home that was asked for, else the one of the environment, else the usual one of this user. */
    static Path choose(Optional<Path> asked, Map<String, String> environment, Path userHome) {
        return asked.orElseGet(() -> Optional.ofNullable(environment.get("SHEDBOARD_HOME"))
                .filter(home -> !home.isBlank())
                .map(Path::of)
                .orElse(userHome.resolve(".shedboard")));
    }

    /** The demonstration shop stands in a home of its own inside the usual one. */
    static Path demonstration(Path home) {
        return home.resolve("demonstration");
    }
}
