package org.shedboard.files;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Year;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.shedboard.pack.fault.Fault;

/** Catalogues whose one part has something wrong: a hole, an overlap, an item, a unit or a task that does not fit. */
class PartFieldsTest {
    private static final String ITEMS = """
            "items": [
              {"id": "w12", "name": "Washer 12 mm", "unit": "each", "orderDays": 2},
              {"id": "w14", "name": "Washer 14 mm", "unit": "each", "orderDays": 2},
              {"id": "oil", "name": "Oil", "unit": "L", "orderDays": 1},
              {"id": "filter", "name": "Filter", "unit": "each", "orderDays": 3, "disposable": true}
            ],
            """;

    private static final String AT = "works[0].parts[0].";

    /** The sound catalogue of the other test with these parts for its first work. */
    private static String with(String part) {
        return CatalogueFileTest.SOUND
                .replace("\"note\": \"invented\",", "\"note\": \"invented\",\n" + ITEMS)
                .replace("[{\"name\": \"Oil\", \"quantity\": \"2 L\"}]", "[" + part + "]");
    }

    private static String washer(String variants) {
        return "{\"name\": \"Washer\", \"quantity\": \"1\", \"task\": \"plug\", \"variants\": [" + variants + "]}";
    }

    private static List<String> faultsOf(String part) {
        return CatalogueFile.read(with(part), CatalogueFileTest.NEXT_YEAR).faults().stream()
                .map(Fault::toString)
                .toList();
    }

    static Stream<Arguments> wrong() {
        return Stream.of(
                Arguments.of(
                        "{\"item\": \"w12\", \"to\": 2013}, {\"item\": \"w14\", \"from\": 2015}",
                        AT + "variants: no item for quad in 2014"),
                Arguments.of(
                        "{\"item\": \"w12\", \"to\": 2010}, {\"item\": \"w14\", \"from\": 2015}",
                        AT + "variants: no item for quad in 2011 to 2014"),
                Arguments.of(
                        "{\"item\": \"w12\", \"to\": 2015}, {\"item\": \"w14\", \"from\": 2014}",
                        AT + "variants: more than one item (w12, w14) for quad in 2014 to 2015"),
                Arguments.of(
                        "{\"item\": \"w12\", \"from\": 1992, \"to\": 2014}, {\"item\": \"w14\", \"from\": 2015}",
                        AT + "variants: no item for quad in 1990 to 1991"),
                Arguments.of(
                        "{\"item\": \"w12\", \"to\": 2014}, {\"item\": \"w14\", \"from\": 2015, \"to\": 2026}",
                        AT + "variants: no item for quad in 2027"),
                Arguments.of(
                        "{\"item\": \"w12\", \"prefix\": \"Q\", \"fromNumber\": 1, \"toNumber\": 9},"
                                + "{\"item\": \"w14\", \"prefix\": \"Q\", \"fromNumber\": 20}",
                        AT + "variants: no item for numbers Q10 to Q19 for quad"),
                Arguments.of(
                        "{\"item\": \"w12\", \"prefix\": \"Q\", \"toNumber\": 9},"
                                + "{\"item\": \"w14\", \"prefix\": \"Q\", \"fromNumber\": 9}",
                        AT + "variants: more than one item (w12, w14) at number Q9 for quad"),
                Arguments.of(
                        "{\"item\": \"w12\", \"to\": 2014}, {\"item\": \"w14\", \"prefix\": \"Q\"}",
                        AT + "variants: goes by years and by numbers for quad: only one of them"),
                Arguments.of("{\"item\": \"w13\"}", AT + "variants[0].item: no item \"w13\""),
                Arguments.of(
                        "{\"item\": \"w12\", \"classes\": [\"boat\"]}",
                        AT + "variants[0].classes[0]: no class of this work \"boat\""),
                Arguments.of("{\"item\": \"oil\"}", AT + "quantity: \"1\" is no amount of oil, which is counted in L"));
    }

    @ParameterizedTest
    @MethodSource("wrong")
    void a_fault_of_the_variants_is_told_with_its_place(String variants, String fault) {
        assertEquals(fault, faultsOf(washer(variants)).get(0));
    }

    @Test
    void each_hole_is_a_fault_of_its_own() {
        assertEquals(
                List.of(
                        AT + "variants: no item for quad in 2000 to 2004",
                        AT + "variants: no item for quad in 2011 to 2027"),
                faultsOf(washer(
                        "{\"item\": \"w12\", \"to\": 1999}, {\"item\": \"w14\", \"from\": 2005, \"to\": 2010}")));
    }

    @Test
    void the_newest_year_is_the_one_that_is_handed_in() {
        String until2030 = with(washer("{\"item\": \"w12\", \"to\": 2030}"));
        assertEquals(List.of(), CatalogueFile.read(until2030, Year.of(2030)).faults());
        assertEquals(1, CatalogueFile.read(until2030, Year.of(2031)).faults().size());
    }

    @Test
    void a_part_names_a_task_of_its_own_work() {
        assertEquals(
                List.of(AT + "task: no task of this work \"bleed\""),
                faultsOf("{\"name\": \"Washer\", \"quantity\": \"1\", \"task\": \"bleed\", \"item\": \"w12\"}"));
    }

    @Test
    void a_part_that_the_shelf_knows_names_its_task() {
        assertEquals(
                List.of(AT + "task: is missing"),
                faultsOf("{\"name\": \"Washer\", \"quantity\": \"1\", \"item\": \"w12\"}"));
    }

    @Test
    void sound_variants_have_no_fault() {
        assertEquals(
                List.of(), faultsOf(washer("{\"item\": \"w12\", \"to\": 2014}, {\"item\": \"w14\", \"from\": 2015}")));
    }

    @Test
    void only_what_is_disposable_is_renewed_when_it_is_dirty() {
        String pads = "\"stopsRiding\": true,";
        String part = "{\"name\": \"Oil\", \"quantity\": \"2 L\"}";
        assertEquals(
                List.of("classes[0].points[0].renewedWith: w12 is not disposable"),
                CatalogueFile.read(
                                with(part).replace(pads, pads + "\"renewedWith\": \"w12\","),
                                CatalogueFileTest.NEXT_YEAR)
                        .faults()
                        .stream()
                        .map(Fault::toString)
                        .toList());
    }
}
