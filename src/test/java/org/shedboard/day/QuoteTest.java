package org.shedboard.day;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shedboard.estimate.Estimate;

class QuoteTest {
    private static final Quote.Offer AT_TWO = offer("2026-05-12T14:00:00Z");
    private static final Quote.Offer AT_FOUR = offer("2026-05-12T16:00:00Z");

    private static Quote.Offer offer(String promise) {
        return new Quote.Offer(Instant.parse(promise), Instant.parse(promise), 80, List.of());
    }

    private static Optional<Quote.Offer> packedAnew(Optional<Quote.Offer> asPosted, Optional<Quote.Offer> anew) {
        Shed shed = Shed.open();
        String quad = shed.quad();
        Quote quote = new Quote(
                new Estimate(List.of(), List.of()),
                WhySoLong.of(shed.day(), shed.day().expectVisit(quad)),
                asPosted,
                Optional.empty(),
                true,
                List.of());
        return quote.withRepacked(anew).repacked();
    }

    @Test
    void packing_anew_offers_the_earlier_time_it_found() {
        assertEquals(Optional.of(AT_TWO), packedAnew(Optional.of(AT_FOUR), Optional.of(AT_TWO)));
        assertEquals(Optional.of(AT_TWO), packedAnew(Optional.empty(), Optional.of(AT_TWO)));
    }

    @Test
    void packing_anew_never_offers_a_later_time_than_leaving_the_day_as_it_is() {
        assertEquals(Optional.of(AT_TWO), packedAnew(Optional.of(AT_TWO), Optional.of(AT_FOUR)));
        assertEquals(Optional.of(AT_TWO), packedAnew(Optional.of(AT_TWO), Optional.empty()));
    }
}
