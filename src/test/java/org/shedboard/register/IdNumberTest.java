package org.shedboard.register;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is made of identification numbers, against numbers and rules that others published. */
class IdNumberTest {
    private static final int THIS_YEAR = 2026;

    /** A published number whose check digit is X. */
    private static final String PUBLISHED = "1M8GDM9AXKP042788";

    private static final String ALLOWED = "0123456789ABCDEFGHJKLMNPRSTUVWXYZ";

    /**
     * Checks a1.1 to a1.6: the sample of 49 CFR 565 (older 565.6, table V), two from public check digit pages, NHTSA's outline for new
     * manufacturers p. 18, and two well-known ones from memory; all computed again by hand from the tables of 565.15(c).
     */
    @ParameterizedTest
    @CsvSource({
        "1G4AH59H45G118341, 4",
        "1M8GDM9AXKP042788, X",
        "1J9RP1A36A1644345, 6",
        "LJCPCBLCX11000237, X",
        "11111111111111111, 1",
        "5GZCZ43D13S812715, 1"
    })
    void a_published_number_passes(String text, char digit) {
        IdNumber number = IdNumber.of(text);
        assertEquals(NumberKind.VEHICLE, number.kind());
        assertEquals(Optional.of(digit), number.expectedDigit());
        assertEquals(NumberCheck.RIGHT, number.check());
        assertFalse(number.fails());
    }

    /** Check a1.7, computed: the digit is right, but 0 stands for no year. */
    @Test
    void seventeen_zeros_have_the_right_digit_and_fail_on_the_year() {
        IdNumber number = IdNumber.of("00000000000000000");
        assertEquals(NumberCheck.RIGHT, number.check());
        assertEquals(List.of(NumberRemark.of(NumberRemark.Kind.NO_YEAR, '0')), number.faults());
        assertTrue(number.fails());
    }

    /** Computed from the published numbers: a 5 read as S, and digits or letters that changed places. */
    @ParameterizedTest
    @CsvSource({"SGZCZ43D13S812715, X", "1M8GDM9AXKP042778, 7", "1M8GDM9AXKP047288, 4", "M18GDM9AXKP042788, 2"})
    void a_number_that_was_miswritten_fails(String text, char expected) {
        IdNumber number = IdNumber.of(text);
        assertEquals(NumberCheck.WRONG, number.check());
        assertEquals(Optional.of(expected), number.expectedDigit());
        assertTrue(number.fails());
    }

    /** The limits of the method, computed: characters of the same value can stand for each other. */
    @ParameterizedTest
    @ValueSource(strings = {"AM8GDM9AXKP042788", "1D8GDM9AXKP042788", "1M8GMD9AXKP042788"})
    void a_number_with_characters_of_the_same_value_changed_passes_although_it_is_wrong(String text) {
        assertNotEquals(PUBLISHED, text);
        assertEquals(NumberCheck.RIGHT, IdNumber.of(text).check());
    }

    /** Computed: every weight and every difference of two digits is less than eleven, and eleven is prime. */
    @Test
    void every_error_of_one_digit_for_another_is_caught() {
        int tried = 0;
        for (int place = 0; place < PUBLISHED.length(); place++) {
            if (!Character.isDigit(PUBLISHED.charAt(place))) {
                continue;
            }
            for (char digit = '0'; digit <= '9'; digit++) {
                if (digit != PUBLISHED.charAt(place)) {
                    assertEquals(NumberCheck.WRONG, changed(place, digit).check(), place + " " + digit);
                    tried++;
                }
            }
        }
        assertEquals(9 * 9, tried);
    }

    /** Computed: 39 of the 512 changes of one character outside the ninth place pass. */
    @Test
    void thirty_nine_of_the_changes_of_one_character_pass() {
        List<IdNumber> all = new ArrayList<>();
        for (int place : placesBesidesTheDigit()) {
            for (char other : ALLOWED.toCharArray()) {
                if (other != PUBLISHED.charAt(place)) {
                    all.add(changed(place, other));
                }
            }
        }
        assertEquals(512, all.size());
        assertEquals(
                39,
                all.stream().filter(each -> each.check() == NumberCheck.RIGHT).count());
    }

    /** Computed from the table of values. */
    @Test
    void characters_pass_for_each_other_exactly_within_their_groups() {
        Set<String> groups = new TreeSet<>();
        for (char one : ALLOWED.toCharArray()) {
            StringBuilder same = new StringBuilder();
            for (char other : ALLOWED.toCharArray()) {
                if (CheckDigit.of(changed(0, one).judged())
                        == CheckDigit.of(changed(0, other).judged())) {
                    same.append(other);
                }
            }
            groups.add(same.toString());
        }
        assertEquals(
                new TreeSet<>(Set.of("0", "1AJ", "2BKS", "3CLT", "4DMU", "5ENV", "6FW", "7GPX", "8HY", "9RZ")), groups);
    }

