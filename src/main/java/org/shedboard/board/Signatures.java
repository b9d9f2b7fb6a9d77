package org.shedboard.board;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.shedboard.board.Overlay.Purpose;
import org.shedboard.board.Overlay.Reply;
import org.shedboard.day.Act;
import org.shedboard.day.Signing;
import org.shedboard.hours.ClockEntry;
import org.shedboard.shop.Person;
import org.shedboard.tally.Ledger;
import org.shedboard.tally.SpanTally;
import org.shedboard.words.Words;

/** Sees to it that an act that has to be signed is signed before it is carried out. */
final class Signatures {
    private final Board board;

    Signatures(Board board) {
        this.board = board;
    }

    /** Carries an act about a date out at once, or asks for the PIN it needs. */
    Turn carry(Act act, LocalDate date) {
        return signerOf(act, date)
                .map(signer -> Turn.to(board.asking(pin(act, date, signer))))
                .orElseGet(() -> carried(new Effect.CarryOut(act, another(date), Optional.empty())));
    }

    /** Asks for the PIN of an act once more, with whatever else is said left standing. */
    Board again(Act act, Optional<LocalDate> date) {
        LocalDate about = date.orElse(board.expectDay().date());
        return signerOf(act, about)
                .map(signer -> board.asking(pin(act, about, signer)))
                .orElse(board);
    }

    /** The date, unless it is today's. */
    private Optional<LocalDate> another(LocalDate date) {
        return Optional.of(date).filter(other -> !other.equals(board.expectDay().date()));
    }

    private Turn carried(Effect.CarryOut effect) {
        return Turn.to(board.without().withoutNote().saving(1), effect);
    }

    private Optional<String> signerOf(Act act, LocalDate date) {
        if (date.equals(board.expectDay().date())) {
            return Signing.signerOf(board.expectDay(), act);
        }
        Optional<Ledger> ledger = ledgerOf(date);
        boolean isClosed = ledger.stream()
                .flatMap(read -> read.openings().stream())
                .anyMatch(opening -> opening.closed().isPresent());
        List<ClockEntry> rows = ledger.map(Ledger::rows).orElse(List.of());
        return Signing.signerOf(act, isClosed, rows);
    }

    private Optional<Ledger> ledgerOf(LocalDate date) {
        return board.read()
                .hours()
                .map(SpanTally::ledger)
                .filter(ledger -> ledger.from().equals(date) && ledger.until().equals(date.plusDays(1)));
    }

    private Overlay pin(Act act, LocalDate date, String signer) {
        boolean isFirst = board.expectDay().books().signers().isEmpty();
        return new Overlay.TypeIn(
                Words.say(
                        isFirst ? "ask.first_pin" : "ask.pin", board.expectDay().nameOf(signer)),
                Typing.EMPTY,
                new Purpose.Sign(act, date, signer));
    }

    /** What is typed is kept by nobody but the one effect. */
    Turn signed(Purpose.Sign sign, String pin) {
        return carried(new Effect.CarryOut(
                sign.act(), another(sign.date()), Optional.of(new Effect.Signed(sign.personId(), pin))));
    }

    /** Who answers for a correction, whose reason is known now. */
    Overlay whoAnswers(Act.Correct act, String why, LocalDate date) {
        ChoiceList choices = new ChoiceList();
        for (Person person : board.expectDay().shop().people()) {
            Act.Correct by = new Act.Correct(person.id(), act.replaces(), act.right(), why);
            choices.add(
                    person.name(),
                    Optional.empty(),
                    signerOf(by, date)
                            .<Reply>map(signer -> new Reply.Ask(pin(by, date, signer)))
                            .orElseGet(() -> new Reply.CarryOn(by, date)));
        }
        return choices.titled(Words.say("ask.who_answers"));
    }
}
