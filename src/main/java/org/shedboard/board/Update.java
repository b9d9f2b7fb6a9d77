package org.shedboard.board;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.shedboard.day.Act;
import org.shedboard.day.Day;
import org.shedboard.day.KnockOffChance;
import org.shedboard.day.WhySoLong;
import org.shedboard.words.Words;

/** What a message makes of the board. */
public final class Update {
    /** On the screen for wet hands, a second press this soon after another is a bounce. */
    private static final Duration BOUNCE = Duration.ofMillis(300);

    /** So long after the last key somebody's next machine is shown. */
    private static final Duration NEXT_STAYS = Duration.ofMinutes(1);

    /** What is said of a PIN that can be typed once more. */
    private static final Set<String> PIN_REFUSALS = Set.of("pin_wrong", "pin_wrong_wait", "pin_wait", "pin_form");

    private Update() {}

    public static Turn of(Board board, Msg msg) {
        Turn turn = Signatures.asked(
                msg instanceof Msg.Pressed ? TrialKeys.diverted(board, told(board, msg)) : told(board, msg));
        Turn minded = turn.with(turn.board().minding(board));
        return isFinding(minded.board()) ? minded.with(minded.board().withFinder()) : minded;
    }

    /** Where machines are found, what finds them is kept with the board, so that drawing it is not what makes it. */
    private static boolean isFinding(Board board) {
        return board.seen().isPresent()
                && (board.screen() instanceof Screen.TakeIn || board.screen() instanceof Screen.Register);
    }

    private static Turn told(Board board, Msg msg) {
        if (msg instanceof Msg.Pressed pressed) {
            return pressed(board, pressed);
        }
        if (msg instanceof Msg.Pointed pointed) {
            return pointed(board, pointed);
        }
        if (msg instanceof Msg.FormKept kept) {
            return Turn.to(kept(board, kept));
        }
        if (msg instanceof Msg.Seen seen) {
            return seen(board, seen);
        }
        if (msg instanceof Msg.HoursRead read) {
            return Turn.to(board.withHours(read.tally()));
        }
        if (msg instanceof Msg.LookedBack looked) {
            return Turn.to(board.withLookBack(looked.back()));
        }
        if (msg instanceof Msg.HistoryRead read) {
            return Turn.to(board.withHistory(read.history()));
        }
        if (msg instanceof Msg.KnockOffSeen knockOff) {
            return Turn.to(board.seen()
                    .map(last -> board.withSeen(last.with(knockOff.chance())))
                    .orElse(board));
        }
        if (msg instanceof Msg.DriftsSeen seen) {
            return Turn.to(board.withDrifts(seen.drifts()));
        }
        if (msg instanceof Msg.Warned warned) {
            return Turn.to(board.withWarnings(warned.sentences()));
        }
        if (msg instanceof Msg.Saved saved) {
            return saved(board.saving(-1), saved);
        }
        if (msg instanceof Msg.NotDone not) {
            return notDone(board.saving(-1), not);
        }
        if (msg instanceof Msg.Quoted quoted) {
            return board.screen() instanceof Screen.TakeIn in
                    ? Turn.to(TakeInKeys.answered(board, in.form(), quoted))
                    : Turn.to(board);
        }
        if (msg instanceof Msg.Tried tried) {
            return TrialKeys.answered(board, tried);
        }
        if (msg instanceof Msg.Kept kept) {
            return Turn.to(TrialKeys.kept(board.saving(-1), kept));
        }
        if (msg instanceof Msg.NotKept not) {
            return Turn.to(board.saving(-1)
                    .noting(Note.refused(
                            Words.say(not.refusal().name(), not.refusal().values()))));
        }
        if (msg instanceof Msg.FixOffered offered) {
            return Turn.to(board.seen().isPresent() ? Fixes.answered(board, offered.answer()) : board);
        }
        if (msg instanceof Msg.Written written) {
            return Turn.to(board.noting(Note.done(written.sentence())));
        }
        if (msg instanceof Msg.BetterFound better) {
            return Turn.to(board.offering(Optional.of(new Better(better.plan(), better.difference()))));
        }
        if (msg instanceof Msg.WentWrong wrong) {
            return Turn.to(board.saving(-1).noting(Note.refused(wrong.sentence())));
        }
        if (msg instanceof Msg.RecordsAway away) {
            return Turn.to(board.withoutRecords(away.sentence()));
        }
        if (msg instanceof Msg.TimeWent went) {
            return Turn.to(restored(board, went.at()));
        }
        if (msg instanceof Msg.NoShop) {
            return Turn.to(board.onlyOn(new Screen.FirstRun()));
        }
        throw new IllegalArgumentException("nothing is done about " + msg);
    }

