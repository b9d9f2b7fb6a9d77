package org.shedboard.files;

/** An upright rectangle of a {@link Picture}, in millimetres. */
record Box(double left, double top, double width, double height) {
    /** Of a letter or digit as pictures write it; a guess on the wide side. */
    private static final double LETTER = 1.9;

    static Box between(double left, double right, double top, double bottom) {
        return new Box(left, top, Math.max(0, right - left), bottom - top);
    }

    double right() {
        return left + width;
    }

    /** Whether so many letters go in with a little room beside them. */
    boolean holds(String text) {
        return (text.codePointCount(0, text.length()) + 0.4) * LETTER <= width;
    }
}