    /** Computed. */
    @Test
    void characters_of_different_value_that_changed_places_are_caught() {
        Map<Character, Character> sameValue = Map.of('D', 'M', 'M', 'D');
        int tried = 0;
        for (int place = 0; place + 1 < PUBLISHED.length(); place++) {
            char left = PUBLISHED.charAt(place);
            char right = PUBLISHED.charAt(place + 1);
            boolean touchesDigit = place == CheckDigit.PLACE || place + 1 == CheckDigit.PLACE;
            if (left == right || touchesDigit || Optional.of(right).equals(Optional.ofNullable(sameValue.get(left)))) {
                continue;
            }
            String swapped = PUBLISHED.substring(0, place) + right + left + PUBLISHED.substring(place + 2);
            assertEquals(NumberCheck.WRONG, IdNumber.of(swapped).check(), swapped);
            tried++;
        }
        assertEquals(12, tried);
    }

    /** Check a2: the codes of 49 CFR 565.15(d), with the years that public decoders have for them. */
    @ParameterizedTest
    @CsvSource({
        "A, 1980, 2010", "B, 1981, 2011", "C, 1982, 2012", "D, 1983, 2013", "E, 1984, 2014", "F, 1985, 2015",
        "G, 1986, 2016", "H, 1987, 2017", "J, 1988, 2018", "K, 1989, 2019", "L, 1990, 2020", "M, 1991, 2021",
        "N, 1992, 2022", "P, 1993, 2023", "R, 1994, 2024", "S, 1995, 2025", "T, 1996, 2026", "V, 1997, 2027",
        "W, 1998, 2028", "X, 1999, 2029", "Y, 2000, 2030", "1, 2001, 2031", "2, 2002, 2032", "3, 2003, 2033",
        "4, 2004, 2034", "5, 2005, 2035", "6, 2006, 2036", "7, 2007, 2037", "8, 2008, 2038", "9, 2009, 2039"
    })
    void a_year_code_stands_for_two_years(char code, int first, int second) {
        assertEquals(List.of(first, second), changed(YearCode.PLACE, code).years(2038));
    }

    @Test
    void there_are_thirty_year_codes() {
        assertEquals(
                30,
                IntStream.range(0, 128)
                        .filter(each -> YearCode.isCode((char) each))
                        .count());
    }

    /** Check a2.4. */
    @ParameterizedTest
    @ValueSource(chars = {'I', 'O', 'Q', 'U', 'Z', '0'})
    void a_character_that_is_no_year_code_gives_no_year_and_fails(char code) {
        IdNumber number = changed(YearCode.PLACE, code);
        assertEquals(List.of(), number.years(THIS_YEAR));
        assertTrue(number.faults().contains(NumberRemark.of(NumberRemark.Kind.NO_YEAR, code)));
        assertTrue(number.fails());
    }

    /** Check a2.3: the rule of the seventh place does not hold for such machines, whatever stands there. */
    @ParameterizedTest
    @ValueSource(chars = {'9', 'B'})
    void the_seventh_place_decides_nothing_between_two_years(char seventh) {
        String typed = "1M8GDM" + seventh + "AXA" + "P042788";
        assertEquals(List.of(1980, 2010), IdNumber.of(typed).years(THIS_YEAR));
    }

    /** Checks a2.1 and a2.2 (73 FR 23367): what the seventh place would decide on a car, which is only told. */
    @ParameterizedTest
    @CsvSource({"1G4AH59H45G118341, 2005", "1G4AH5AH45G118341, 2035"})
    void on_a_light_vehicle_the_seventh_place_would_decide(String text, int year) {
        assertEquals(OptionalInt.of(year), IdNumber.of(text).yearOnLightVehicle());
    }

    /** Years after the next one are left out, which is common sense and no source. */
    @ParameterizedTest
    @CsvSource({"V, 1997 2027", "W, 1998", "A, 1980 2010", "9, 2009"})
    void a_year_later_than_the_next_is_left_out(char code, String years) {
        List<Integer> expected =
                Stream.of(years.split(" ")).map(Integer::valueOf).toList();
        assertEquals(expected, changed(YearCode.PLACE, code).years(THIS_YEAR));
    }

    /** Check a3: a letter in the ninth place, never an X, makes it a product number; how it is computed is not published. */
    @Test
    void a_letter_in_the_ninth_place_makes_a_product_number_that_is_not_failed() {
        for (char letter : "ABCDEFGHJKLMNPRSTUVWYZ".toCharArray()) {
            IdNumber number = changed(CheckDigit.PLACE, letter);
            assertEquals(NumberKind.PRODUCT, number.kind());
            assertEquals(NumberCheck.NOT_CHECKABLE, number.check());
            assertFalse(number.fails());
            assertEquals(List.of(), number.years(THIS_YEAR));
        }
    }

