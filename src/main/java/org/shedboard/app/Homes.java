package org.shedboard.app;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.shedboard.app.command.CannotDo;
import org.shedboard.app.command.Globals;
import org.shedboard.app.command.ServerName;
import org.shedboard.store.Address;

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

    /** Where the records are that a command line means, if not the demonstration's. */
    static Address address(Path home, Globals globals) {
        if (globals.atServer().isPresent()) {
            return atServer(home, globals.atServer().get());
        }
        return globals.db()
                .map(url -> (Address) new Address.AtDatabase(home, url))
                .orElseGet(() -> new Address.InHome(home));
    }

    /** At a server, of which a directory of its own inside this home has what this terminal keeps. */
    static Address.AtServer atServer(Path home, ServerName server) {
        return new Address.AtServer(home.resolve("servers").resolve(server.fileName()), server.host(), server.port());
    }

    /** The home that holds records itself; what is done to its file cannot be done from a terminal. */
    static Path expectHome(Address address) {
        if (address instanceof Address.InHome home) {
            return home.home();
        }
        throw new CannotDo("command.only_in_home");
    }
}