    /**
     * Who mistyped their PIN is asked for it again, so that what was to be signed is not lost; nor is what was typed, or decided, for
     * something that another terminal changed first.
     */
    private static Turn notDone(Board board, Msg.NotDone not) {
        String refusal = Words.say(not.refusal().name(), not.refusal().values());
        String sentence = not.earlier()
                .map(earlier -> refusal + " " + earlier.sentence(board.expectDay()))
                .orElse(refusal);
        Board noted = board.noting(Note.refused(sentence));
        if (PIN_REFUSALS.contains(not.refusal().name())) {
            return Turn.to(new Signatures(noted).again(not.act(), not.date()));
        }
        if (board.overlay().isPresent()) {
            return Turn.to(noted);
        }
        return Turn.to(
                not.isOvertaken()
                        ? board.withoutNote().asking(Asks.allTheSame(not.act(), sentence))
                        : noted.typingAgain());
    }

    /** It is offered again like one that was left by Escape; one that somebody has begun meanwhile goes first. */
    private static Board kept(Board board, Msg.FormKept kept) {
        if (board.seen().isEmpty() || !KeptForm.of(board).isEmpty()) {
            return board;
        }
        TakeInForm form = KeptForm.read(kept.words(), board.expectDay().books());
        return form.isTouched()
                ? board.keeping(Optional.of(form)).noting(Note.done(Words.say("form.kept_overnight")))
                : board;
    }

    /** The keys were meant for the screen that was pointed at: where one of them leads elsewhere, the rest is let go. */
    private static Turn pointed(Board board, Msg.Pointed pointed) {
        Board next = board;
        List<Effect> effects = new ArrayList<>();
        for (Key key : pointed.keys()) {
            if (next.overlay().isPresent() != board.overlay().isPresent()
                    || next.screen().getClass() != board.screen().getClass()) {
                break;
            }
            Turn turn = pressed(next, new Msg.Pressed(key, pointed.at()));
            next = turn.board();
            effects.addAll(turn.effects());
        }
        return new Turn(next, effects);
    }

    private static Turn pressed(Board board, Msg.Pressed pressed) {
        Key key = pressed.key();
        if (key.isControl('l')) {
            return Turn.to(board, new Effect.Repaint());
        }
        if (key.isControl('z')) {
            return Turn.to(board, new Effect.StandAside());
        }
        if (key.isControl('c')) {
            return Turn.to(board, new Effect.Quit());
        }
        if (key.kind() == Key.Kind.PASTE_START || key.kind() == Key.Kind.PASTE_END) {
            return Turn.to(board.pasting(key.kind() == Key.Kind.PASTE_START));
        }
        if (board.pasting() && !(key.isCharacter() && takesText(board))) {
            return Turn.to(board);
        }
        Duration since = Duration.between(board.lastKey(), pressed.at());
        boolean wet = board.screen() instanceof Screen.Next && !isTyped(board);
        if (wet && since.compareTo(BOUNCE) < 0 && !since.isNegative()) {
            return Turn.to(board);
        }
        Board heard = board.pressedAt(pressed.at());
        if (heard.overlay().isPresent()) {
            return new OverlayKeys(heard).press(key);
        }
        if (heard.screen() instanceof Screen.TakeIn in) {
            return new TakeInKeys(heard, in.form()).press(key);
        }
        if (heard.screen() instanceof Screen.YardPage yard && yard.isTyping()) {
            return new YardKeys(heard, yard).press(key);
        }
        if (heard.screen() instanceof Screen.Register register) {
            return new RegisterKeys(heard, register).press(key);
        }
        if (heard.screen() instanceof Screen.Setup setup) {
            return setup(heard, setup.form(), key);
        }
        return byBinding(heard, key);
    }

