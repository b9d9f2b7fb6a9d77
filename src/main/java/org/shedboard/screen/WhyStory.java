package org.shedboard.screen;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.shedboard.day.Clocks;
import org.shedboard.day.Day;
import org.shedboard.day.Outlook;
import org.shedboard.day.WhyPlanned;
import org.shedboard.pack.story.Instead;
import org.shedboard.pack.story.Link;
import org.shedboard.pack.story.Reason;
import org.shedboard.shop.Person;
import org.shedboard.shop.Place;
import org.shedboard.shop.Stay;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;
import org.shedboard.words.Words;

/** Why a task is planned as it is, as short sentences: on the screen and by the command alike. */
public final class WhyStory {
    private final Outlook outlook;
    private final Day day;
    private final WhyPlanned why;

    public WhyStory(Outlook outlook, WhyPlanned why) {
        this.outlook = outlook;
        this.day = outlook.day();
        this.why = why;
    }

    /** What is planned: the task, from when to when, where and by whom. */
    public String planned() {
        String where = why.place().map(place -> Words.say("why.at", place)).orElse("");
        String who = why.time().people().stream().map(this::person).collect(Collectors.joining(", "));
        return Words.say(
                        "why.planned",
                        why.task().name(),
                        time(outlook.handsFrom(why.time())),
                        time(why.time().end()),
                        where,
                        who)
                .strip();
    }

    /** Why then: the facts that keep it from starting earlier, then what is behind them. */
    public List<String> then() {
        List<String> lines = new ArrayList<>();
        for (Link link : why.chain()) {
            String because = because(link);
            if (!because.isEmpty()) {
                lines.add(
                        lines.isEmpty()
                                ? Words.say("why.not_before", time(why.time().start()), because)
                                : Words.say("why.behind", nameOf(link), time(link.start()), because));
            }
        }
        if (lines.isEmpty()) {
            lines.add(Words.say(isBegun() ? "why.begun" : "why.at_once"));
        }
        return lines;
    }

    private boolean isBegun() {
        return why.chain().stream()
                .limit(1)
                .flatMap(link -> link.reasons().stream())
                .anyMatch(Reason.Begun.class::isInstance);
    }

    private String because(Link link) {
        WhyLine line = new WhyLine(outlook, day.expectVisit(link.job()));
        return link.reasons().stream()
                .flatMap(reason -> line.say(reason).stream())
                .distinct()
                .collect(Collectors.joining("; "));
    }

    private String nameOf(Link link) {
        Visit visit = day.expectVisit(link.job());
        String task = visit.findTask(link.task()).map(Task::name).orElse(link.task());
        return visit.id().equals(why.visit().id())
                ? Words.say("why.own", task)
                : Words.say("why.of", task, new WhyLine(outlook, visit).tag(link.job()));
    }

    /** Why there: what each other place of the kind would mean. */
    public List<String> there() {
        if (why.place().isEmpty()) {
            return List.of(Words.say("why.anywhere"));
        }
        if (why.visit().stayOf(why.task().id()).filter(Stay::hasBegun).isPresent()) {
            return List.of(Words.say("why.stands_there", why.place().get()));
        }
        return why.places().isEmpty()
                ? List.of(Words.say("why.only_place", why.place().get()))
                : why.places().stream().map(this::place).toList();
    }

    private String place(Instead other) {
        Place place = day.shop().expectPlace(other.id());
        return other.bar()
                .map(bar -> bar == Instead.Bar.RATED
                        ? Words.say(
                                "why.rated",
                                other.id(),
                                place.ratedKg(),
                                day.machineOf(why.visit()).massKg())
                        : Words.say("why.place_set", other.id(), why.place().orElseThrow()))
                .orElseGet(() -> could(other, other.id(), "why.place_free"));
    }

