package org.shedboard.pack;

/** Something wrong with an input: its place ({@code jobs[3].stays[0]}) and what is wrong there. */
public record Fault(String where, String what) {
    @Override
    public String toString() {
        return where.isEmpty() ? what : where + ": " + what;
    }
}
