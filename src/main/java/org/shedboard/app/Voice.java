package org.shedboard.app;

import java.io.PrintStream;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.shedboard.files.JsonText;
import org.shedboard.grid.Glyphs;
import org.shedboard.grid.TextWidth;

/** Everything that is said outside the full screen goes through here, so that no text can steer the terminal. */
final class Voice {
    private static final char LAST_ASCII = '~';

    /** All control characters but those that part lines and cells. */
    private static final Pattern CONTROL = Pattern.compile("[\\p{Cc}&&[^\t\r\n]]");

    private final PrintStream out;
    private final PrintStream err;
    private final boolean ascii;

    Voice(PrintStream out, PrintStream err, boolean ascii) {
        this.out = out;
        this.err = err;
        this.ascii = ascii;
    }

    void say(List<String> lines) {
        print(out, lines);
    }

    void complain(List<String> lines) {
        print(err, lines);
    }

    /** Writes over the line that standard error's terminal is on; the cursor stays at its left edge. */
    void writeOver(String line) {
        err.print("\r" + shown(line) + "\r");
        err.flush();
    }

    void json(Object tree) {
        sayJson(JsonText.write(tree));
    }

    /** Text that is JSON already: outside its strings there is nothing but ASCII. */
    void sayJson(String json) {
        out.print(json.chars().collect(StringBuilder::new, this::escaped, StringBuilder::append));
        out.flush();
    }

    /**
     * A file for another program, with the line ends it has. Nothing in it is put into ASCII, for that would change names; but a
     * control character belongs into no such file, and could steer the terminal that it is looked at in.
     */
    void sayFile(String text) {
        out.print(CONTROL.matcher(text).replaceAll("\uFFFD"));
        out.flush();
    }

    private void escaped(StringBuilder text, int character) {
        if (character == '\n' || !isToEscape((char) character)) {
            text.append((char) character);
        } else {
            text.append(String.format(Locale.ROOT, "\\u%04x", character));
        }
    }

    private boolean isToEscape(char character) {
        if (character <= LAST_ASCII) {
            return false;
        }
        return ascii
                || switch (Character.getType(character)) {
                    case Character.CONTROL,
                            Character.FORMAT,
                            Character.SURROGATE, // half of one alone is no character, but may stand in a name
                            Character.LINE_SEPARATOR,
                            Character.PARAGRAPH_SEPARATOR -> true;
                    default -> false;
                };
    }

    private void print(PrintStream stream, List<String> lines) {
        for (String line : lines) {
            stream.print(shown(line) + "\n");
        }
        stream.flush();
    }

    private String shown(String line) {
        String shown = TextWidth.shown(line);
        return ascii
                ? shown.chars()
                        .mapToObj(each -> String.valueOf(Glyphs.ascii((char) each)))
                        .reduce("", String::concat)
                : shown;
    }
}
