package org.shedboard.files;

/** Something wrong with a file: its place ({@code classes[2].points[7].uncoverMinutes[1]}) and what is wrong there. */
public record Fault(String where, String what) {
    @Override
    public String toString() {
        return where.isEmpty() ? what : where + ": " + what;
    }
}
