package org.shedboard.board;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shedboard.board.Overlay.Reply;
import org.shedboard.day.Act;
import org.shedboard.day.Day;
import org.shedboard.day.Names;
import org.shedboard.day.WhatIf;
import org.shedboard.shop.Owner;
import org.shedboard.shop.Visit;
import org.shedboard.words.Words;

/**
 * Keys of the screen on which a change is tried. The questions are those of the board; the acts they end in are added to what is tried
 * and not carried out, as long as the screen or anything opened from it is shown.
 */
final class TrialKeys {
    private final Board board;
    private final Screen.Trial trial;

    TrialKeys(Board board, Screen.Trial trial) {
        this.board = board;
        this.trial = trial;
    }

    static List<Binding> of(Board board, Screen.Trial trial) {
        Day day = board.expectDay();
        List<Visit> open = board.expectOutlook().queue();
        List<Binding> keys = new ArrayList<>();
        boolean canKeep =
                trial.comparison().isPresent() && !trial.whatIf().acts().isEmpty();
        boolean isFree = board.saving() == 0;
        String why = canKeep ? "off.being_saved" : "off.nothing_to_keep";
        keys.add(Binding.when(
                canKeep && isFree, Key.ENTER, trial.whatIf().isOffer() ? Deed.POST_OFFER : Deed.KEEP, why));
        if (!trial.whatIf().isOffer()) {
            keys.add(Binding.on('t', Deed.TAKE_IN));
            keys.add(Binding.on('w', Deed.CREW));
            keys.add(Binding.when(!day.shop().hoists().isEmpty(), 'k', Deed.CHECK_HOIST, "off.no_hoist"));
            keys.add(Binding.when(!open.isEmpty(), 'p', Deed.TRY_PROMISE, "off.nothing_open"));
            keys.add(Binding.when(!unbegun(open).isEmpty(), 'd', Deed.TRY_WASHED, "off.all_begun"));
            keys.add(Binding.when(!trial.whatIf().acts().isEmpty(), Key.BACKSPACE, Deed.TRY_LESS, "off.nothing_tried"));
        }
        keys.add(Binding.on(Key.UP, Deed.UP));
        keys.add(Binding.on(Key.DOWN, Deed.DOWN));
        keys.add(Binding.on('?', Deed.HELP));
        keys.add(Binding.on(Key.ESCAPE, Deed.BACK));
        return keys;
    }

    /** The better plan that is on offer, tried. */
    static Turn offer(Board board) {
        Act post = new Act.Post(board.better().orElseThrow().plan());
        return tried(board.on(Screen.Trial.of(WhatIf.NOTHING)), new WhatIf(List.of(post)));
    }

    Turn perform(Deed deed) {
        return switch (deed) {
            case TRY_PROMISE -> Turn.to(board.asking(whosePromise()));
            case TRY_WASHED -> Turn.to(board.asking(whoseWashed()));
            case TRY_LESS -> tried(board, trial.whatIf().withoutLast());
            case KEEP -> Turn.to(board.saving(1), new Effect.Keep(trial.whatIf(), trial.expectTried()));
            case POST_OFFER ->
                Turn.to(
                        board.saving(1),
                        new Effect.CarryOut(trial.whatIf().acts().get(0)));
            default -> throw new IllegalStateException(deed + " is no key of this screen");
        };
    }

    private Overlay whosePromise() {
        ChoiceList choices = new ChoiceList();
        Asks asks = new Asks(board.expectOutlook());
        openVisits().forEach(visit -> choices.ask(Names.of(day(), visit), asks.whatTime(visit)));
        return choices.titled(Words.say("ask.try_promise"));
    }

