package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.app.CommandRoom.Said;
import org.shedboard.store.Store;

/** Setting PINs by the command, in the demonstration, where Marnie has one, and in a shop where nobody has. */
class PinCommandTest {
    private static final String SET = "The PIN of %s is set.\n";
    private static final String FORM = "A PIN is 4 to 12 digits.\n";

    @TempDir
    Path directory;

    private static String[] inDemonstration(String... words) {
        String[] all = Arrays.copyOf(words, words.length + 3);
        System.arraycopy(new String[] {"--demo", "--at", CommandRoom.MORNING}, 0, all, words.length, 3);
        return all;
    }

    private static void assertSet(String name, Said said) {
        assertEquals("", said.err());
        assertEquals(SET.formatted(name), said.out());
        assertEquals(0, said.status());
    }

    private static void assertRefused(String sentence, Said said) {
        assertEquals(sentence, said.err());
        assertEquals("", said.out());
        assertEquals(1, said.status());
    }

    private CommandRoom small() throws IOException {
        CommandRoom room = CommandRoom.empty(directory);
        Path file = Files.writeString(directory.resolve("shop.json"), LoadCommandTest.SMALL_SHOP);
        assertEquals(0, room.run("load", file.toString()).status());
        return room;
    }

    @Test
    void the_first_pin_of_a_shop_is_one_line() throws Exception {
        CommandRoom room = small();
        assertRefused(FORM, room.piped("246\n", "pin", "Ash"));
        assertSet("Ash", room.piped("2468", "pin", "ash"));
        assertSet("Ash", room.piped("2468\r\n1357\r\n", "pin", "Ash"));
    }

    @Test
    void where_nobody_has_a_pin_nobody_can_sign() throws Exception {
        assertRefused(
                "Ash has no PIN yet; \"shedboard pin\" sets one, signed by somebody who has one.\n",
                small().piped("2468\n1357\n", "pin", "Ash", "--by", "Ash"));
    }

    @Test
    void the_foreman_signs_for_a_pin_of_somebody_else_who_then_changes_it() throws Exception {
        CommandRoom room = CommandRoom.withDemonstration(directory);
        assertSet("Tobin", room.piped("2468\n1357\n", inDemonstration("pin", "Tobin", "--by", "Marnie")));
        assertSet("Tobin", room.piped("1357\n97531\n", inDemonstration("pin", "Tobin")));
        Said said = room.piped("97531\n8642\n", inDemonstration("pin", "Marnie", "--by", "Tobin", "--json"));
        assertEquals("pin", said.json().get("done").asString());
        assertEquals("Marnie", said.json().get("person").asString());
    }

    @Test
    void a_wrong_pin_changes_nothing_but_counts() throws Exception {
        CommandRoom room = CommandRoom.withDemonstration(directory);
        for (int i = 0; i < 3; i++) {
            assertRefused("That PIN is wrong.\n", room.piped("2469\n1357\n", inDemonstration("pin", "Marnie")));
        }
        assertRefused(
                "That PIN is wrong; wait 10 seconds before the next try.\n",
                room.piped("2469\n1357\n", inDemonstration("pin", "Marnie")));
        Said right = room.piped("2468\n1357\n", inDemonstration("pin", "Marnie"));
        assertEquals(1, right.status());
        assertTrue(right.err().startsWith("The PIN of Marnie was wrong too often in a row; wait "), right.err());
    }

    @Test
    void what_is_piped_in_and_no_pin_is_refused_and_not_repeated() throws Exception {
        CommandRoom room = CommandRoom.withDemonstration(directory);
        assertRefused("No PIN was given.\n", room.piped("", inDemonstration("pin", "Marnie")));
        assertRefused("No PIN was given.\n", room.piped("2468\n", inDemonstration("pin", "Marnie")));
        assertRefused(FORM, room.piped("2468\n13579x\n", inDemonstration("pin", "Marnie")));
        assertRefused(FORM, room.piped("2468\n" + "1".repeat(100) + "\n", inDemonstration("pin", "Marnie")));
        assertRefused("Nobody called \"Nemo\" works here.\n", room.piped("2468\n", inDemonstration("pin", "Nemo")));
    }

    @Test
    void at_a_terminal_a_new_pin_is_typed_twice() throws Exception {
        CommandRoom room = CommandRoom.withDemonstration(directory);
        assertRefused(
                "The second PIN is not the first one; nothing is changed.\n",
                room.typing(List.of("2468", "1357", "1375"), inDemonstration("pin", "Marnie")));
        assertRefused("No PIN was given.\n", room.typing(List.of("2468", "1357"), inDemonstration("pin", "Marnie")));
        assertSet("Marnie", room.typing(List.of("2468", "1357", "1357"), inDemonstration("pin", "Marnie")));
    }

    @Test
    void a_pin_is_never_an_argument() throws Exception {
        Said said = CommandRoom.withDemonstration(directory).run(inDemonstration("pin", "Marnie", "2468"));
        assertEquals(2, said.status());
        assertEquals("", said.out());
    }

    @Test
    void a_new_shop_tells_its_journal_no_pin() throws Exception {
        CommandRoom.withDemonstration(directory);
        try (Store store = Store.open(Homes.demonstration(directory))) {
            assertTrue(Pins.of(store, "test").isSet("P1"));
            String journal = store.read(reader -> reader.journal(0)).toString();
            assertTrue(journal.contains("the shop is set up"), journal);
            assertFalse(journal.contains("2468"), journal);
        }
    }
}
