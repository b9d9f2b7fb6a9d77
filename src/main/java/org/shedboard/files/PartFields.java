package org.shedboard.files;

import java.time.Year;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.shedboard.estimate.Item;
import org.shedboard.estimate.Variant;
import org.shedboard.estimate.Variant.Serials;
import org.shedboard.estimate.Variant.Years;
import org.shedboard.estimate.WorkPart;
import org.shedboard.shop.NumberRange;
import org.shedboard.shop.Quantity;

/**
 * The parts of the works of a catalogue file.
 *
 * <p>A part is either only named, or it is one item everywhere, or one of several by model year or by serial number. Of those there must
 * be exactly one for each class of the work in every year from {@link #FIRST_YEAR} on until next year, and none missing or twice between
 * the lowest and the highest number of a prefix; each hole and each overlap is a fault of its own.
 */
final class PartFields {
    /** Older machines are looked at one by one; an invented limit. */
    static final int FIRST_YEAR = 1990;

    private static final int OLDEST_YEAR = 1900;
    private static final int NEWEST_YEAR = 2200;
    private static final long HIGHEST_SERIAL = 999_999_999_999L;

    private final ItemFields items;
    private final Year nextYear;

    /** What the parts of one work must fit. */
    record Of(List<String> classes, Collection<String> taskIds, Map<String, String> namesSeen) {
        Of(List<String> classes, Collection<String> taskIds) {
            this(classes, taskIds, new HashMap<>());
        }
    }

    PartFields(ItemFields items, Year nextYear) {
        this.items = items;
        this.nextYear = nextYear;
    }

    WorkPart read(Fields fields, Of work) {
        String name = fields.filled("name");
        fields.unique("name", name, work.namesSeen());
        String quantity = fields.filled("quantity");
        if (!fields.has("item") && !fields.has("variants")) {
            return new WorkPart(name, quantity);
        }
        String task = fields.text("task");
        fields.known("task", task, work.taskIds(), "task of this work");
        List<Variant> variants = variants(fields, quantity, work.classes());
        work.classes().forEach(classId -> checkWhole(fields, classId, variants));
        return new WorkPart(name, quantity, task, variants);
    }

    private List<Variant> variants(Fields fields, String quantity, List<String> classes) {
        if (fields.has("item") && fields.has("variants")) {
            fields.fault("variants", "stands beside \"item\": a part is one or the other");
        }
        Optional<Item> item = items.find(fields, "item");
        item.ifPresent(each -> checkUnit(fields, each, quantity));
        if (!fields.has("variants")) {
            return List.of(Variant.everywhere(item.map(Item::id).orElse("?")));
        }
        return fields.someObjects("variants", each -> variant(each, fields, quantity, classes));
    }

    private Variant variant(Fields fields, Fields part, String quantity, List<String> classes) {
        Optional<Item> item = items.find(fields, "item");
        if (!fields.has("item")) {
            fields.fault("item", "is missing");
        }
        item.ifPresent(each -> checkUnit(part, each, quantity));
        List<String> own = fields.textsOrNone("classes");
        fields.allKnown("classes", own, classes, "class of this work");
        Variant.Range range = fields.has("prefix") ? serials(fields) : years(fields);
        return new Variant(item.map(Item::id).orElse("?"), new HashSet<>(own), range);
    }

    private static void checkUnit(Fields fields, Item item, String quantity) {
        Optional<Quantity> read = Quantity.find(quantity);
        if (read.filter(each -> each.unit() == item.unit()).isEmpty() && !Fields.isUnread(quantity)) {
            String unit = ItemFields.nameOf(item.unit());
            fields.fault(
                    "quantity",
                    "\"%s\" is no amount of %s, which is counted in %s"
                            .formatted(Fields.brief(quantity), item.id(), unit));
        }
    }

    private static Variant.Range years(Fields fields) {
        OptionalInt from = fields.findWhole("from", OLDEST_YEAR, NEWEST_YEAR);
        OptionalInt to = fields.findWhole("to", OLDEST_YEAR, NEWEST_YEAR);
        if (from.isPresent() && to.isPresent() && from.getAsInt() > to.getAsInt()) {
            fields.fault("to", "lies before \"from\"");
        }
        return new Years(from, to);
    }

