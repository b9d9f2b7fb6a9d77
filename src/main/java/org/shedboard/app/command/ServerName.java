package org.shedboard.app.command;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a server is called on a command line: {@code HOST} or {@code HOST:PORT}.
 *
 * @param host name or number of the machine; a number of the newer sort without its brackets
 */
public record ServerName(String host, int port) {
    /** Ours, where none is named; invented, and none that is given out to another program as far as is known. */
    public static final int USUAL_PORT = 9217;

    private static final int LAST_PORT = 65_535;
    private static final Pattern NAME = Pattern.compile("(\\[[0-9A-Fa-f:.%]+]|[^\\s:;/\\\\\\[\\]]+)(?::([0-9]{1,5}))?");

    /** Empty where the text names no server. */
    public static Optional<ServerName> parse(String text) {
        Matcher parts = NAME.matcher(text);
        if (!parts.matches()) {
            return Optional.empty();
        }
        int port = Optional.ofNullable(parts.group(2)).map(Integer::parseInt).orElse(USUAL_PORT);
        String host = parts.group(1).replaceAll("[\\[\\]]", "");
        return Optional.of(new ServerName(host, port)).filter(each -> port >= 1 && port <= LAST_PORT);
    }

    /** As it can stand for a file's name everywhere. */
    public String fileName() {
        return "%s-%s".formatted(host.replaceAll("[^A-Za-z0-9.-]", "_"), Integer.toString(port));
    }

    @Override
    public String toString() {
        return (host.contains(":") ? "[" + host + "]" : host) + ":" + port;
    }
}