    /** Somebody's next machine gives way to the board for the next who looks, unless something is being typed there. */
    private static Board restored(Board board, Instant now) {
        boolean isLeft = board.screen() instanceof Screen.Next
                && !isHalfTyped(board)
                && Duration.between(board.lastKey(), now).compareTo(NEXT_STAYS) >= 0;
        return isLeft ? board.onlyOn(placesBehind(board)) : board;
    }

    private static boolean isHalfTyped(Board board) {
        return board.overlay()
                .filter(over ->
                        over instanceof Overlay.TypeIn in && !in.typing().isBlank())
                .isPresent();
    }

    private static Screen placesBehind(Board board) {
        return board.behind().stream()
                .filter(Screen.Places.class::isInstance)
                .findFirst()
                .orElse(Screen.Places.START);
    }

    /** Whether a line of text is being typed, in which the same letter may come twice at once. */
    private static boolean isTyped(Board board) {
        return board.overlay().filter(Overlay.TypeIn.class::isInstance).isPresent();
    }

    /** Whether typed text goes into a field; pasted text is for fields alone, and only its characters. */
    private static boolean takesText(Board board) {
        return board.overlay()
                .map(Overlay.TypeIn.class::isInstance)
                .orElse(board.screen() instanceof Screen.TakeIn
                        || board.screen() instanceof Screen.Register
                        || board.screen() instanceof Screen.YardPage yard && yard.isTyping()
                        || board.screen() instanceof Screen.Setup);
    }

    private static Turn byBinding(Board board, Key key) {
        if (TagTyping.isMeant(board, key)) {
            return TagTyping.typed(board, key.character());
        }
        return bound(board.typingTag(""), key);
    }

    private static Turn bound(Board board, Key key) {
        Optional<Binding> meant = Keys.of(board).stream()
                .filter(binding -> binding.isMeantBy(key))
                .findFirst();
        if (meant.isEmpty()) {
            return Turn.to(board);
        }
        Optional<String> off = meant.get().off();
        return off.isPresent()
                ? Turn.to(board.noting(Note.refused(off.get())))
                : new Deeds(board.withoutNote()).perform(meant.get().deed());
    }

    private static Turn setup(Board board, SetupForm form, Key key) {
        return switch (key.kind()) {
            case ESCAPE -> Turn.to(board.onlyOn(new Screen.FirstRun()).withoutNote());
            case UP, BACK_TAB -> Turn.to(board.with(new Screen.Setup(form.moved(-1))));
            case DOWN, TAB -> Turn.to(board.with(new Screen.Setup(form.moved(1))));
            case ENTER -> form.isAtEnd() ? makeShop(board, form) : Turn.to(board.with(new Screen.Setup(form.moved(1))));
            default ->
                Turn.to(board.withoutNote()
                        .with(new Screen.Setup(
                                form.with(form.typing(form.field()).with(key)))));
        };
    }

    private static Turn makeShop(Board board, SetupForm form) {
        Optional<String> fault = form.fault();
        return fault.isPresent()
                ? Turn.to(board.noting(Note.refused(fault.get())))
                : Turn.to(
                        board.onlyOn(new Screen.Loading()).withoutNote(), new Effect.MakeShop(form.shop(board.zone())));
    }

    /** The first reading leads to the board; an offer that is no longer true of the day is dropped. */
    private static Turn seen(Board board, Msg.Seen seen) {
        Optional<KnockOffChance> knockOff =
                board.seen().filter(last -> !isAnotherDay(board, seen)).flatMap(Known.Seen::knockOff);
        Board next = board.withSeen(new Known.Seen(seen.outlook(), seen.tally(), knockOff, seen.change()));
        if (board.screen() instanceof Screen.Loading) {
            next = next.onlyOn(Screen.Places.START);
        }
        if (isAnotherDay(board, seen)) {
            next = next.onlyOn(shownNextDay(next.screen(), seen))
                    .seeing(next.sight().following())
                    .remembering(Doings.NONE);
        }
        boolean samePlan = board.outlook()
                .map(before -> before.day().posted().equals(seen.outlook().day().posted()))
                .orElse(false);
        return readAgain(samePlan ? next : next.offering(Optional.empty()));
    }

