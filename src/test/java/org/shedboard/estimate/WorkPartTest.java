package org.shedboard.estimate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shedboard.estimate.Resolution.Doubt;
import org.shedboard.estimate.Variant.Serials;
import org.shedboard.estimate.Variant.Years;
import org.shedboard.shop.NumberRange;

/** Two plug washers by model year, two filters by number. */
class WorkPartTest {
    private static final WorkPart WASHER = part(years("w12", 0, 2014), years("w14", 2015, 2017), years("w16", 2018, 0));
    private static final WorkPart FILTER =
            part(serials("early", "DR-", 100_000, 299_999), serials("late", "DR-", 300_000, 0));

    private static WorkPart part(Variant... variants) {
        return new WorkPart("Part", "1", "plug", List.of(variants));
    }

    /** No limit where a year is 0. */
    private static Variant years(String item, int from, int to) {
        return new Variant(item, Set.of(), new Years(limit(from), limit(to)));
    }

    private static OptionalInt limit(int year) {
        return year == 0 ? OptionalInt.empty() : OptionalInt.of(year);
    }

    private static Variant serials(String item, String prefix, long from, long to) {
        OptionalLong end = to == 0 ? OptionalLong.empty() : OptionalLong.of(to);
        return new Variant(item, Set.of(), new Serials(new NumberRange(prefix, OptionalLong.of(from), end)));
    }

    @ParameterizedTest
    @CsvSource({"1990, w12", "2013, w12", "2016, w14", "2019, w16", "2100, w16"})
    void a_year_within_a_range_has_one_item(int year, String item) {
        Resolution resolution = WASHER.resolve("quad", OptionalInt.of(year), "");
        assertEquals(Optional.of(item), resolution.itemId());
    }

    @ParameterizedTest
    @CsvSource({"2014, w12 w14", "2015, w12 w14", "2017, w14 w16", "2018, w14 w16"})
    void the_last_year_of_one_and_the_first_of_the_next_are_to_be_looked_at(int year, String items) {
        Resolution resolution = WASHER.resolve("quad", OptionalInt.of(year), "");
        assertEquals(Optional.of(Doubt.YEAR_ON_EDGE), resolution.doubt());
        assertEquals(List.of(items.split(" ")), resolution.itemIds());
    }

    @Test
    void an_unknown_year_leaves_every_item_open() {
        Resolution resolution = WASHER.resolve("quad", OptionalInt.empty(), "");
        assertEquals(Optional.of(Doubt.YEAR_UNKNOWN), resolution.doubt());
        assertEquals(List.of("w12", "w14", "w16"), resolution.itemIds());
    }

    @Test
    void a_year_before_all_ranges_leaves_every_item_open() {
        WorkPart from1990 = part(years("a", 1990, 2000), years("b", 2001, 0));
        assertEquals(
                Optional.of(Doubt.YEAR_OUTSIDE),
                from1990.resolve("quad", OptionalInt.of(1985), "").doubt());
    }

    @Test
    void two_ranges_with_the_same_item_have_no_edge_between_them() {
        WorkPart same = part(years("a", 0, 2014), years("a", 2015, 0));
        assertEquals(
                Optional.of("a"), same.resolve("quad", OptionalInt.of(2014), "").itemId());
    }

    @Test
    void an_item_that_is_the_one_everywhere_needs_no_year() {
        assertEquals(
                Optional.of("a"),
                part(Variant.everywhere("a"))
                        .resolve("quad", OptionalInt.empty(), "")
                        .itemId());
    }

    @ParameterizedTest
    @CsvSource({"DR-100000, early", "DR-299999, early", "DR-300000, late", "dr-3000 00, late", "DR-999999999, late"})
    void a_number_within_a_range_has_one_item(String number, String item) {
        Resolution resolution = FILTER.resolve("tractor", OptionalInt.empty(), number);
        assertEquals(Optional.of(item), resolution.itemId());
    }

    @ParameterizedTest
    @CsvSource({"''", "DR-", "DR-99999", "VA-300000", "DR-30000X", "300000"})
    void a_number_that_fits_nowhere_leaves_every_item_open(String number) {
        Resolution resolution = FILTER.resolve("tractor", OptionalInt.of(2015), number);
        assertEquals(Optional.of(Doubt.NUMBER_UNREAD), resolution.doubt());
        assertEquals(List.of("early", "late"), resolution.itemIds());
    }

    @Test
    void a_variant_is_only_for_its_own_classes() {
        WorkPart byClass = part(
                new Variant("narrow", Set.of("ride-on"), Years.ALL),
                new Variant("wide", Set.of("zero-turn"), Years.ALL));
        assertEquals(
                Optional.of("wide"),
                byClass.resolve("zero-turn", OptionalInt.empty(), "").itemId());
    }
}
