package org.shedboard.app.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shedboard.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** The shop is to be served to terminals, of this machine alone or of others too, until somebody ends it. */
@Command(name = "serve")
public final class ServeCommand implements Wish {
    private static final ServerName LOOPBACK = new ServerName("127.0.0.1", ServerName.USUAL_PORT);

    @Option(names = "--listen", paramLabel = "ADDRESS[:PORT]")
    private Optional<ServerName> listen;

    @Option(names = "--new-password")
    private boolean newPassword;

    public ServerName listen() {
        return listen.orElse(LOOPBACK);
    }

    public boolean isNewPassword() {
        return newPassword;
    }

    /**
     * What whoever lets terminals join has to know.
     *
     * @param password a name and the password, if they were made just now
     */
    public record Served(String shop, ServerName at, boolean onlyHere, String fingerprint, List<String> password) {
        public Answer answer() {
            List<String> lines = new ArrayList<>();
            lines.add(Words.say("serve.at", shop, at));
            lines.add(Words.say(onlyHere ? "serve.only_here" : "serve.join", at.port()));
            lines.add(Words.say("serve.fingerprint"));
            lines.add("  " + fingerprint);
            if (password.isEmpty()) {
                lines.add(Words.say("serve.password_known"));
            } else {
                lines.add(Words.say("serve.password"));
                lines.add("  " + String.join("  ", password));
            }
            lines.add(Words.say("serve.ends"));
            return new Answer(lines, tree().fields());
        }

        private Tree tree() {
            return new Tree()
                    .put("done", "serve")
                    .put("address", at.host())
                    .put("port", at.port())
                    .put("fingerprint", fingerprint.replace(" ", ""))
                    .put("name", password.stream().findFirst())
                    .put("password", password.stream().skip(1).findFirst());
        }
    }
}
