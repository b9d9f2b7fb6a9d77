package org.shedboard.board;

import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.shedboard.board.Overlay.Choice;
import org.shedboard.board.Overlay.Choose;
import org.shedboard.board.Overlay.Purpose;
import org.shedboard.board.Overlay.Reply;
import org.shedboard.board.Overlay.TypeIn;
import org.shedboard.day.Act;
import org.shedboard.day.Day;
import org.shedboard.day.Refusal;
import org.shedboard.estimate.Point;
import org.shedboard.shop.Mark;
import org.shedboard.shop.Visit;
import org.shedboard.words.Words;

/** What keys do while a question stands over the screen. */
final class OverlayKeys {
    private static final Pattern ERRAND = Pattern.compile("((?:[a-zA-Z]+ +)?\\S+) +(\\d{1,3})(.*)");

    private final Board board;

    OverlayKeys(Board board) {
        this.board = board;
    }

    Turn press(Key key) {
        Overlay overlay = board.overlay().orElseThrow();
        if (key.kind() == Key.Kind.ESCAPE) {
            return left(overlay);
        }
        if (overlay instanceof Choose choose) {
            return choose(choose, key);
        }
        return type((TypeIn) overlay, key);
    }

    /** Whoever leaves out the value of a fix is asked about the fix all the same. */
    private Turn left(Overlay overlay) {
        Board without = board.without().withoutNote();
        return overlay instanceof TypeIn in && in.purpose() instanceof Purpose.Measured measured
                ? Fixes.offered(without, measured.tick())
                : Turn.to(without);
    }

    private Turn choose(Choose choose, Key key) {
        return switch (key.kind()) {
            case UP, BACK_TAB -> Turn.to(board.asking(choose.select(choose.selected() - 1)));
            case DOWN, TAB -> Turn.to(board.asking(choose.select(choose.selected() + 1)));
            case ENTER ->
                choose.choices().isEmpty()
                        ? Turn.to(board)
                        : answer(choose.choices().get(choose.selected()));
            case CHARACTER ->
                choose.choices().stream()
                        .filter(choice -> choice.key() == Character.toLowerCase(key.character()))
                        .findFirst()
                        .map(this::answer)
                        .orElse(Turn.to(board));
            default -> Turn.to(board);
        };
    }

    private Turn answer(Choice choice) {
        if (choice.off().isPresent()) {
            return Turn.to(board.noting(Note.refused(choice.off().get())));
        }
        Board answered = board.without().withoutNote();
        if (choice.reply() instanceof Reply.Ask ask) {
            return Turn.to(answered.asking(ask.next()));
        }
        if (choice.reply() instanceof Reply.Show show) {
            boolean same = show.screen().getClass() == board.screen().getClass();
            return Turn.to(same ? answered.with(show.screen()) : answered.on(show.screen()));
        }
        if (choice.reply() instanceof Reply.Offer offer) {
            return Turn.to(answered, new Effect.AskFix(offer.visitId(), offer.pointId()));
        }
        if (choice.reply() instanceof Reply.CarryOn on) {
            return new Signatures(answered).carry(on.act(), on.date());
        }
        Act act = ((Reply.Carry) choice.reply()).act();
        return new Signatures(answered).carry(act, answered.expectDay().date());
    }

