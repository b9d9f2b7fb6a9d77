package org.shedboard.board;

import java.util.List;
import java.util.Optional;
import org.shedboard.register.IdNumber;
import org.shedboard.register.NumberRemark;
import org.shedboard.words.Words;

/** What the program makes of an identification number, said: on the screen and by the commands alike. */
public final class NumberWords {
    private NumberWords() {}

    /** What sort of number it is and what came of checking it. */
    public static String about(IdNumber number) {
        return Words.say("numberKind.about", Words.say(number.kind()), Words.say(number.check()));
    }

    public static String of(NumberRemark remark) {
        return Words.say("number." + remark.kind(), remark.values());
    }

    /** What it is marked with beside the number; empty where it does not fail. */
    public static Optional<String> mark(String typed) {
        return IdNumber.of(typed).faults().stream()
                .filter(fault -> fault.kind().fails())
                .findFirst()
                .map(NumberWords::mark);
    }

    private static String mark(NumberRemark fault) {
        return Words.say("number.short." + fault.kind(), fault.values());
    }

    /** The model years it allows, for a sentence. */
    public static String years(List<Integer> years) {
        return years.isEmpty()
                ? Words.say("numberKind.no_years")
                : String.join(
                        Words.say("numberKind.or"),
                        years.stream().map(String::valueOf).toList());
    }
}
