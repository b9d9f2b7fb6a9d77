package org.shedboard.files;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import org.shedboard.estimate.Catalogue;
import org.shedboard.estimate.MachineClass;
import org.shedboard.estimate.Work;
import org.shedboard.register.Notice;
import org.shedboard.shop.NumberRange;

/** One maker's notice in a file. */
final class NoticeFields {
    private static final int OLDEST_YEAR = 1900;
    private static final int NEWEST_YEAR = 2100;
    private static final long LARGEST_NUMBER = 99_999_999_999_999_999L;
    private static final long NONE = -1;

    private final Catalogue catalogue;
    private final Map<String, String> seen = new HashMap<>();

    NoticeFields(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    Notice read(Fields fields) {
        String id = fields.filled("id");
        fields.unique("id", id, seen);
        String title = fields.filled("title");
        List<String> classes = fields.textsOrNone("classes");
        Set<String> known = ShopFile.ids(catalogue.classes().stream().map(MachineClass::id));
        fields.allKnown("classes", classes, known, "machine class");
        String label = fields.findText("label").orElse("");
        OptionalInt from = fields.findWhole("yearFrom", OLDEST_YEAR, NEWEST_YEAR);
        OptionalInt to = later(fields, "yearTo", from);
        NumberRange numbers = numbers(fields);
        String work = work(fields, classes);
        boolean isAboutAll = classes.isEmpty() && label.isBlank() && from.isEmpty() && to.isEmpty() && numbers.isAny();
        if (isAboutAll) {
            fields.fault("label", "is missing: with no class, label, year or number it is about every machine");
        }
        return new Notice(id, title, classes, label, from, to, numbers, work);
    }

    private static OptionalInt later(Fields fields, String name, OptionalInt from) {
        OptionalInt to = fields.findWhole(name, OLDEST_YEAR, NEWEST_YEAR);
        if (from.isPresent() && to.isPresent() && to.getAsInt() < from.getAsInt()) {
            fields.fault(name, "is before \"yearFrom\"");
            return from;
        }
        return to;
    }

    private static NumberRange numbers(Fields fields) {
        String prefix = fields.findText("prefix").orElse("");
        long from = fields.longOr("numberFrom", NONE, 0, LARGEST_NUMBER);
        long to = fields.longOr("numberTo", NONE, 0, LARGEST_NUMBER);
        if (to != NONE && to < from) {
            fields.fault("numberTo", "is before \"numberFrom\"");
            return NumberRange.ANY;
        }
        return new NumberRange(prefix, optional(from), optional(to));
    }

    private static OptionalLong optional(long number) {
        return number == NONE ? OptionalLong.empty() : OptionalLong.of(number);
    }

    /** The work must be on offer for each class it is about. */
    private String work(Fields fields, List<String> classes) {
        String id = fields.text("work");
        Set<String> works =
                new HashSet<>(ShopFile.ids(catalogue.works().stream().map(Work::id)));
        fields.known("work", id, works, "work");
        catalogue
                .findWork(id)
                .ifPresent(work -> classes.stream()
                        .filter(each -> catalogue.findClass(each).isPresent() && !work.isFor(each))
                        .forEach(each -> fields.fault("work", "\"%s\" is not for class \"%s\"".formatted(id, each))));
        return id;
    }
}
