package org.shedboard.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shedboard.day.Act;
import org.shedboard.day.ShelfRow;
import org.shedboard.register.Stock;
import org.shedboard.shop.Amount;
import org.shedboard.shop.Task;
import org.shedboard.words.Words;

/** The shelf of the demonstration on the board, and saying which part was fitted. */
class ShelfKeysTest {
    private final FakeShell shell = FakeShell.demonstration();

    /** The item the cursor is on. */
    private ShelfRow chosen() {
        return ShelfKeys.chosen(shell.board(), (Screen.Shelf) shell.board().screen())
                .orElseThrow();
    }

    @Test
    void what_is_short_comes_first_with_its_order() {
        shell.types("e");
        assertEquals("belt-deck-wide", chosen().item().id());
        assertEquals(Amount.of(1), chosen().missing());
        assertEquals(Amount.NOTHING, chosen().notOrdered());
        assertEquals(1, chosen().orders().size());
    }

    @Test
    void an_order_comes_onto_the_shelf() {
        shell.types("eh").press(Key.ENTER);
        shell.assertDone();
        assertEquals(
                Optional.of(Amount.of(1)),
                shell.day().books().shelf().findStock("belt-deck-wide").map(Stock::amount));
    }

    @Test
    void an_item_is_counted_with_its_bin() {
        shell.types("e").press(Key.DOWN);
        String item = chosen().item().id();
        shell.types("c").types("4 top shelf").press(Key.ENTER);
        shell.assertDone();
        assertEquals(
                Optional.of(new Stock(item, "top shelf", Amount.of(4))),
                shell.day().books().shelf().findStock(item));
    }

    @Test
    void an_order_says_how_much_and_when() {
        shell.types("e").types("o").types("6 fri 10").press(Key.ENTER);
        shell.assertDone();
        Instant friday = shell.day()
                .date()
                .plusDays(3)
                .atTime(10, 0)
                .atZone(shell.day().zone())
                .toInstant();
        assertEquals(
                new Act.OrderStock(
                        "belt-deck-wide",
                        Amount.of(6),
                        Optional.of(friday),
                        shell.board().who()),
                shell.lastAct());
    }

    @Test
    void what_is_no_number_is_refused_and_stays_typed() {
        shell.types("e").types("c").types("some").press(Key.ENTER);
        shell.assertRefused(Words.say("form.number_unread", "some"));
        assertTrue(shell.board().overlay().isPresent());
    }

    @Test
    void what_has_no_order_cannot_have_come() {
        shell.types("e").press(Key.DOWN).types("h");
        shell.assertRefused(Words.say("off.nothing_ordered"));
    }

    @Test
    void who_is_on_the_plug_cannot_finish_it_before_saying_which_washer_was_on_it() {
        FakeShell plug = FakeShell.onThePlug();
        plug.types("n1").types("6");
        plug.assertRefused(Words.say("part_open", "New washer, plug tight", "Plug washer"));
        plug.types("*2").types("6");
        plug.assertDone();
        Task task = plug.visitOf("M54").findTask("oil-plug").orElseThrow();
        assertTrue(task.isDone());
        assertEquals(
                Optional.of(Amount.of(8)),
                plug.day().books().shelf().findStock("washer-14").map(Stock::amount));
    }

    @Test
    void on_the_sheet_it_is_said_too() {
        FakeShell plug = FakeShell.onThePlug();
        plug.press(Key.ENTER).types("e1");
        plug.assertDone();
        Act.FitPart fit = (Act.FitPart) plug.lastAct();
        assertEquals("washer-12", fit.itemId());
        assertEquals(plug.visitOf("M54").id(), fit.visitId());
    }
}