    /** Check a3: a digit or an X in the ninth place makes a vehicle number, to be verified. */
    @Test
    void a_digit_or_an_x_in_the_ninth_place_makes_a_vehicle_number_that_is_checked() {
        for (char digit : "0123456789X".toCharArray()) {
            IdNumber number = changed(CheckDigit.PLACE, digit);
            assertEquals(NumberKind.VEHICLE, number.kind());
            assertEquals(digit == 'X' ? NumberCheck.RIGHT : NumberCheck.WRONG, number.check());
        }
    }

    /** Check a3: other lengths are numbers of the maker's, taken as they are. */
    @ParameterizedTest
    @ValueSource(strings = {"7", "QF-00417", "OIQ", "4411-O", "123456789012345", "1234567890123456789"})
    void a_short_or_long_number_is_a_serial_and_taken_as_it_is(String text) {
        IdNumber number = IdNumber.of(text);
        assertEquals(NumberKind.SERIAL, number.kind());
        assertEquals(NumberCheck.NOT_ASKED, number.check());
        assertEquals(List.of(), number.faults());
        assertEquals(List.of(), number.years(THIS_YEAR));
        assertEquals(text, number.typed());
    }

    @ParameterizedTest
    @CsvSource({"1M8GDM9AXKP04278, 16", "1M8GDM9AXKP0427889, 18"})
    void sixteen_or_eighteen_characters_are_remarked_and_not_failed(String text, int length) {
        IdNumber number = IdNumber.of(text);
        assertEquals(NumberKind.SERIAL, number.kind());
        assertEquals(List.of(NumberRemark.of(NumberRemark.Kind.ALMOST_VEHICLE, length)), number.faults());
        assertFalse(number.fails());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"1m8gdm9axkp042788", " 1M8GDM9AX KP042788 ", "1M8-GDM9AX-KP-042788", "1M8GDM9AX\u2011KP042788"})
    void blanks_hyphens_and_small_letters_do_not_count_and_are_kept(String text) {
        IdNumber number = IdNumber.of(text);
        assertEquals(PUBLISHED, number.judged());
        assertEquals(NumberCheck.RIGHT, number.check());
        assertEquals(text, number.typed());
    }

    /** The letters left out are those of 49 CFR 565; what they are mistaken for is common sense. */
    @ParameterizedTest
    @CsvSource({
        "IM8GDM9AXKP042788, 1M8GDM9AXKP042788",
        "1M8GDM9AXKPO42788, 1M8GDM9AXKP042788",
        "1M8GDM9AXKPQ42788, 1M8GDM9AXKP042788"
    })
    void a_letter_read_for_a_digit_is_suggested_and_not_changed(String text, String suggested) {
        IdNumber number = IdNumber.of(text);
        assertEquals(NumberKind.VEHICLE, number.kind());
        assertEquals(NumberCheck.WRONG, number.check());
        assertEquals(Optional.empty(), number.expectedDigit());
        assertEquals(Optional.of(suggested), number.misread());
        assertTrue(number.faults().contains(NumberRemark.of(NumberRemark.Kind.READ_AS_RIGHT, suggested)));
        assertTrue(number.fails());
        assertEquals(text, number.typed());
    }

    @Test
    void an_o_in_the_place_of_the_check_digit_makes_no_product_number() {
        IdNumber number = IdNumber.of("1M8GDM9AOKP042788");
        assertEquals(NumberKind.VEHICLE, number.kind());
        assertTrue(number.fails());
        assertEquals(NumberRemark.Kind.READ_AS_WRONG, number.faults().get(1).kind());
    }

    @Test
    void letters_of_other_scripts_and_signs_make_a_serial() {
        assertEquals(NumberKind.SERIAL, IdNumber.of("1M8GDM9AXKP04278\u0668").kind());
        assertEquals(NumberKind.SERIAL, IdNumber.of("1M8GDM9AXKP/42788").kind());
    }

    @Test
    void nothing_typed_is_no_number() {
        assertEquals(NumberKind.NONE, IdNumber.of(" - ").kind());
        assertEquals(
                List.of(NumberRemark.of(NumberRemark.Kind.NOTHING)),
                IdNumber.of("").remarks(THIS_YEAR));
    }

    private static IdNumber changed(int place, char character) {
        return IdNumber.of(PUBLISHED.substring(0, place) + character + PUBLISHED.substring(place + 1));
    }

    private static List<Integer> placesBesidesTheDigit() {
        return IntStream.range(0, CheckDigit.LENGTH)
                .filter(place -> place != CheckDigit.PLACE)
                .boxed()
                .toList();
    }
}
