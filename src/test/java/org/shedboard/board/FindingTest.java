package org.shedboard.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shedboard.shop.Machine;

/** Finding a machine by what is typed, and a visit by the digits of its tag. */
class FindingTest {
    private final FakeShell shell = FakeShell.demonstration();

    @Test
    void a_machine_is_found_by_part_of_the_owner_the_label_or_the_number() {
        assertTrue(found("quillg").containsAll(List.of("M1", "M10")));
        assertFalse(found("quillg").contains("M2"));
        assertTrue(found("QUILLGATE trudge").contains("M1"));
        assertFalse(found("QUILLGATE trudge").contains("M10"));
        assertEquals(List.of("M1"), found("3024510"));
        assertTrue(found("burr").contains("M10"));
    }

    @Test
    void what_begins_with_the_first_word_comes_first() {
        List<String> found = found("m");
        assertTrue(found.size() > 10);
        String owner = shell.day()
                .books()
                .expectOwner(shell.day().books().expectMachine(found.get(0)).ownerId())
                .name();
        assertTrue(owner.startsWith("M"), owner);
    }

    @Test
    void every_word_must_occur_and_nothing_typed_finds_nothing() {
        assertEquals(List.of(), found("quillgate tractor-that-is-not"));
        assertEquals(List.of(), found("  "));
    }

    @Test
    void a_machine_here_is_found_by_its_tag() {
        assertTrue(found("9 heeler").contains("M2"));
    }

    @Test
    void typing_a_tag_on_the_board_selects_its_machine_digit_by_digit() {
        shell.types("1");
        assertEquals("1", shell.board().atHand().tagTyped());
        shell.types("2");
        assertEquals("12", shell.board().atHand().tagTyped());
        assertEquals(Optional.of(shell.visitOf("M6").id()), places().selected());
    }

    @Test
    void digits_that_make_no_tag_begin_a_new_number() {
        shell.types("12").types("9");
        assertEquals("9", shell.board().atHand().tagTyped());
        assertEquals(Optional.of(shell.visitOf("M2").id()), places().selected());
    }

    private Screen.Places places() {
        return (Screen.Places) shell.board().screen();
    }

    private List<String> found(String typed) {
        return Found.machines(Found.finder(shell.day()), shell.day(), typed).stream()
                .map(Machine::id)
                .toList();
    }
}
