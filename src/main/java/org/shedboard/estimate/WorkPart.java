package org.shedboard.estimate;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.shedboard.shop.Amount;
import org.shedboard.shop.Part;
import org.shedboard.shop.Quantity;

/**
 * A part that a line of work takes from the shelf.
 *
 * @param quantity a text, such as "2.5 L"
 * @param taskId the task of the work that uses it; empty where the shelf does not know the part
 * @param variants the items it can be; none where the shelf does not know the part
 */
public record WorkPart(String name, String quantity, String taskId, List<Variant> variants) {
    public WorkPart {
        variants = List.copyOf(variants);
    }

    /** A part of which only the name is known. */
    public WorkPart(String name, String quantity) {
        this(name, quantity, "", List.of());
    }

    /** As a line of a visit carries it. */
    public Part asPart() {
        return new Part(name, quantity);
    }

    public Amount amount() {
        return Quantity.find(quantity).map(Quantity::amount).orElse(Amount.NOTHING);
    }

    public List<Variant> variantsFor(String classId) {
        return variants.stream().filter(variant -> variant.isFor(classId)).toList();
    }

    /** The items it can be on machines of this class, each once. */
    public List<String> itemIdsFor(String classId) {
        return variantsFor(classId).stream().map(Variant::itemId).distinct().toList();
    }

    /** Which item it is on a machine of this class, year and identification number. */
    public Resolution resolve(String classId, OptionalInt year, String number) {
        List<Variant> all = variantsFor(classId);
        if (all.stream().anyMatch(Variant::isBySerial)) {
            List<Variant> fitting = matching(all, variant -> variant.hasNumber(number));
            return Resolution.of(fitting.isEmpty() ? once(all) : fitting, Resolution.Doubt.NUMBER_UNREAD);
        }
        return year.isEmpty() ? Resolution.of(once(all), Resolution.Doubt.YEAR_UNKNOWN) : ofYear(all, year.getAsInt());
    }

    /** A year on the edge of two ranges touches both. */
    private static Resolution ofYear(List<Variant> all, int year) {
        if (matching(all, variant -> variant.hasYear(year)).isEmpty()) {
            return Resolution.of(once(all), Resolution.Doubt.YEAR_OUTSIDE);
        }
        List<Variant> near = matching(
                all, variant -> IntStream.rangeClosed(year - 1, year + 1).anyMatch(variant::hasYear));
        return Resolution.of(near, Resolution.Doubt.YEAR_ON_EDGE);
    }

    private static List<Variant> matching(List<Variant> all, Predicate<Variant> is) {
        return once(all.stream().filter(is).toList());
    }

    /** Each item once. */
    private static List<Variant> once(List<Variant> variants) {
        Set<String> seen = new HashSet<>();
        List<Variant> kept = new ArrayList<>(variants);
        kept.removeIf(variant -> !seen.add(variant.itemId()));
        return kept;
    }
}
