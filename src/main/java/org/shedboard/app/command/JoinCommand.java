package org.shedboard.app.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.shedboard.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** This terminal is to know a server from now on. The password is no argument: those of a program are there for all to see. */
@Command(name = "join")
public final class JoinCommand implements Wish {
    @Parameters(index = "0", paramLabel = "HOST[:PORT]", descriptionKey = "option.server")
    private ServerName server;

    @Option(names = "--fingerprint", paramLabel = "TEXT")
    private Optional<String> fingerprint;

    @Option(names = "--password-file", paramLabel = "FILE")
    private Optional<Path> passwordFile;

    public ServerName server() {
        return server;
    }

    /** What the server's key has to be known by; else whoever sits at the terminal is asked. */
    public Optional<String> fingerprint() {
        return fingerprint;
    }

    /** A file with the name in its first line and the password in its second. */
    public Optional<Path> passwordFile() {
        return passwordFile;
    }

    /** What is said once it is done. */
    public static Answer answer(ServerName server) {
        String sentence = Words.say("join.done", server);
        Tree tree = new Tree().put("done", "join").put("sentence", sentence).put("server", server.toString());
        return new Answer(List.of(sentence), tree.fields());
    }
}
