package org.shedboard.pack;

/** Minutes during which something holds: from inclusive, to exclusive. */
public record Span(int from, int to) {
    public Span {
        if (to < from) {
            throw new IllegalArgumentException("a span cannot end (%s) before it starts (%s)".formatted(to, from));
        }
    }

    public static Span of(int from, int to) {
        return new Span(from, to);
    }

    public int minutes() {
        return to - from;
    }

    public boolean contains(int minute) {
        return from <= minute && minute < to;
    }

    public boolean overlaps(Span other) {
        return from < other.to && other.from < to;
    }
}
