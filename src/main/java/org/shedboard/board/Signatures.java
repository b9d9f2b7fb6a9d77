package org.shedboard.board;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.shedboard.board.Overlay.Purpose;
import org.shedboard.board.Overlay.Reply;
import org.shedboard.day.Act;
import org.shedboard.day.Signer;
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
                .map(signer -> Turn.to(board.asking(whoSigns(act, date, signer))))
                .orElseGet(() -> carried(new Effect.CarryOut(act, another(date), Optional.empty())));
    }

    /** No act that has to be signed goes on its way unsigned, whichever key made it: its PIN is asked for instead. */
    static Turn asked(Turn turn) {
        Optional<Effect.CarryOut> unsigned = turn.effects().stream()
                .filter(Effect.CarryOut.class::isInstance)
                .map(Effect.CarryOut.class::cast)
                .filter(carry -> carry.signature().isEmpty())
                .filter(carry -> isToSign(turn.board(), carry))
                .findFirst();
        return unsigned.map(carry -> turn.without(carry, ask(turn.board().saving(-1), carry)))
                .orElse(turn);
    }

    private static boolean isToSign(Board board, Effect.CarryOut carry) {
        return board.seen().isPresent()
                && new Signatures(board)
                        .signerOf(carry.act(), dateOf(board, carry))
                        .isPresent();
    }

    private static Board ask(Board board, Effect.CarryOut carry) {
        return new Signatures(board).again(carry.act(), Optional.of(dateOf(board, carry)));
    }

    private static LocalDate dateOf(Board board, Effect.CarryOut carry) {
        return carry.date().orElse(board.expectDay().date());
    }

    /** Asks who answers for an act, among those who can sign, and for their PIN. */
    Overlay whoAnswers(Function<Person, Act> act) {
        LocalDate today = board.expectDay().date();
        return whoSigns(new Signer.Anybody(), person -> pin(act.apply(person), today, person.id()));
    }

    /** Asks for the PIN of an act once more, with whatever else is said left standing. */
    Board again(Act act, Optional<LocalDate> date) {
        LocalDate about = date.orElse(board.expectDay().date());
        return signerOf(act, about)
                .map(signer -> board.asking(whoSigns(act, about, signer)))
                .orElse(board);
    }

    /** The date, unless it is today's. */
    private Optional<LocalDate> another(LocalDate date) {
        return Optional.of(date).filter(other -> !other.equals(board.expectDay().date()));
    }

    private Turn carried(Effect.CarryOut effect) {
        return Turn.to(board.without().withoutNote().saving(1), effect);
    }

    private Optional<Signer> signerOf(Act act, LocalDate date) {
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

    private Overlay whoSigns(Act act, LocalDate date, Signer signer) {
        return whoSigns(signer, person -> pin(act, date, person.id()));
    }

    /** Where several people can, who it is; then their PIN. */
    private Overlay whoSigns(Signer signer, Function<Person, Overlay> pin) {
        List<Person> people = signer.among(board.expectDay());
        if (people.size() == 1) {
            return pin.apply(people.get(0));
        }
        ChoiceList choices = new ChoiceList();
        people.forEach(person -> choices.ask(person.name(), pin.apply(person)));
        return choices.titled(Words.say("ask.who_signs"));
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
                            .<Reply>map(signer -> new Reply.Ask(whoSigns(by, date, signer)))
                            .orElseGet(() -> new Reply.CarryOn(by, date)));
        }
        return choices.titled(Words.say("ask.who_answers"));
    }
}