    /** Hours of other days that are being looked at are as old as the day was; a whole month is not read at every event. */
    private static Turn readAgain(Board board) {
        if (board.screen() instanceof Screen.MachinePage page) {
            return RegisterKeys.show(board, page);
        }
        if (board.screen() instanceof Screen.InHand held) {
            return Turn.to(HandKeys.again(board, held));
        }
        if (board.screen() instanceof Screen.Ring ring) {
            return Turn.to(board.with(RingKeys.of(board, ring.weeks(), ring.row())));
        }
        if (board.screen() instanceof Screen.Suggested suggested) {
            return Turn.to(board.with(SuggestKeys.of(board, suggested.row())));
        }
        if (board.screen() instanceof Screen.Ahead ahead) {
            return Turn.to(board.with(Deeds.ahead(board, ahead.page()).to(ahead.row())));
        }
        if (board.screen() instanceof Screen.Minutes minutes) {
            return Turn.to(board.with(again(board, minutes)));
        }
        if (board.screen() instanceof Screen.Trial trial) {
            return TrialKeys.again(board, trial);
        }
        if (board.screen() instanceof Screen.Why why) {
            return Turn.to(board.with(WhyKeys.again(board, why)));
        }
        if (board.screen() instanceof Screen.ScorecardPage page) {
            return Turn.to(board.with(Deeds.scorecard(board, page.page()).scrolledTo(page.scroll())));
        }
        return board.screen() instanceof Screen.Hours hours && hours.page() != Screen.Hours.Page.MONTH
                ? new HoursKeys(board, hours).show(hours)
                : Turn.to(board);
    }

    /** Of a visit that is no longer among those of the day, what was said last. */
    private static Screen again(Board board, Screen.Minutes minutes) {
        return board.expectDay()
                .findVisit(minutes.why().visit().id())
                .map(visit -> new Screen.Minutes(WhySoLong.of(board.expectDay(), visit), minutes.scroll()))
                .orElse(minutes);
    }

    private static boolean isAnotherDay(Board board, Msg.Seen seen) {
        return board.outlook()
                .filter(before ->
                        !before.day().date().equals(seen.outlook().day().date()))
                .isPresent();
    }

    /** A screen left open overnight stays, but a visit that ended yesterday is no longer there to show. */
    private static Screen shownNextDay(Screen screen, Msg.Seen seen) {
        if (screen instanceof Screen.InHand) {
            return Screen.Places.START;
        }
        Day day = seen.outlook().day();
        boolean over = screen instanceof Screen.Sheet sheet
                        && day.findVisit(sheet.visitId()).isEmpty()
                || screen instanceof Screen.Why why
                        && day.findVisit(why.visitId()).isEmpty();
        return over ? Screen.Places.START : screen;
    }

    /** What was done is said in a sentence, and remembered, so that it can be taken back. */
    private static Board told(Board board, Msg.Saved saved) {
        String sentence = saved.act() instanceof Act.TakeBack back
                ? TakeBackKeys.done(board, back)
                : DoneWords.of(board.expectDay(), saved.act(), saved.subject());
        return saved.trace()
                .map(trace -> TakeBackKeys.remembered(board, saved.act(), trace, sentence))
                .orElse(board)
                .noting(Note.done(sentence));
    }

    /** Screens that are done with what was saved close. */
    private static Turn saved(Board board, Msg.Saved saved) {
        Board next = board.seen().isPresent() ? told(board, saved) : board;
        if (saved.act() instanceof Act.TakeIn && board.screen() instanceof Screen.TakeIn) {
            Screen.Places places =
                    saved.subject().map(Screen.Places.START::select).orElse(Screen.Places.START);
            return Turn.to(next.keeping(Optional.empty()).onlyOn(places));
        }
        if (saved.act() instanceof Act.Post && board.screen() instanceof Screen.Trial trial) {
            return Turn.to(trial.whatIf().isOffer() ? next.back() : next);
        }
        if (saved.act() instanceof Act.OpenDay && board.screen() instanceof Screen.Opening) {
            return Turn.to(next.onlyOn(Screen.Places.START));
        }
        if (saved.act() instanceof Act.Tick tick && board.screen() instanceof Screen.Next screen) {
            Board onward = next.with(screen.onward(tick.personId()));
            return board.overlay().isPresent() ? Turn.to(onward) : Fixes.offered(onward, tick);
        }
        return Turn.to(next);
    }
}