    /** Why that person: what each of the others would mean. */
    public List<String> who() {
        if (why.people().isEmpty()) {
            return List.of(Words.say(isBegun() ? "why.theirs" : "why.needs_all"));
        }
        return why.people().stream().map(this::other).toList();
    }

    private String other(Instead other) {
        String name = person(other.id());
        return other.bar()
                .map(bar -> switch (bar) {
                    case SKILL ->
                        Words.say("why.may_not", name, Words.say(why.task().skill()));
                    case APART -> Words.say("why.apart", name);
                    case PINNED, RATED -> Words.say("why.person_set", name);
                })
                .orElseGet(() -> could(other, name, "why.person_free"));
    }

    /** Earlier than planned, then as well, or what stands in the way. */
    private String could(Instead other, String name, String then) {
        if (isEarlier(other)) {
            return Words.say("why.earlier", name, time(other.earliest().getAsInt()));
        }
        String against = other.against().stream()
                .flatMap(reason -> new WhyLine(outlook, why.visit()).say(reason).stream())
                .distinct()
                .collect(Collectors.joining("; "));
        if (!against.isEmpty()) {
            return against;
        }
        return Words.say(other.earliest().isPresent() ? then : "why.slower", name);
    }

    private boolean isEarlier(Instead other) {
        return other.earliest().isPresent()
                && other.earliest().getAsInt() < why.time().start();
    }

    /** What would have it start earlier, as far as that is in anybody's hands. */
    public List<String> change() {
        Set<String> lines = new LinkedHashSet<>();
        Stream.concat(
                        why.people().stream()
                                .filter(this::isEarlier)
                                .map(each -> Words.say(
                                        "why.with",
                                        person(each.id()),
                                        time(each.earliest().getAsInt()))),
                        why.places().stream()
                                .filter(this::isEarlier)
                                .map(each -> Words.say(
                                        "why.in",
                                        each.id(),
                                        time(each.earliest().getAsInt()))))
                .forEach(lines::add);
        why.chain().stream()
                .limit(1)
                .flatMap(link -> link.reasons().stream())
                .flatMap(reason -> remedy(reason).stream())
                .forEach(lines::add);
        if (lines.isEmpty()) {
            lines.add(Words.say("why.nothing"));
        }
        return List.copyOf(lines);
    }

    private Optional<String> remedy(Reason reason) {
        if (reason instanceof Reason.Arrival) {
            return Optional.of(Words.say("why.change_arrival"));
        } else if (reason instanceof Reason.Part) {
            return Optional.of(Words.say(why.visit().hold().isPresent() ? "why.change_held" : "why.change_part"));
        } else if (reason instanceof Reason.Pinned) {
            return Optional.of(Words.say("why.change_pinned"));
        } else if (reason instanceof Reason.Task || reason instanceof Reason.StayBefore) {
            return Optional.of(Words.say("why.change_before"));
        } else if (reason instanceof Reason.PlaceTaken taken) {
            return Optional.of(Words.say("why.change_taken", tag(taken.job()), taken.place()));
        } else if (reason instanceof Reason.PlaceClosed closed) {
            return Optional.of(Words.say("why.change_closed", closed.place()));
        } else if (reason instanceof Reason.Busy busy) {
            return busy.job().equals(why.visit().id())
                    ? Optional.empty()
                    : Optional.of(Words.say("why.change_busy", person(busy.person()), tag(busy.job())));
        } else if (reason instanceof Reason.Off off) {
            return Optional.of(Words.say("why.change_off", person(off.person()), time(off.from())));
        }
        return reason instanceof Reason.Chosen ? Optional.of(Words.say("why.change_chosen")) : Optional.empty();
    }

    private String tag(String visitId) {
        return new WhyLine(outlook, why.visit()).tag(visitId);
    }

    private String person(String id) {
        return day.shop().findPerson(id).map(Person::name).orElse(id);
    }

    private String time(int minute) {
        return Clocks.sayTime(day, day.instantOf(minute));
    }
}
