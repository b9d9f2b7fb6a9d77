package org.shedboard.day;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.shedboard.shop.Owner;
import org.shedboard.shop.Visit;

/** The owners who have to hear something today, what is most urgent first: of each machine all that there is to say. */
public record Round(List<Call> calls) {
    /** Why somebody is rung. */
    public enum Why {
        LATE,
        IN_DANGER,
        FOUND,
        DONE;

        /** Empty where it is nothing to ring anybody about. */
        public static Optional<Why> of(Concern.Kind kind) {
            return switch (kind) {
                case PROMISE_MISSED -> Optional.of(LATE);
                case PROMISE_IN_DANGER -> Optional.of(IN_DANGER);
                case NOT_TO_BE_RIDDEN, OWNER_TO_ASK, FIX_TO_ASK -> Optional.of(FOUND);
                case OWNER_TO_RING -> Optional.of(DONE);
                default -> Optional.empty();
            };
        }
    }

    /**
     * One machine to ring about.
     *
     * @param concerns what there is to say, the most urgent first; never empty
     */
    public record Call(Visit visit, Owner owner, List<Concern> concerns) {
        public Call {
            concerns = List.copyOf(concerns);
            if (concerns.isEmpty()) {
                throw new IllegalArgumentException("nobody is rung about nothing: " + visit.id());
            }
        }

        /** The most urgent of the reasons. */
        public Why why() {
            return whyOf(concerns.get(0));
        }
    }

    public Round {
        calls = List.copyOf(calls);
    }

    public static Round of(Outlook outlook) {
        Map<String, List<Concern>> byVisit = Concerns.of(outlook).stream()
                .filter(concern -> Why.of(concern.kind()).isPresent())
                .filter(concern -> concern.visitId().isPresent())
                .sorted(Comparator.comparing(Round::whyOf))
                .collect(Collectors.groupingBy(
                        concern -> concern.visitId().orElseThrow(), LinkedHashMap::new, Collectors.toList()));
        return new Round(byVisit.entrySet().stream()
                .map(each -> call(outlook.day(), each.getKey(), each.getValue()))
                .toList());
    }

    private static Call call(Day day, String visitId, List<Concern> concerns) {
        Visit visit = day.expectVisit(visitId);
        return new Call(visit, day.ownerOf(visit), concerns);
    }

    private static Why whyOf(Concern concern) {
        return Why.of(concern.kind()).orElseThrow();
    }
}
