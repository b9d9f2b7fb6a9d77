package org.shedboard.board;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.shedboard.day.Act;
import org.shedboard.day.Clocks;
import org.shedboard.day.Comparison;
import org.shedboard.day.Day;
import org.shedboard.day.Names;
import org.shedboard.shop.Owner;
import org.shedboard.shop.Visit;
import org.shedboard.words.Words;

/** What is tried and what comes of it, said: on the screen and by the command alike. */
public final class TrialWords {
    private final Day day;

    /** @param day the day on which it is tried */
    public TrialWords(Day day) {
        this.day = day;
    }

    /** One act, as a change that is thought of. */
    public String act(Act act) {
        if (act instanceof Act.TakeIn in) {
            String owner = in.whose()
                    .ownerId()
                    .flatMap(day.books()::findOwner)
                    .map(Owner::name)
                    .orElse(in.whose().name());
            String machine = in.which()
                    .machineId()
                    .map(id -> Names.of(day.books(), day.books().expectMachine(id)))
                    .orElse(owner);
            return Words.say("trial.TakeIn", machine);
        } else if (act instanceof Act.BeHere here) {
            return Words.say("trial.BeHere", day.nameOf(here.personId()), Clocks.sayTime(day, here.until()));
        } else if (act instanceof Act.Stop stop) {
            return Words.say(stop.leaves() ? "trial.Leave" : "trial.Stop", day.nameOf(stop.personId()));
        } else if (act instanceof Act.CheckHoist check) {
            String hoist = day.shop().expectPlace(check.checked().placeId()).name();
            return check.checked()
                    .lockedOut()
                    .map(why -> Words.say("trial.LockOut", hoist, why))
                    .orElse(Words.say("trial.CheckHoist", hoist));
        } else if (act instanceof Act.SayPromise promise) {
            Visit visit = day.expectVisit(promise.visitId());
            return Words.say("trial.SayPromise", Names.of(day, visit), Clocks.sayTime(day, promise.at()));
        } else if (act instanceof Act.SetWashDown set) {
            String owner = day.books().expectOwner(set.ownerId()).name();
            return Words.say(set.first() ? "trial.SetWashDown" : "trial.NoWashDown", owner);
        }
        return Words.say(act instanceof Act.Post ? "trial.Post" : "trial.other");
    }

    /** How many are ready earlier and later, and what becomes of promises. */
    public static String sum(Comparison comparison) {
        return Words.say(
                "trial.sum",
                comparison.earlier(),
                comparison.later(),
                comparison.count(Comparison.Fate.SAVED),
                comparison.count(Comparison.Fate.IN_DANGER));
    }

    public String nameOf(Visit visit) {
        return Names.of(day, visit);
    }

    /** When it is ready: one time where that stays, else from when to when. */
    public String ready(Comparison.Row row) {
        String before = row.before().map(this::ready).orElse("");
        String after = row.after().map(this::ready).orElse("");
        return before.equals(after)
                ? after
                : Words.say("trial.from_to", before, after).strip();
    }

    private String ready(Comparison.Standing standing) {
        return standing.ready().map(at -> Clocks.sayTime(day, at)).orElse(Words.say("trial.not_planned"));
    }

    public String promised(Comparison.Row row) {
        String before = row.before()
                .flatMap(Comparison.Standing::promised)
                .map(at -> Clocks.sayTime(day, at))
                .orElse("");
        String after = row.after()
                .flatMap(Comparison.Standing::promised)
                .map(at -> Clocks.sayTime(day, at))
                .orElse("");
        return before.equals(after) || row.before().isEmpty()
                ? after
                : Words.say("trial.from_to", before, after).strip();
    }

    /** The chance of its promise: one where that stays, else from what to what. */
    public static String chance(Comparison.Row row) {
        String before = row.before().map(TrialWords::chance).orElse("");
        String after = row.after().map(TrialWords::chance).orElse("");
        return before.equals(after) || before.isEmpty() ? after : Words.say("trial.from_to", before, after);
    }

    private static String chance(Comparison.Standing standing) {
        return standing.chance().isPresent()
                ? Words.say("trial.chance", standing.chance().getAsInt())
                : "";
    }

    /** What becomes of it in a word or two. */
    public static String fate(Comparison.Row row) {
        if (row.before().isEmpty()) {
            return Words.say("trial.comes");
        }
        if (row.after().isEmpty()) {
            return Words.say("trial.goes");
        }
        return switch (row.fate()) {
            case IN_DANGER -> Words.say("trial.in_danger");
            case SAVED -> Words.say("trial.saved");
            case SAME -> row.isEarlier() ? Words.say("trial.earlier") : row.isLater() ? Words.say("trial.later") : "";
        };
    }

    /** What moves of a visit, a task each. */
    public List<String> moves(Comparison.Row row) {
        List<String> lines = new ArrayList<>();
        for (Comparison.Move move : row.moves()) {
            List<String> parts = new ArrayList<>();
            Comparison.Move.At was = move.before();
            Comparison.Move.At is = move.after();
            if (!was.start().equals(is.start())) {
                parts.add(instead(Clocks.sayTime(day, is.start()), Clocks.sayTime(day, was.start())));
            }
            if (!was.people().equals(is.people())) {
                parts.add(instead(people(is), people(was)));
            }
            if (!was.place().equals(is.place())) {
                parts.add(instead(is.place().orElse(""), was.place().orElse("")));
            }
            lines.add(Words.say("trial.move", move.task().name(), String.join("; ", parts)));
        }
        return lines;
    }

    private static String instead(String is, String was) {
        return Words.say("trial.instead", is, was);
    }

    private String people(Comparison.Move.At at) {
        return at.people().stream().map(day::nameOf).collect(Collectors.joining(", "));
    }
}
