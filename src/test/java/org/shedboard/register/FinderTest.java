package org.shedboard.register;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Owner;

/** Finding machines by what is typed, mistakes included. */
class FinderTest {
    private static final List<Owner> OWNERS = List.of(
            new Owner("O1", "Quillgate, Nettle Flat", "0000 1"),
            new Owner("O2", "Marrowby, Dry Gully", "0000 2"),
            new Owner("O3", "Mérindol, Øst Gully", "0000 3"),
            new Owner("O4", "Gullyver, Crow Paddock", "0000 4"),
            new Owner("O5", "Nobody Yet", "0000 5"));
    private static final List<Machine> MACHINES = List.of(
            machine("M1", "O1", "Trudge 500", "QF-00417"),
            machine("M2", "O2", "Heeler 9", "1M8 GDM9AX KP042788"),
            machine("M3", "O3", "Trudge 500", ""),
            machine("M4", "O4", "Burr", "77"),
            machine("M5", "O1", "Burr", "12"));

    private final Finder finder = Finder.of(OWNERS, MACHINES, List.of());

    @ParameterizedTest
    @CsvSource({
        "quillgate, 'M5 M1'",
        "QUILL, 'M5 M1'",
        "llga, 'M5 M1'",
        "quillgate trudge, M1",
        "trudge quillgate, M1",
        "qf-00417, M1",
        "qf00417, M1",
        "417, M1",
        "1m8gdm9axkp042788, M2",
        "1M8 GDM9, M2",
        "042788, M2",
        "merindol, M3",
        "nobody, O5",
        "quillgate heeler, ''",
        "'  ', ''",
        "'-', ''"
    })
    void any_part_of_owner_label_or_number_finds(String typed, String found) {
        assertEquals(found, found(typed));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "quilgate", // a letter too few
                "quilllgate", // one too many
                "quallgate", // another one
                "qiullgate", // two that changed places
                "qulilgtae", // two mistakes in nine letters
                "quilga", // as far as it is typed
            })
    void typing_mistakes_are_forgiven(String typed) {
        assertEquals("M5 M1", found(typed));
        assertEquals(Grade.FORGIVEN, finder.find(typed, Map.of()).get(0).grade());
    }

    @ParameterizedTest
    @ValueSource(strings = {"bxr", "hxxler", "qxillgxtx", "xy"})
    void more_mistakes_than_the_length_allows_find_nothing(String typed) {
        assertEquals("", found(typed));
    }

    @Test
    void the_last_figures_of_a_number_are_found_with_a_mistake() {
        assertEquals("M2", found("042798"));
    }

    @Test
    void whole_words_come_before_beginnings_and_those_before_pieces_and_mistakes() {
        assertEquals("M2 M3 M4", found("gully"));
        List<Owner> owners = List.of(
                new Owner("A", "Abarn", ""),
                new Owner("B", "Barnes", ""),
                new Owner("C", "Zack Barn", ""),
                new Owner("D", "Born", ""));
        List<String> ids = Finder.of(owners, List.of(), List.of()).find("barn", Map.of()).stream()
                .map(hit -> hit.owner().id())
                .toList();
        assertEquals(List.of("C", "B", "A", "D"), ids);
    }

    @Test
    void an_owner_that_begins_with_the_word_comes_before_a_label_that_does() {
        List<Owner> owners = List.of(new Owner("A", "Ashby", ""), new Owner("B", "Burridge", ""));
        List<Machine> machines = List.of(machine("M1", "A", "Burr", ""), machine("M2", "B", "Heeler", ""));
        assertEquals(
                List.of("M2", "M1"),
                Finder.of(owners, machines, List.of()).find("bur", Map.of()).stream()
                        .map(hit -> hit.machine().orElseThrow().id())
                        .toList());
    }

    @Test
    void a_tag_finds_the_machine_that_carries_it_before_others_with_these_figures() {
        assertEquals("M5", found("12"));
        assertEquals("M2 M5", ids(finder.find("12", Map.of(12, "M2", 3, "M1"))));
    }

    @Test
    void a_merged_record_finds_the_machine_that_stands() {
        Merged merged = new Merged(machine("M9", "O4", "Old plate", "ZZ-1"), "M1", Instant.EPOCH);
        Finder with = Finder.of(OWNERS, MACHINES, List.of(merged));
        assertEquals("M1", ids(with.find("zz1", Map.of())));
        assertEquals("", found("zz1"));
    }

    @Test
    void the_same_books_need_no_other_finder() {
        assertTrue(finder.isOf(OWNERS, MACHINES, List.of()));
        assertFalse(finder.isOf(OWNERS, new ArrayList<>(MACHINES), List.of()));
    }

    /** A plain reading of what is promised, letter by letter, says the same of random words. */
    @Test
    void random_words_suit_each_other_as_a_plain_count_of_mistakes_has_it() {
        Random random = new Random(5);
        int forgiven = 0;
        for (int i = 0; i < 20_000; i++) {
            String typed = word(random, 1 + random.nextInt(10));
            String written = random.nextBoolean() ? word(random, 1 + random.nextInt(12)) : misspelt(random, typed);
            Grade grade = new TypedWord(typed).in(Spelling.of(written));
            assertEquals(plainly(typed, written), grade, typed + " in " + written);
            forgiven += grade == Grade.FORGIVEN ? 1 : 0;
        }
        assertTrue(forgiven > 1000, forgiven + " with mistakes");
    }

    private static Grade plainly(String typed, String written) {
        if (written.contains(typed)) {
            return written.equals(typed) ? Grade.EXACT : written.startsWith(typed) ? Grade.PREFIX : Grade.INSIDE;
        }
        int allowed = typed.length() >= 8 ? 2 : typed.length() >= 4 ? 1 : 0;
        for (int end = 0; allowed > 0 && end <= written.length(); end++) {
            if (mistakes(typed, written.substring(0, end)) <= allowed) {
                return Grade.FORGIVEN;
            }
        }
        return Grade.NONE;
    }

    /** By the definition: the last letters are the same, changed places, or one of them is too many or another. */
    private static int mistakes(String one, String other) {
        int[][] least = new int[one.length() + 1][other.length() + 1];
        for (int i = 0; i <= one.length(); i++) {
            for (int j = 0; j <= other.length(); j++) {
                least[i][j] = i + j;
                if (i > 0 && j > 0) {
                    int same = one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1;
                    least[i][j] = Math.min(least[i - 1][j - 1] + same, Math.min(least[i - 1][j], least[i][j - 1]) + 1);
                }
                if (i > 1
                        && j > 1
                        && one.charAt(i - 1) == other.charAt(j - 2)
                        && one.charAt(i - 2) == other.charAt(j - 1)) {
                    least[i][j] = Math.min(least[i][j], least[i - 2][j - 2] + 1);
                }
            }
        }
        return least[one.length()][other.length()];
    }

    private static String word(Random random, int length) {
        StringBuilder word = new StringBuilder();
        random.ints(length, 'a', 'e').forEach(letter -> word.append((char) letter));
        return word.toString();
    }

    private static String misspelt(Random random, String word) {
        StringBuilder wrong = new StringBuilder(word + word(random, random.nextInt(4)));
        for (int i = random.nextInt(3); i > 0; i--) {
            wrong.setCharAt(random.nextInt(word.length()), (char) ('a' + random.nextInt(6)));
        }
        return wrong.toString();
    }

    private String found(String typed) {
        return ids(finder.find(typed, Map.of()));
    }

    private static String ids(List<Finder.Hit> hits) {
        return String.join(
                " ",
                hits.stream()
                        .map(hit -> hit.machine()
                                .map(Machine::id)
                                .orElse(hit.owner().id()))
                        .toList());
    }

    private static Machine machine(String id, String ownerId, String label, String number) {
        return new Machine(id, ownerId, "quad", label, OptionalInt.empty(), number, 300, OptionalInt.empty());
    }
}
