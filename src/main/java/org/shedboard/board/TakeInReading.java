package org.shedboard.board;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.shedboard.board.TakeInForm.Field;
import org.shedboard.day.Act;
import org.shedboard.day.Day;
import org.shedboard.day.DoorNote;
import org.shedboard.day.DoorNotes;
import org.shedboard.day.MeterQuestions;
import org.shedboard.day.Notices;
import org.shedboard.day.Quote;
import org.shedboard.day.Refusal;
import org.shedboard.estimate.Work;
import org.shedboard.register.Finder;
import org.shedboard.register.Notice;
import org.shedboard.register.Reading;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Owner;
import org.shedboard.shop.Payer;
import org.shedboard.words.Words;

/**
 * What a take-in form means: the act it stands for, what its lists show, and what in it cannot be read.
 *
 * @param who id of the person who promises
 * @param finder what finds machines in the books of the day
 */
public record TakeInReading(Day day, Instant now, String who, TakeInForm form, Finder finder) {
    public static TakeInReading of(Board board, TakeInForm form) {
        return new TakeInReading(board.expectDay(), board.expectOutlook().at(), board.who(), form, board.finder());
    }

    public List<Machine> matches() {
        return Found.machines(finder, day, form.text(Field.FIND));
    }

    public Optional<Machine> machine() {
        return form.machineId().flatMap(day.books()::findMachine);
    }

    public Optional<String> classId() {
        return machine().map(Machine::classId).or(form::classId);
    }

    /** The owner's name: of the machine we know, or as typed. */
    public String ownerName() {
        return machine()
                .map(machine -> day.books().expectOwner(machine.ownerId()).name())
                .orElse(form.text(Field.OWNER));
    }

    public List<Work> works() {
        return classId().map(day.books().catalogue()::worksFor).orElse(List.of());
    }

    /** What makers ask for that may concern this machine. */
    public List<Notice> notices() {
        return classId().isPresent() ? Notices.openOn(day, which()) : List.of();
    }

    /** Whether enough is known to say what it takes. */
    boolean isQuotable() {
        return classId().isPresent() && form.isWanted() && form.mud().isPresent();
    }

    /** The offer to promise by: with everybody going on as posted; packed anew only where that has no time for it. */
    public Optional<Quote.Offer> offer() {
        return quote().flatMap(quote -> quote.asPosted().or(quote::repacked));
    }

    /** Whether there may be an offer in a moment where there is none yet. */
    boolean isOfferStillOpen() {
        return quote().filter(Quote::isRepacking).isPresent() && offer().isEmpty();
    }

    private Optional<Quote> quote() {
        return form.answer()
                .filter(Quote.Answer.Given.class::isInstance)
                .map(answer -> ((Quote.Answer.Given) answer).quote());
    }

    /** The chance, in a hundred, of a time by that offer; empty before there is a quote. */
    public OptionalInt chanceBy(Instant time) {
        return offer().map(offer -> OptionalInt.of(offer.chanceBy(time))).orElse(OptionalInt.empty());
    }

    /** The moment typed in a field of times; empty when nothing or nonsense is typed. */
    public Optional<Instant> time(Field field) {
        return Times.parse(form.text(field), now, day.zone());
    }

    /** The first thing typed that cannot be read, as a sentence. */
    Optional<String> fault() {
        if (classId().isEmpty()) {
            return Optional.of(Words.say("form.which_machine"));
        }
        if (!form.isWanted()) {
            return Optional.of(Words.say("form.which_work"));
        }
        if (form.mud().isEmpty()) {
            return Optional.of(Words.say("form.which_mud"));
        }
        for (Field field : List.of(Field.PROMISE, Field.EXPECTED)) {
            if (!form.typing(field).isBlank() && time(field).isEmpty()) {
                return Optional.of(Words.say("form.time_unread", form.text(field)));
            }
        }
        if (meter().isEmpty()) {
            return Optional.of(Words.say("form.number_unread", form.text(Field.METER)));
        }
        for (Field field : List.of(Field.TAG, Field.YEAR)) {
            if (!form.typing(field).isBlank() && number(field).isEmpty()) {
                return Optional.of(Words.say("form.number_unread", form.text(field)));
            }
        }
        return Optional.empty();
    }

    private Optional<MeterTyping> meter() {
        return MeterTyping.parse(form.text(Field.METER));
    }

    /** What is to be asked about the meters before they are believed. */
    Optional<Refusal> meterQuestion() {
        return MeterQuestions.of(day, act(), now);
    }

    private OptionalInt number(Field field) {
        String text = form.text(field).strip();
        return text.matches("\\d{1,7}") ? OptionalInt.of(Integer.parseInt(text)) : OptionalInt.empty();
    }

    /** What is to be known before a time is said. */
    public List<DoorNote> doorNotes() {
        return DoorNotes.of(day, act(), now);
    }

    /** The act this form stands for; what is not filled in has its usual meaning. */
    Act.TakeIn act() {
        List<Act.Wanted> wanted = new ArrayList<>();
        form.workIds().forEach(id -> wanted.add(new Act.Wanted(id, Payer.OWNER)));
        form.noticeIds().stream()
                .flatMap(id -> day.books().register().findNotice(id).stream())
                .forEach(notice -> wanted.add(Act.Wanted.of(notice)));
        Optional<Act.TakeIn.Said> said = time(Field.PROMISE).map(at -> new Act.TakeIn.Said(at, who, told()));
        return new Act.TakeIn(
                whose(),
                which(),
                form.mud().orElse(Mud.CLEAN),
                form.depth(),
                form.condition(),
                wanted,
                number(Field.TAG),
                meter().map(MeterTyping::hours).orElse(OptionalInt.empty()),
                time(Field.EXPECTED),
                form.text(Field.NOTE),
                said,
                new Act.TakeIn.Dials(
                        meter().map(MeterTyping::kilometres).orElse(OptionalInt.empty()), Reading.Told.AS_EXPECTED));
    }

    private String told() {
        return form.typing(Field.TOLD).isBlank() ? ownerName() : form.text(Field.TOLD);
    }

    private Act.TakeIn.Whose whose() {
        Optional<String> known = day.books().owners().stream()
                .filter(owner ->
                        owner.name().equalsIgnoreCase(form.text(Field.OWNER).strip()))
                .map(Owner::id)
                .findFirst();
        return new Act.TakeIn.Whose(
                known, form.text(Field.OWNER).strip(), form.text(Field.PHONE).strip());
    }

    /** Of a machine that we know the number is said only where it is another than it has. */
    private Act.TakeIn.Which which() {
        Optional<Machine> known = machine();
        String number = form.text(Field.NUMBER).strip();
        if (known.isPresent()) {
            return Act.TakeIn.Which.known(
                    known.get().id(),
                    number(Field.YEAR),
                    number.equals(known.get().number()) ? "" : number);
        }
        return new Act.TakeIn.Which(
                form.machineId(),
                form.classId().orElse(""),
                form.text(Field.LABEL).strip(),
                number(Field.YEAR),
                number);
    }
}
