package org.shedboard.pack.fault;

/**
 * Something wrong with an input: its place ({@code jobs[3].stays[0]}) and what is wrong there. It is one line that can be read at a
 * glance, whatever was quoted in it: line breaks and other control characters become dots, and the middle of what is long is left out.
 */
public record Fault(String where, String what) {
    private static final int LONGEST = 240;
    private static final int TAIL = 60;

    public Fault {
        where = line(where);
        what = line(what);
    }

    private static String line(String text) {
        String plain = text.replaceAll("[\\p{Cntrl}\u2028\u2029]", "·");
        return plain.length() <= LONGEST
                ? plain
                : plain.substring(0, LONGEST - TAIL) + "..." + plain.substring(plain.length() - TAIL);
    }

    @Override
    public String toString() {
        return where.isEmpty() ? what : where + ": " + what;
    }
}
