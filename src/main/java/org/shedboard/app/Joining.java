package org.shedboard.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.shedboard.app.command.Answer;
import org.shedboard.app.command.CannotDo;
import org.shedboard.app.command.JoinCommand;
import org.shedboard.app.command.ServerName;
import org.shedboard.store.Address;
import org.shedboard.wire.Credentials;
import org.shedboard.wire.Fingerprint;
import org.shedboard.wire.Ticket;
import org.shedboard.wire.Tunnel;
import org.shedboard.wire.WireFailure;
import org.shedboard.words.Words;

/**
 * A terminal getting to know a server: whoever sits at it compares the fingerprint with what the server shows, and types the name and
 * the password. From then on both are known here, and another key is refused.
 */
final class Joining {
    private static final int LONGEST_LINE = 200;

    private final Shedboard program;
    private final ServerName server;

    Joining(Shedboard program, ServerName server) {
        this.program = program;
        this.server = server;
    }

    /** Joins a server that is named with every command, unless that was done before, or nobody is there to be asked. */
    static void whereNeeded(Shedboard program, ServerName server) {
        boolean isKnown = Ticket.in(address(program, server).ticketFile()).isPresent();
        if (!isKnown && program.around().console().isPresent()) {
            new Joining(program, server).join(Optional.empty(), Optional.empty());
        }
    }

    private static Address.AtServer address(Shedboard program, ServerName server) {
        return Homes.atServer(program.home(), server);
    }

    Answer join(JoinCommand asked) {
        Optional<Fingerprint> expected = asked.fingerprint()
                .map(text -> Fingerprint.parse(text).orElseThrow(() -> new CannotDo("join.no_fingerprint")));
        join(expected, asked.passwordFile());
        return JoinCommand.answer(server);
    }

    private void join(Optional<Fingerprint> expected, Optional<Path> passwordFile) {
        try {
            Fingerprint seen = Tunnel.lookAt(server.host(), server.port());
            expectRight(seen, expected);
            Ticket ticket = new Ticket(seen, passwordFile.map(this::read).orElseGet(this::ask));
            new Tunnel(server.host(), server.port(), ticket).check();
            ticket.keepIn(address(program, server).ticketFile());
        } catch (WireFailure failure) {
            throw new CannotDo("join.failed", failure.getMessage());
        }
    }

    private void expectRight(Fingerprint seen, Optional<Fingerprint> expected) {
        if (expected.isPresent()) {
            if (!seen.equals(expected.get())) {
                throw new CannotDo("join.other_fingerprint", server, seen);
            }
            return;
        }
        expectSomebody("join.needs_fingerprint");
        program.voice().say(List.of(Words.say("join.fingerprint", server), "  " + seen));
        if (!line(Words.say("join.is_it")).equalsIgnoreCase(Words.say("join.yes"))) {
            throw new CannotDo("join.not_it");
        }
    }

    private void expectSomebody(String otherwise) {
        if (program.around().console().isEmpty()) {
            throw new CannotDo(otherwise, server);
        }
    }

    private Credentials read(Path file) {
        List<String> lines = Input.text(file, program.around().in()).lines().toList();
        if (lines.size() < 2) {
            throw new CannotDo("join.password_file", file);
        }
        return new Credentials(lines.get(0).strip(), lines.get(1).strip());
    }

    private Credentials ask() {
        expectSomebody("join.needs_password");
        String name = line(Words.say("join.name"));
        char[] password = program.around()
                .console()
                .orElseThrow()
                .ask(Words.say("join.password") + " ")
                .orElseThrow(() -> new CannotDo("join.not_it"));
        return new Credentials(name, new String(password).strip());
    }

    /** What is typed there is seen. */
    private String line(String prompt) {
        program.around().out().print(prompt + " ");
        program.around().out().flush();
        StringBuilder typed = new StringBuilder();
        try {
            int next = program.around().in().read();
            while (next >= 0 && next != '\n' && typed.length() < LONGEST_LINE) {
                typed.append((char) next);
                next = program.around().in().read();
            }
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        return typed.toString().strip();
    }
}
