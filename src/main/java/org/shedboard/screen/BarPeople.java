package org.shedboard.screen;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Region;
import org.shedboard.grid.Style;
import org.shedboard.grid.TextWidth;
import org.shedboard.words.Words;

/**
 * The names under the bars of one place. A name is whole or not there, a blank parts it from those of the next bar, and the mark
 * of now is not written over; where not all have room, the first stands for the others, with their number.
 */
final class BarPeople {
    /** A bar, and who works on it; may be nobody. */
    record Under(Region columns, List<String> names) {
        Under {
            names = List.copyOf(names);
        }
    }

    private final Canvas canvas;
    private final Region row;
    private final Region now;

    /** @param now the cell that marks the present minute; empty where it is not in this row */
    BarPeople(Canvas canvas, Region row, Region now) {
        this.canvas = canvas;
        this.row = row;
        this.now = now;
    }

    /** @param bars from left to right */
    void draw(List<Under> bars) {
        int taken = row.left();
        for (int i = 0; i < bars.size(); i++) {
            Under bar = bars.get(i);
            int right = i + 1 < bars.size() ? bars.get(i + 1).columns().left() - 1 : row.rightEdge();
            Optional<Region> rest = name(between(Math.max(taken, bar.columns().left()), right), bar.names());
            taken = rest.map(Region::left).orElse(taken);
        }
    }

    /** Gives what is left of the room behind the names and a blank; empty where they have none. */
    private Optional<Region> name(Region room, List<String> names) {
        return wordings(names)
                .flatMap(text -> places(room)
                        .filter(place -> TextWidth.of(text) <= place.width())
                        .limit(1)
                        .map(place -> canvas.text(place, text, Style.QUIET).rightOf(1)))
                .findFirst();
    }

    /** Before the mark of now, else behind it. */
    private Stream<Region> places(Region room) {
        if (now.isEmpty() || !room.contains(now.left(), now.top())) {
            return Stream.of(room);
        }
        return Stream.of(between(room.left(), now.left()), between(now.left() + 1, room.rightEdge()));
    }

    /** The fullest first. */
    private static Stream<String> wordings(List<String> names) {
        if (names.isEmpty()) {
            return Stream.empty();
        }
        String first = names.get(0);
        return names.size() == 1
                ? Stream.of(first)
                : Stream.of(String.join(" ", names), Words.say("bar.people_more", first, names.size() - 1));
    }

    private Region between(int left, int right) {
        return new Region(left, row.top(), Math.max(0, right - left), 1);
    }
}
