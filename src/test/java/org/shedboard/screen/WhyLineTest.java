package org.shedboard.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.shedboard.day.Outlook;
import org.shedboard.pack.Plan;
import org.shedboard.pack.story.Reason;
import org.shedboard.shop.Visit;

class WhyLineTest {
    private final Outlook outlook = Rehearsal.atTheDemonstration().outlook();
    private final Plan.TaskTime time = outlook.plan().tasks().get(0);
    private final Visit visit = outlook.day().expectVisit(time.job());

    @Test
    void every_reason_has_words_but_those_that_hold_nobody_up() {
        String person = outlook.day().shop().people().get(0).id();
        List<Reason> reasons = List.of(
                new Reason.Arrival(600),
                new Reason.Part(600),
                new Reason.Pinned(600),
                new Reason.Task(time.task(), 600),
                new Reason.StayBefore(0, 600),
                new Reason.PlaceTaken("H1", time.job(), 0, 600),
                new Reason.PlaceClosed("H1", 600),
                new Reason.Busy(person, time.job(), time.stay(), time.task(), 600),
                new Reason.Off(person, 590, 600),
                new Reason.Chosen(600, true),
                new Reason.Now(600),
                new Reason.Begun());
        assertEquals(
                Set.of(Reason.class.getPermittedSubclasses()),
                reasons.stream().map(Object::getClass).collect(Collectors.toSet()));
        WhyLine line = new WhyLine(outlook, visit);
        for (Reason reason : reasons) {
            Optional<String> words = line.say(reason);
            assertEquals(
                    reason instanceof Reason.Now || reason instanceof Reason.Begun, words.isEmpty(), reason.toString());
            words.ifPresent(text -> assertFalse(text.contains("{") || !text.contains("10:00"), text));
        }
    }
}
