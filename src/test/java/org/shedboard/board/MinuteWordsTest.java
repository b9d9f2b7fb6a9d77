package org.shedboard.board;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.shedboard.day.Shed;
import org.shedboard.day.WhySoLong;
import org.shedboard.estimate.Estimate;
import org.shedboard.forecast.Explanation;
import org.shedboard.forecast.Explanation.Source;
import org.shedboard.forecast.Washed;
import org.shedboard.shop.Visit;

class MinuteWordsTest {
    private static final Estimate.Range TAKES = new Estimate.Range(187, 226);

    private static String said(Visit visit, int mudMinutes, int left, Washed... washed) {
        List<Explanation.Part> parts = Stream.of(Source.values())
                .map(source -> new Explanation.Part(source, source == Source.MUD ? mudMinutes : 0))
                .toList();
        Explanation explained = new Explanation(TAKES, 170, parts, List.of(), Optional.empty());
        return MinuteWords.toOwner(new WhySoLong(
                visit,
                explained,
                new Estimate.Range(left, left),
                Stream.of(washed).findFirst(),
                List.of()));
    }

    private static Visit booked() {
        Shed shed = Shed.open();
        String visit = shed.does(Shed.booking("quad-1", "13:00", "oil")).orElseThrow();
        return shed.day().expectVisit(visit);
    }

    private static Visit here() {
        Shed shed = Shed.open();
        String visit = shed.quad();
        return shed.day().expectVisit(visit);
    }

    private static Visit begun() {
        Shed shed = Shed.open();
        String visit = shed.quad();
        shed.does(Shed.start("bo", visit, "in-underside"));
        return shed.day().expectVisit(visit);
    }

    @Test
    void who_books_hears_what_washing_first_saves() {
        assertEquals(
                "About 3 h 05 of work, four times out of five under 3 h 50. Washed before it comes it would be about"
                        + " 2 h 20: 45 minutes sooner and 0.75 h less to pay.",
                said(booked(), 43, 187, new Washed(138, 49, 45)));
    }

    @Test
    void of_a_machine_that_is_here_it_is_said_what_would_have_been() {
        assertEquals(
                "About 3 h 05 of work, four times out of five under 3 h 50. Had it come in clean it would be about 3 h:"
                        + " 5 minutes sooner.",
                said(here(), 6, 187, new Washed(181, 6, 0)));
    }

    @Test
    void what_rounding_leaves_nothing_of_is_not_said() {
        assertEquals(
                "About 3 h 05 of work, four times out of five under 3 h 50.",
                said(here(), 2, 187, new Washed(185, 2, 0)));
    }

    @Test
    void once_work_has_begun_it_is_said_what_is_left_and_what_the_mud_is() {
        assertEquals(
                "About 3 h 05 of work, four times out of five under 3 h 50. About 50 minutes of it is left. The mud is"
                        + " 45 minutes of it.",
                said(begun(), 43, 52));
    }
}
