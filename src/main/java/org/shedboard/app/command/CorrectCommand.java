package org.shedboard.app.command;

import java.time.LocalDate;
import java.util.Optional;
import org.shedboard.board.ClockTyping;
import org.shedboard.day.Act;
import org.shedboard.day.Day;
import org.shedboard.hours.Activity;
import org.shedboard.hours.ClockEntry;
import org.shedboard.shop.Visit;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Puts a row of the hours right, strikes one out, or writes down one that is missing. */
@Command(name = "correct")
final class CorrectCommand implements Wish.OnTheDay {
    private static final String AT_WORK = "at-work";

    @Parameters(index = "0", arity = "0..1", paramLabel = "ROW", descriptionKey = "option.row")
    private Optional<String> row;

    @Option(names = "--by", paramLabel = "NAME", required = true)
    private String by;

    @Option(names = "--why", paramLabel = "TEXT", required = true)
    private String why;

    @Option(names = "--date", paramLabel = "DATE")
    private Optional<LocalDate> date;

    @Option(names = "--time", paramLabel = "FROM-TO")
    private Optional<String> time;

    @Option(names = "--strike")
    private boolean strike;

    @Option(names = "--whose", paramLabel = "NAME")
    private Optional<String> whose;

    @Option(names = "--what", paramLabel = "KIND")
    private Optional<String> what;

    @Option(names = "--on", paramLabel = "TAG")
    private Optional<String> on;

    @Override
    public Optional<LocalDate> date() {
        return date;
    }

    @Override
    public Reply reply(Seen seen) {
        Asked asked = new Asked(seen);
        String signer = asked.person(by).id();
        Act act = new Act.Correct(signer, row, strike ? Optional.empty() : Optional.of(right(seen.day(), asked)), why);
        return new Reply.Carry(act, Optional.of(signer));
    }

    /** What is not named stays as the old row has it. */
    private Act.Correct.Written right(Day day, Asked asked) {
        Optional<ClockEntry> old = row.map(id -> ClockEntry.standing(day.rows()).stream()
                .filter(each -> each.id().equalsIgnoreCase(id))
                .findFirst()
                .orElseThrow(() -> new CannotDo("entry_unknown", id)));
        String person = whose.map(name -> asked.person(name).id())
                .or(() -> old.map(ClockEntry::personId))
                .orElseThrow(() -> new WrongUse("command.correct_whose"));
        Activity activity = activity(asked)
                .or(() -> old.map(ClockEntry::activity))
                .orElseThrow(() -> new WrongUse("command.correct_what"));
        ClockTyping.FromTo span = time.map(typed -> span(day, typed))
                .or(() -> old.flatMap(each -> each.to().map(to -> new ClockTyping.FromTo(each.from(), to))))
                .orElseThrow(() -> new WrongUse("command.correct_when"));
        return new Act.Correct.Written(person, activity, span.from(), span.to());
    }

    private static ClockTyping.FromTo span(Day day, String typed) {
        ClockTyping.Read<ClockTyping.FromTo> read = ClockTyping.fromTo(typed, day.date(), day.zone());
        return read.value().orElseThrow(() -> new CannotDo(read.fault().orElseThrow()));
    }

    private Optional<Activity> activity(Asked asked) {
        if (on.isPresent()) {
            Visit visit = asked.visit(on.get());
            return Optional.of(
                    new Activity.OnStay(visit.id(), visit.newestStay().step()));
        }
        return what.map(CorrectCommand::activity);
    }

    private static Activity activity(String kind) {
        if (kind.equalsIgnoreCase(AT_WORK)) {
            return new Activity.AtWork();
        }
        Optional<Activity> other =
                Named.find(Activity.OtherWork.Kind.class, kind).map(Activity.OtherWork::new);
        return other.or(() -> Named.find(Activity.Break.Kind.class, kind).map(Activity.Break::new))
                .orElseThrow(() -> new WrongUse(
                        "command.not_one_of",
                        kind,
                        String.join(
                                ", ",
                                AT_WORK,
                                Named.all(Activity.OtherWork.Kind.class),
                                Named.all(Activity.Break.Kind.class))));
    }
}
