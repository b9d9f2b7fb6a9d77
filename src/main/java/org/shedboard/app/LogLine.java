package org.shedboard.app;

import java.time.Instant;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the log keeps of a line: which fault and where in the program. A message may have a name, a telephone number or a typed text in
 * it, so no message is kept, only how long it was, and the number by which the database tells its errors apart.
 */
final class LogLine {
    /** No line of a trace is longer; of a longer one nothing is kept. */
    static final int LONGEST = 400;

    private static final Pattern FRAME =
            Pattern.compile("\\s*at [\\w.$/@<>-]+\\.[\\w$<>]+\\((\\w+\\.java(:\\d+)?|Native Method|Unknown Source)\\)");
    private static final Pattern MORE = Pattern.compile("\\s*\\.\\.\\. \\d{1,9} (more|common frames omitted)");
    private static final Pattern FAULT = Pattern.compile(
            "\\s*(Caused by: |Suppressed: |Exception in thread \"[\\w-]{1,30}\" )?((?:[a-z][\\w]*\\.)+[A-Z][\\w$]*)(: .*)?");
    private static final Pattern ERROR_NUMBER = Pattern.compile("\\[(\\d{4,5}-\\d{2,4})]");

    private LogLine() {}

    /** @param dropped characters of the line that are not in the text */
    static String of(String text, int dropped, Instant now) {
        String line = text.endsWith("\r") ? text.substring(0, text.length() - 1) : text;
        if (dropped == 0 && (FRAME.matcher(line).matches() || MORE.matcher(line).matches())) {
            return line;
        }
        Matcher fault = FAULT.matcher(line);
        return fault.matches()
                ? now + " " + told(fault, line, dropped)
                : "%s (%s characters that are not kept)".formatted(now, line.length() + dropped);
    }

    private static String told(Matcher fault, String line, int dropped) {
        String said = fault.group(1) == null ? "" : fault.group(1);
        if (fault.group(3) == null) {
            return said + fault.group(2);
        }
        Matcher number = ERROR_NUMBER.matcher(line);
        return "%s%s (a message of %s characters that is not kept)%s"
                .formatted(
                        said,
                        fault.group(2),
                        fault.group(3).length() - 2 + dropped,
                        number.find() ? " [" + number.group(1) + "]" : "");
    }
}