    private Turn type(TypeIn in, Key key) {
        if (key.kind() != Key.Kind.ENTER) {
            return Turn.to(board.asking(in.with(in.typing().with(key))));
        }
        Purpose purpose = in.purpose();
        String text = in.typing().text().strip();
        if (purpose instanceof Purpose.HoldNote hold) {
            return carry(new Act.HoldVisit(hold.visitId(), hold.reason(), text, Optional.empty()));
        }
        if (purpose instanceof Purpose.LockOut lock) {
            return text.isEmpty()
                    ? refuse(Words.say("ask.reason_missing"))
                    : carry(new Act.CheckHoist(
                            new Act.OpenDay.Checked(lock.placeId(), board.who(), Optional.of(text))));
        }
        if (purpose instanceof Purpose.LendOurs lend) {
            return text.isEmpty()
                    ? refuse(Words.say("nothing_lent"))
                    : carry(LoanKeys.lend(board.expectDay(), lend.visitId(), text));
        }
        if (purpose instanceof Purpose.Measured measured) {
            return measured(in, measured.tick(), text);
        }
        if (purpose instanceof Purpose.NotReached not) {
            return text.isEmpty()
                    ? refuse(Words.say("ask.reason_missing"))
                    : carry(InspectAsks.noted(not.tick(), text));
        }
        if (purpose instanceof Purpose.HandedTo || purpose instanceof Purpose.HandedTold) {
            return handedOver(purpose, text);
        }
        if (purpose instanceof Purpose.PromiseWhy why) {
            return text.isEmpty() ? refuse(Words.say("ask.reason_missing")) : whoseWish(why, text);
        }
        if (purpose instanceof Purpose.OpenLockOut lock) {
            return text.isEmpty() ? refuse(Words.say("ask.reason_missing")) : openLockOut(lock, text);
        }
        if (purpose instanceof Purpose.Sign sign) {
            return text.isEmpty() ? Turn.to(board) : new Signatures(board).signed(sign, text);
        }
        if (purpose instanceof Purpose.OfRegister register) {
            return MachineKeys.typed(board, register, text);
        }
        if (purpose instanceof Purpose.RingAgain again) {
            return RingKeys.again(board, again, text)
                    .map(this::carry)
                    .orElseGet(() -> refuse(Words.say("form.date_unread", text)));
        }
        return hours(purpose, text);
    }

    private Turn hours(Purpose purpose, String text) {
        if (purpose instanceof Purpose.RightTimes right) {
            return rightTimes(right, text);
        }
        if (purpose instanceof Purpose.RightWhy why) {
            return text.isEmpty() ? refuse(Words.say("ask.reason_missing")) : whoAnswers(why, text);
        }
        if (purpose instanceof Purpose.WentOff off) {
            return wentOff(off, text);
        }
        if (purpose instanceof Purpose.Errand errand) {
            return errand(errand, text);
        }
        if (purpose instanceof Purpose.Count count) {
            return new ShelfKeys(board).counted(count, text);
        }
        if (purpose instanceof Purpose.Order order) {
            return new ShelfKeys(board).ordered(order, text);
        }
        return time(purpose, text);
    }

    /** A time, a number of minutes and what else there is to say: {@code 14:00 45 parts run}. */
    private Turn errand(Purpose.Errand errand, String text) {
        Matcher typed = ERRAND.matcher(text);
        Day day = board.expectDay();
        Optional<Instant> from = typed.matches()
                ? Times.parse(typed.group(1), board.expectOutlook().at(), day.zone())
                : Optional.empty();
        return from.isEmpty()
                ? refuse(Words.say("form.errand_unread", text))
                : carry(new Act.PlanErrand(
                        errand.personId(),
                        errand.kind(),
                        from.get(),
                        Integer.parseInt(typed.group(2)),
                        typed.group(3).strip()));
    }

    private Turn wentOff(Purpose.WentOff off, String text) {
        ClockTyping.Read<Instant> read =
                ClockTyping.ended(text, off.began(), board.expectDay().zone());
        return read.value().isPresent()
                ? carry(new Act.Stop(off.personId(), off.leaves(), read.value()))
                : refuse(read.fault().orElseThrow());
    }

    private Turn refuse(Refusal fault) {
        return refuse(Words.say(fault.name(), fault.values()));
    }

    private Turn rightTimes(Purpose.RightTimes right, String text) {
        ClockTyping.Read<ClockTyping.FromTo> read =
                ClockTyping.fromTo(text, right.date(), board.expectDay().zone());
        if (read.value().isEmpty()) {
            return refuse(read.fault().orElseThrow());
        }
        Act.Correct.Written written = new Act.Correct.Written(
                right.personId(),
                right.activity(),
                read.value().get().from(),
                read.value().get().to());
        Act.Correct act = new Act.Correct(board.who(), right.replaces(), Optional.of(written), "");
        return Turn.to(board.withoutNote()
                .asking(new TypeIn(Words.say("ask.why_right"), Typing.EMPTY, new Purpose.RightWhy(act, right.date()))));
    }

