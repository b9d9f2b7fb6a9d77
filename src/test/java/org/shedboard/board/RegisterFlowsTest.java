package org.shedboard.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.shedboard.day.Act;
import org.shedboard.day.Books;
import org.shedboard.register.Finder;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Owner;
import org.shedboard.words.Words;

/** The register by keys. */
class RegisterFlowsTest {
    private final FakeShell shell = FakeShell.demonstration();

    @Test
    void machines_are_found_as_somebody_types_and_enter_opens_the_chosen_one() {
        shell.types("mqulilgate");
        List<Finder.Hit> listed = RegisterKeys.listed(shell.board(), register());
        assertTrue(listed.size() > 1);
        shell.press(Key.DOWN, Key.ENTER);
        assertEquals(listed.get(1).machine().map(Machine::id), Optional.of(page().machineId()));
        assertTrue(shell.effects.contains(new Effect.ReadHistory(page().machineId())));
        shell.press(Key.ESCAPE);
        assertEquals("qulilgate", register().find().text());
    }

    @Test
    void while_nothing_is_typed_everything_is_listed() {
        shell.types("m");
        List<Finder.Hit> listed = RegisterKeys.listed(shell.board(), register());
        Books books = shell.day().books();
        assertEquals(
                books.machines().size(),
                listed.stream().filter(hit -> hit.machine().isPresent()).count());
        assertEquals(
                books.owners().size(),
                listed.stream().map(Finder.Hit::owner).distinct().count());
    }

    @Test
    void the_finder_is_kept_while_the_books_are_the_same_and_made_anew_when_they_change() {
        shell.types("mq");
        Finder before = shell.board().finder();
        shell.types("u").minutesPass(1);
        assertSame(before, shell.board().finder());
        shell.does(new Act.CorrectMachine("M10", "Zebulon 9", OptionalInt.empty(), "", 300));
        shell.press(Key.BACKSPACE, Key.BACKSPACE).types("zebulon");
        assertEquals(
                List.of("M10"),
                RegisterKeys.listed(shell.board(), register()).stream()
                        .map(hit -> hit.machine().orElseThrow().id())
                        .toList());
    }

    @Test
    void a_number_is_put_right_on_the_page() {
        open("M10")
                .types("e3")
                .press(Key.control('u'))
                .types("1m8gdm9a1ap042788")
                .press(Key.ENTER);
        shell.assertDone();
        assertEquals("1m8gdm9a1ap042788", machine("M10").number());
    }

    @Test
    void a_year_is_chosen_from_those_that_the_number_allows() {
        shell.does(new Act.CorrectMachine("M10", "Burr", OptionalInt.empty(), "1M8GDM9A1AP042788", 300));
        open("M10").types("e22");
        shell.assertDone();
        assertEquals(OptionalInt.of(2010), machine("M10").modelYear());
        shell.types("e24");
        assertEquals(OptionalInt.empty(), machine("M10").modelYear());
    }

    @Test
    void a_mass_that_is_no_number_is_asked_for_again() {
        open("M10").types("e4").press(Key.control('u')).types("heavy").press(Key.ENTER);
        shell.assertRefused(Words.say("form.number_unread", "heavy"));
        shell.press(Key.control('u')).types("412 kg").press(Key.ENTER);
        assertEquals(412, machine("M10").massKg());
    }

    @Test
    void two_records_become_one_and_the_page_is_of_the_one_that_stands() {
        open("M10")
                .types("mM12's")
                .press(Key.control('u'))
                .types(machine("M12").number())
                .press(Key.ENTER);
        shell.types("12");
        assertEquals("M10", page().machineId());
        shell.types("2468").press(Key.ENTER);
        shell.assertDone();
        assertEquals(Optional.empty(), shell.day().books().findMachine("M10"));
        assertEquals("M12", page().machineId());
    }

    @Test
    void a_record_that_cannot_be_found_is_said() {
        open("M10").types("mzzzzzz").press(Key.ENTER);
        shell.assertRefused(Words.say("machine_unknown", "zzzzzz"));
    }

    @Test
    void an_owner_is_forgotten_only_by_the_second_answer() {
        String away = idOfOneWhoseOwnerIsAway();
        open(away).types("x").press(Key.ENTER);
        assertFalse(owner(away).isForgotten());
        shell.types("x1");
        assertFalse(owner(away).isForgotten());
        shell.types("x2");
        assertFalse(owner(away).isForgotten());
        shell.types("2468").press(Key.ENTER);
        shell.assertDone();
        assertTrue(owner(away).isForgotten());
        shell.types("x");
        shell.assertRefused(Words.say("off.forgotten"));
    }

    @Test
    void an_owner_is_put_right_on_the_page_of_their_machine() {
        open("M10").types("o2").press(Key.control('u')).types("0000 000 777").press(Key.ENTER);
        assertEquals("0000 000 777", owner("M10").phone());
        shell.types("o1").press(Key.control('u'), Key.ENTER);
        shell.assertRefused(Words.say("owner_missing"));
    }

    @Test
    void a_page_of_a_machine_that_another_terminal_merged_is_of_the_one_that_stands() {
        open("M10");
        shell.does(new Act.MergeMachines("M12", "M10"));
        assertEquals("M12", page().machineId());
    }

    private String idOfOneWhoseOwnerIsAway() {
        Set<String> here = shell.day().visits().stream()
                .map(visit -> shell.day().ownerOf(visit).id())
                .collect(Collectors.toSet());
        return shell.day().books().machines().stream()
                .filter(machine -> !here.contains(machine.ownerId()))
                .findFirst()
                .orElseThrow()
                .id();
    }

    private FakeShell open(String machineId) {
        shell.press(Key.ESCAPE, Key.ESCAPE, Key.ESCAPE);
        Machine machine = machine(machineId);
        shell.types("m" + machine.number()).press(Key.ENTER);
        assertEquals(machineId, page().machineId());
        return shell;
    }

    private Machine machine(String id) {
        return shell.day().books().expectMachine(id);
    }

    private Owner owner(String machineId) {
        return shell.day().books().expectOwner(machine(machineId).ownerId());
    }

    private Screen.Register register() {
        return (Screen.Register) shell.board().screen();
    }

    private Screen.MachinePage page() {
        return (Screen.MachinePage) shell.board().screen();
    }
}
