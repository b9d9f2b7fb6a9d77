package org.shedboard.register;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalInt;
import java.util.OptionalLong;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shedboard.shop.Fit;
import org.shedboard.shop.NumberRange;

class NoticeTest {
    @ParameterizedTest
    @CsvSource({
        "quad, Quarrick Burr 520, 2021, YES",
        "quad, QUARRICK  burr, 2022, YES",
        "quad, Quarrick Burr 520, 2020, NO",
        "quad, Quarrick Burr 520, 2023, NO",
        "quad, Quarrick Burr 520, , MAYBE",
        "quad, Quarrick Paddock, 2021, NO",
        "tractor, Quarrick Burr 520, 2021, NO"
    })
    void a_notice_by_years_concerns_machines_of_its_class_and_label(
            String classId, String label, Integer year, Fit fit) {
        Notice notice = new Notice(
                "N",
                "",
                List.of("quad"),
                "Quarrick Burr",
                OptionalInt.of(2021),
                OptionalInt.of(2022),
                NumberRange.ANY,
                "");
        assertEquals(fit, notice.fit(classId, label, optional(year), "anything"));
    }

    @ParameterizedTest
    @CsvSource({
        "AB-1000, YES",
        "ab 1999, YES",
        "AB1999, YES",
        "AB-999, NO",
        "AB-2000, NO",
        "AC-1500, NO",
        "AB-15X0, MAYBE",
        "AB-, MAYBE",
        "'', MAYBE",
        "AB-123456789012345678, MAYBE"
    })
    void a_notice_by_numbers_concerns_those_in_its_range_and_asks_where_one_cannot_be_read(String number, Fit fit) {
        Notice notice = numbered(OptionalInt.empty());
        assertEquals(fit, notice.fit("any", "any", OptionalInt.empty(), number));
    }

    @ParameterizedTest
    @CsvSource({"AB-1500, , YES", "AB-1500, 2019, NO", "'', 2020, MAYBE", "'', , MAYBE", "AB-2500, 2020, NO"})
    void a_number_that_is_in_its_range_outweighs_a_year_that_is_not_known(String number, Integer year, Fit fit) {
        assertEquals(fit, numbered(OptionalInt.of(2020)).fit("any", "any", optional(year), number));
    }

    private static Notice numbered(OptionalInt from) {
        NumberRange numbers = new NumberRange("ab-", OptionalLong.of(1000), OptionalLong.of(1999));
        return new Notice("N", "", List.of(), "", from, OptionalInt.empty(), numbers, "");
    }

    private static OptionalInt optional(Integer year) {
        return year == null ? OptionalInt.empty() : OptionalInt.of(year);
    }
}