    private static Variant.Range serials(Fields fields) {
        String prefix = fields.filled("prefix");
        OptionalLong from = findSerial(fields, "fromNumber");
        OptionalLong to = findSerial(fields, "toNumber");
        if (from.isPresent() && to.isPresent() && from.getAsLong() > to.getAsLong()) {
            fields.fault("toNumber", "lies before \"fromNumber\"");
            return new Serials(NumberRange.ANY);
        }
        return new Serials(new NumberRange(prefix, from, to));
    }

    private static OptionalLong findSerial(Fields fields, String name) {
        long number = fields.longOr(name, -1, 0, HIGHEST_SERIAL);
        return number < 0 ? OptionalLong.empty() : OptionalLong.of(number);
    }

    /** Whether there is exactly one variant for everything in sight. */
    private void checkWhole(Fields fields, String classId, List<Variant> all) {
        List<Variant> variants =
                all.stream().filter(each -> each.isFor(classId)).toList();
        String name = fields.has("variants") ? "variants" : "item";
        long bySerial = variants.stream().filter(Variant::isBySerial).count();
        if (bySerial == 0) {
            holesInYears(classId, variants).forEach(fault -> fields.fault(name, fault));
        } else if (bySerial < variants.size()) {
            fields.fault(name, "goes by years and by numbers for %s: only one of them".formatted(classId));
        } else {
            holesInNumbers(classId, variants).forEach(fault -> fields.fault(name, fault));
        }
    }

    private List<String> holesInYears(String classId, List<Variant> variants) {
        List<Run> runs = new ArrayList<>();
        IntStream.rangeClosed(FIRST_YEAR, Math.max(FIRST_YEAR, nextYear.getValue()))
                .forEach(year -> add(runs, year, wrongIn(year, variants)));
        return runs.stream()
                .filter(run -> !run.wrong().isEmpty())
                .map(run -> "%s for %s in %s".formatted(run.wrong(), classId, run.years()))
                .toList();
    }

    /** Years one after the other with the same thing wrong, which is one fault; nothing is wrong where its text is empty. */
    private record Run(String wrong, int first, int last) {
        String years() {
            return first == last ? String.valueOf(first) : first + " to " + last;
        }
    }

    private static void add(List<Run> runs, int year, String wrong) {
        int end = runs.size() - 1;
        if (end >= 0 && runs.get(end).wrong().equals(wrong)) {
            runs.set(end, new Run(wrong, runs.get(end).first(), year));
        } else {
            runs.add(new Run(wrong, year, year));
        }
    }

    private static String wrongIn(int year, List<Variant> variants) {
        List<Variant> fitting =
                variants.stream().filter(each -> each.hasYear(year)).toList();
        return fitting.size() == 1 ? "" : wrong(fitting);
    }

    private static String wrong(List<Variant> fitting) {
        return fitting.isEmpty()
                ? "no item"
                : "more than one item (%s)"
                        .formatted(fitting.stream().map(Variant::itemId).collect(Collectors.joining(", ")));
    }

    /** The ranges of each prefix must follow each other without a hole and without lying over each other. */
    private static List<String> holesInNumbers(String classId, List<Variant> variants) {
        Map<String, List<Variant>> byPrefix = variants.stream()
                .collect(Collectors.groupingBy(
                        each -> serials(each).prefix(), LinkedHashMap::new, Collectors.toCollection(ArrayList::new)));
        List<String> faults = new ArrayList<>();
        for (List<Variant> ranges : byPrefix.values()) {
            ranges.sort(Comparator.comparingLong(each -> serials(each).from().orElse(0)));
            IntStream.range(1, ranges.size())
                    .forEach(i -> between(ranges.get(i - 1), ranges.get(i))
                            .ifPresent(fault -> faults.add(fault + " for " + classId)));
        }
        return faults;
    }

    private static Optional<String> between(Variant one, Variant next) {
        long end = serials(one).to().orElse(HIGHEST_SERIAL);
        long begin = serials(next).from().orElse(0);
        String prefix = serials(one).prefix();
        if (begin > end + 1) {
            return Optional.of("no item for numbers %s%s to %s%s".formatted(prefix, end + 1, prefix, begin - 1));
        }
        return begin == end + 1
                ? Optional.empty()
                : Optional.of("%s at number %s%s".formatted(wrong(List.of(one, next)), prefix, begin));
    }

    private static NumberRange serials(Variant variant) {
        return ((Serials) variant.range()).numbers();
    }
}
