package org.shedboard.app.command;

import java.util.ArrayList;
import java.util.List;
import org.shedboard.board.NumberWords;
import org.shedboard.register.IdNumber;
import org.shedboard.register.NumberRemark;
import org.shedboard.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** What an identification number tells; no shop is needed for that. */
@Command(name = "number")
public final class NumberCommand implements Wish {
    @Parameters(arity = "1..*", paramLabel = "TEXT", descriptionKey = "option.idNumber")
    private List<String> texts;

    public Answer answer(int thisYear) {
        IdNumber number = IdNumber.of(String.join(" ", texts));
        return new Answer(lines(number, thisYear), tree(number, thisYear).fields());
    }

    private static List<String> lines(IdNumber number, int thisYear) {
        List<String> lines = new ArrayList<>();
        lines.add(Words.say("command.number.is", number.typed(), NumberWords.about(number)));
        lines.add(Words.say("command.number.years", NumberWords.years(number.years(thisYear))));
        number.remarks(thisYear).forEach(remark -> lines.add("  " + NumberWords.of(remark)));
        return lines;
    }

    static Tree tree(IdNumber number, int thisYear) {
        return new Tree()
                .put("number", number.typed())
                .put("judged", number.judged())
                .put("kind", number.kind())
                .put("check", number.check())
                .put("fails", number.fails())
                .put("expectedDigit", number.expectedDigit().map(String::valueOf))
                .put("misread", number.misread())
                .put("years", number.years(thisYear))
                .put(
                        "remarks",
                        number.remarks(thisYear).stream()
                                .map(NumberCommand::tree)
                                .toList());
    }

    private static Object tree(NumberRemark remark) {
        return new Tree()
                .put("kind", remark.kind())
                .put("fails", remark.kind().fails())
                .put("values", remark.values())
                .put("sentence", NumberWords.of(remark))
                .fields();
    }
}