    private Turn whoAnswers(Purpose.RightWhy purpose, String why) {
        return Turn.to(
                board.withoutNote().asking(new Signatures(board).whoAnswers(purpose.act(), why, purpose.date())));
    }

    private Turn time(Purpose purpose, String text) {
        Day day = board.expectDay();
        Optional<Instant> at = Times.parse(text, board.expectOutlook().at(), day.zone());
        if (at.isEmpty()) {
            return refuse(Words.say("form.time_unread", text));
        }
        if (purpose instanceof Purpose.Until until) {
            return carry(new Act.BeHere(until.personId(), at.get()));
        }
        if (purpose instanceof Purpose.OpenUntil until) {
            return openUntil(until, at.get());
        }
        Purpose.PromiseTime promise = (Purpose.PromiseTime) purpose;
        Visit visit = day.expectVisit(promise.visitId());
        if (visit.promise().isEmpty()) {
            String to = day.ownerOf(visit).name();
            return carry(new Act.SayPromise(visit.id(), at.get(), board.who(), to, "", false));
        }
        return Turn.to(board.withoutNote()
                .asking(new TypeIn(
                        Words.say("ask.why_changed"), Typing.EMPTY, new Purpose.PromiseWhy(visit.id(), at.get()))));
    }

    private Turn whoseWish(Purpose.PromiseWhy why, String text) {
        Visit visit = board.expectDay().expectVisit(why.visitId());
        Overlay ask = new Asks(board.expectOutlook()).whoseWish(visit, why.at(), text, board.who());
        return Turn.to(board.withoutNote().asking(ask));
    }

    private Turn handedOver(Purpose purpose, String text) {
        if (text.isEmpty()) {
            return refuse(Words.say("ask.handover_missing"));
        }
        if (purpose instanceof Purpose.HandedTo to) {
            return Turn.to(board.withoutNote().asking(new InspectAsks(board.expectDay()).whatTold(to, text)));
        }
        Purpose.HandedTold told = (Purpose.HandedTold) purpose;
        return carry(new Act.Collect(told.visitId(), Optional.of(new Act.Collect.Handed(told.by(), told.to(), text))));
    }

    /** Nothing typed leaves the finding as it was recorded, without a value; what reads outside its limits is not good. */
    private Turn measured(TypeIn in, Act.Tick tick, String text) {
        if (text.isEmpty()) {
            return left(in);
        }
        if (!text.matches("\\d{1,5}([.,]\\d{1,3})?")) {
            return refuse(Words.say("form.number_unread", text));
        }
        double value = Double.parseDouble(text.replace(',', '.'));
        Optional<Point> outside = tick.mark() == Mark.GOOD
                ? Fixes.pointOf(board.expectDay(), tick).filter(point -> !point.mayBeGood(value))
                : Optional.empty();
        if (outside.isPresent()) {
            Overlay again = in.with(Typing.EMPTY);
            return Turn.to(board.withoutNote()
                    .asking(new InspectAsks(board.expectDay()).outsideLimits(tick, outside.get(), value, again)));
        }
        return carry(new Act.Tick(
                tick.personId(), tick.visitId(), tick.pointId(), tick.mark(), OptionalDouble.of(value), tick.note()));
    }

    private Turn openUntil(Purpose.OpenUntil until, Instant at) {
        OpenForm form = ((Screen.Opening) board.screen()).form().on(until.row());
        OpenForm.Who who = form.person();
        OpenForm next = form.with(new OpenForm.Who(who.personId(), true, who.from(), at));
        return Turn.to(board.without().withoutNote().with(new Screen.Opening(next)));
    }

    private Turn openLockOut(Purpose.OpenLockOut lock, String why) {
        OpenForm form = ((Screen.Opening) board.screen()).form().on(lock.row());
        OpenForm next = form.with(new OpenForm.Hoist(form.hoist().placeId(), Optional.empty(), Optional.of(why)));
        return Turn.to(board.without().withoutNote().with(new Screen.Opening(next)));
    }

    private Turn carry(Act act) {
        return Turn.to(board.without().withoutNote().saving(1), new Effect.CarryOut(act));
    }

    private Turn refuse(String sentence) {
        return Turn.to(board.noting(Note.refused(sentence)));
    }
}
