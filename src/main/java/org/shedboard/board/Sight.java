package org.shedboard.board;

import java.util.Optional;
import java.util.OptionalInt;
import org.shedboard.day.Outlook;
import org.shedboard.pack.Span;

/**
 * Which part of time the board shows.
 *
 * @param begin the minute it begins at, counted from midnight of the board's day; empty while it follows the present minute
 */
public record Sight(Zoom zoom, OptionalInt begin) {
    static final Sight USUAL = new Sight(Zoom.WORKDAY, OptionalInt.empty());

    /**
     * How far there is anything to see.
     *
     * @param anchor the minute that is followed: the present one, before the first shift that shift's first
     * @param horizon the plan ends here
     */
    public record Extent(int anchor, int horizon) {
        public static Extent of(Outlook outlook) {
            int firstShift = outlook.problem().people().stream()
                    .flatMap(person -> person.shifts().stream())
                    .mapToInt(Span::from)
                    .filter(from -> from >= 0)
                    .min()
                    .orElse(0);
            return new Extent(
                    Math.max(outlook.problem().now(), firstShift),
                    outlook.problem().horizon());
        }
    }

    /** The first minute that is shown: from today's midnight at the earliest, and as late as the plan's end still fills it. */
    public int from(Extent extent) {
        int followed = zoom.beginFor(extent.anchor());
        int least = Math.min(0, followed);
        int most = Math.max(followed, zoom.onGrid(extent.horizon() - zoom.minutes()));
        return Math.max(least, Math.min(most, begin.orElse(followed)));
    }

    /** The minute after the last one that is shown for certain; a wide screen shows a little more. */
    public int to(Extent extent) {
        return from(extent) + zoom.minutes();
    }

    /** So many strides later, earlier where that is negative; where it comes to lie as if it followed, it follows again. */
    Sight moved(int strides, Extent extent) {
        int wanted = from(extent) + strides * zoom.stride();
        int next = new Sight(zoom, OptionalInt.of(wanted)).from(extent);
        return next == following().from(extent) ? following() : new Sight(zoom, OptionalInt.of(next));
    }

    boolean canMove(int strides, Extent extent) {
        return moved(strides, extent).from(extent) != from(extent);
    }

    /** Nearer by so many steps, with what was in the middle still there; empty where there is no such step. */
    Optional<Sight> closer(int steps, Extent extent) {
        return zoom.closer(steps)
                .map(next -> isFollowing() ? new Sight(next, OptionalInt.empty()) : around(middle(extent), next));
    }

    private int middle(Extent extent) {
        return from(extent) + zoom.minutes() / 2;
    }

    private static Sight around(int middle, Zoom zoom) {
        return new Sight(zoom, OptionalInt.of(zoom.onGrid(middle - zoom.minutes() / 2)));
    }

    public boolean isFollowing() {
        return begin.isEmpty();
    }

    Sight following() {
        return new Sight(zoom, OptionalInt.empty());
    }
}
