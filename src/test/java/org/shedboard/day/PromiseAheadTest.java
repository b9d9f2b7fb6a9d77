package org.shedboard.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.shedboard.pack.search.Packer;
import org.shedboard.shop.Mud;

/** A time is promised on the day on which it can be kept, today or in weeks. */
class PromiseAheadTest {
    private final Shed shed = Shed.open();

    @Test
    void a_machine_that_is_expected_in_some_days_is_promised_for_the_day_it_comes() {
        assertEquals(LocalDate.of(2026, 5, 15), promised("2026-05-15T08:00"));
    }

    @Test
    void a_machine_that_is_expected_in_three_weeks_is_promised_for_the_day_it_comes() {
        assertEquals(LocalDate.of(2026, 6, 3), promised("2026-06-03T08:00"));
    }

    @Test
    void a_machine_that_comes_to_a_full_today_is_promised_for_another_day_with_everybody_going_on_as_posted() {
        for (int i = 0; i < 12; i++) {
            book("2026-05-12T07:00");
        }
        shed.at("10:00");
        LocalDate promised = dateOf(quote("2026-05-12T10:00").asPosted().orElseThrow());
        assertTrue(promised.isAfter(Shed.DATE), promised.toString());
    }

    @Test
    void a_machine_that_is_booked_on_a_full_day_is_promised_for_the_next_with_everybody_going_on_as_posted() {
        for (int i = 0; i < 12; i++) {
            book("2026-06-03T07:00");
        }
        assertEquals(
                LocalDate.of(2026, 6, 4),
                dateOf(quote("2026-06-03T08:00").asPosted().orElseThrow()));
    }

    @Test
    void what_is_booked_after_the_week_of_the_plan_is_not_in_it_and_no_concern() {
        String soon = book("2026-05-18T08:00");
        String late = book("2026-05-19T00:00");
        Outlook outlook = shed.outlook();
        assertTrue(outlook.readyAt(soon).isPresent());
        assertEquals(Optional.empty(), outlook.readyAt(late));
        assertEquals(List.of(), Concerns.of(outlook));
    }

    @Test
    void what_was_booked_for_later_comes_into_the_plan_as_its_day_comes_near() {
        String late = book("2026-05-19T08:00");
        shed.on(LocalDate.of(2026, 5, 13), "06:00");
        assertTrue(shed.outlook().readyAt(late).isPresent());
    }

    private String book(String expected) {
        return shed.does(wanted(expected)).orElseThrow();
    }

    private LocalDate promised(String expected) {
        Quote.Answer answer =
                Quoting.of(shed.day(), wanted(expected), 80, shed.now()).whole(Packer::pack);
        Quote quote = ((Quote.Answer.Given) answer).quote();
        assertTrue(quote.asPosted().isPresent(), "nothing is offered as posted");
        LocalDate date = dateOf(quote.asPosted().get());
        assertEquals(date, dateOf(quote.repacked().orElseThrow()));
        return date;
    }

    private Quote quote(String expected) {
        Quoting quoting = Quoting.of(shed.day(), wanted(expected), 80, shed.now());
        return ((Quote.Answer.Given) quoting.atOnce()).quote();
    }

    private LocalDate dateOf(Quote.Offer offer) {
        return LocalDate.ofInstant(offer.promise(), shed.day().zone());
    }

    /** A caked quad keeps the one wash pad for forty minutes. */
    private Act.TakeIn wanted(String expected) {
        return Shed.takeIn(
                new Act.TakeIn.Which(Optional.empty(), "quad", "one more", OptionalInt.of(2019), ""),
                new Act.TakeIn.Whose(Optional.of("O-a"), "", ""),
                Mud.CAKED,
                OptionalInt.empty(),
                Optional.of(LocalDateTime.parse(expected).atZone(Shed.ZONE).toInstant()),
                "oil");
    }
}