    private Overlay whoseWashed() {
        ChoiceList choices = new ChoiceList();
        unbegun(openVisits()).forEach(visit -> {
            Owner owner = day().ownerOf(visit);
            String label = owner.washDownFirst() ? "ask.try_unwashed" : "ask.try_washed";
            choices.add(
                    Words.say(label, Names.of(day(), visit)),
                    Optional.empty(),
                    new Reply.Carry(new Act.SetWashDown(owner.id(), !owner.washDownFirst())));
        });
        return choices.titled(Words.say("ask.try_which_washed"));
    }

    private static List<Visit> unbegun(List<Visit> visits) {
        return visits.stream().filter(visit -> !visit.hasBegun()).toList();
    }

    private List<Visit> openVisits() {
        return board.expectOutlook().queue();
    }

    private Day day() {
        return board.expectDay();
    }

    /** The trial that is shown, or that what is shown was opened from. */
    private static Optional<Screen.Trial> trialOf(Board board) {
        if (board.screen() instanceof Screen.Trial trial) {
            return Optional.of(trial);
        }
        return board.behind().stream()
                .filter(Screen.Trial.class::isInstance)
                .map(Screen.Trial.class::cast)
                .reduce((one, other) -> other);
    }

    /** What keys led to: on a trial, acts are added to it and not carried out. */
    static Turn diverted(Board before, Turn turn) {
        Optional<Screen.Trial> trial =
                trialOf(before).filter(each -> !each.whatIf().isOffer());
        Optional<Act> act = turn.effects().stream()
                .filter(Effect.CarryOut.class::isInstance)
                .map(effect -> ((Effect.CarryOut) effect).act())
                .findFirst();
        if (trial.isEmpty() || act.isEmpty()) {
            return turn;
        }
        Board on = turn.board().saving(before.saving() - turn.board().saving());
        while (!(on.screen() instanceof Screen.Trial) && !on.behind().isEmpty()) {
            on = on.back();
        }
        return tried(on.without(), trial.get().whatIf().plus(act.get()));
    }

    /** Shows it as being worked out, and has it worked out. */
    private static Turn tried(Board board, WhatIf whatIf) {
        int row = board.screen() instanceof Screen.Trial shown ? shown.row() : 0;
        return Turn.to(board.with(new Screen.Trial(whatIf, Optional.empty(), row)), new Effect.TryOut(whatIf));
    }

    /** The same on the day as it is now. */
    static Turn again(Board board, Screen.Trial trial) {
        return Turn.to(board, new Effect.TryOut(trial.whatIf()));
    }

    /** One act that cannot be is not tried on; the others stay. */
    static Turn answered(Board board, Msg.Tried tried) {
        if (!(board.screen() instanceof Screen.Trial trial) || !trial.whatIf().equals(tried.whatIf())) {
            return Turn.to(board);
        }
        boolean isNew = trial.answer().isEmpty();
        if (isNew && tried.answer() instanceof WhatIf.Answer.NotPossible not && isLast(trial, not)) {
            Turn without = tried(board, trial.whatIf().withoutLast());
            return new Turn(without.board().noting(refused(not)), without.effects());
        }
        return Turn.to(board.with(trial.answered(tried.answer())));
    }

    private static boolean isLast(Screen.Trial trial, WhatIf.Answer.NotPossible not) {
        List<Act> acts = trial.whatIf().acts();
        return !trial.whatIf().isOffer() && acts.get(acts.size() - 1).equals(not.act());
    }

    private static Note refused(WhatIf.Answer.NotPossible not) {
        return Note.refused(Words.say(not.refusal().name(), not.refusal().values()));
    }

    /** What was kept is on the board now. */
    static Board kept(Board board, Msg.Kept kept) {
        WhatIf whatIf = kept.whatIf();
        String sentence = Words.say("trial.kept", whatIf.acts().size());
        Board remembering =
                board.seen().isPresent() ? TakeBackKeys.remembered(board, whatIf, kept.trace(), sentence) : board;
        Board noted = remembering.noting(Note.done(sentence));
        return noted.screen() instanceof Screen.Trial trial && trial.whatIf().equals(whatIf) ? noted.back() : noted;
    }
}
