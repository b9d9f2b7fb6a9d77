package org.shedboard.files;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.shedboard.hours.Activity;
import org.shedboard.hours.Stretch;
import org.shedboard.tally.SpanTally;
import org.shedboard.words.Words;

/** What the forms and letters in the bars of a sheet stand for. */
final class SheetLegend {
    static final String TO_SAY = "?";

    private static final Box SWATCH = new Box(0.3, 0.3, 6, 2.6);
    private static final String TAG = "7";

    private SheetLegend() {}

    /** The letter of other work: the one that its word begins with. */
    static String letter(Activity.OtherWork.Kind kind) {
        return Words.say("otherWork." + kind).substring(0, 1);
    }

    static String word(Stretch.Use use) {
        return switch (use) {
            case ON_MACHINE -> Words.say("sheet.on_machine");
            case OTHER_WORK -> Words.say("sheet.other");
            case REST -> Words.say("sheet.rest");
            case REST_TO_SAY -> Words.say("sheet.to_say");
            case FREE -> Words.say("sheet.free");
            case UNACCOUNTED -> Words.say("sheet.unaccounted");
        };
    }

    /** Of the bars of days; what does not occur is left out. */
    static Element ofDays(SpanTally tally) {
        Element legend = Element.of("p").with("class", "legend");
        for (Stretch.Use use : Stretch.Use.values()) {
            if (tally.hours().minutes(each -> each == use) > 0) {
                Picture swatch = Picture.mute(SWATCH.width() + 0.6, SWATCH.height() + 0.6);
                DayBar.draw(swatch, SWATCH, use, label(use));
                legend.add(entry(swatch, use == Stretch.Use.OTHER_WORK ? other(tally) : word(use)));
            }
        }
        return legend;
    }

    private static String label(Stretch.Use use) {
        return switch (use) {
            case ON_MACHINE -> TAG;
            case REST_TO_SAY -> TO_SAY;
            default -> "";
        };
    }

    private static String other(SpanTally tally) {
        List<Activity.OtherWork.Kind> kinds = Arrays.stream(Activity.OtherWork.Kind.values())
                .filter(kind -> tally.hours().people().stream()
                        .anyMatch(person -> person.other().containsKey(kind)))
                .toList();
        return kinds.stream()
                .map(kind -> Words.say("sheet.letter", letter(kind), Words.say("otherWork." + kind)))
                .collect(Collectors.joining(", ", Words.say("sheet.other") + ": ", ""));
    }

    /** Of the bars that set worked against estimated. */
    static Element ofEstimates() {
        Box half = new Box(0.3, 0.3, 3, 2.6);
        return Element.of("p")
                .with("class", "legend")
                .add(
                        entry(Picture.mute(6.6, 3.2).full(SWATCH), Words.say("sheet.worked")),
                        entry(Picture.mute(6.6, 3.2).hatched(SWATCH), Words.say("sheet.not_needed")),
                        entry(
                                Picture.mute(6.6, 3.2).upright(half.right(), 0, 3.2, EstimateBar.STROKE),
                                Words.say("sheet.estimate_ends")));
    }

    private static Element entry(Picture swatch, String word) {
        return Element.of("span").add(swatch.element()).text(" " + word);
    }
}
