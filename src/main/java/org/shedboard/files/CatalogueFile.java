package org.shedboard.files;

import java.time.Year;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shedboard.estimate.Catalogue;
import org.shedboard.estimate.Item;
import org.shedboard.estimate.MachineClass;
import org.shedboard.estimate.Point;
import org.shedboard.estimate.Spreads;
import org.shedboard.estimate.Usual;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Step;
import org.shedboard.shop.WorkKind;

/** The catalogue as a file: machine classes with their inspection points, the works, the words of the usual tasks. */
public final class CatalogueFile {
    /** No single look, wash or task is longer; a longer one is a slip of the finger. */
    static final int LONGEST_MINUTES = 600;

    private static final int HEAVIEST_KG = 20_000;
    private static final double WIDEST_SPREAD = 2;
    private static final double FURTHEST_LIMIT = 1_000_000;

    private CatalogueFile() {}

    /** @param nextYear the newest model year there can be; until then it must be plain which part is which */
    public static Reading<Catalogue> read(String json, Year nextYear) {
        return Reading.of(json, root -> catalogue(root, nextYear));
    }

    private static Catalogue catalogue(Fields root, Year nextYear) {
        root.findText("note");
        ItemFields items = new ItemFields(root);
        Map<String, String> seen = new HashMap<>();
        List<MachineClass> classes = root.someObjects("classes", fields -> machineClass(fields, seen, items));
        WorkFields works = new WorkFields(seen.keySet(), new PartFields(items, nextYear));
        return new Catalogue(
                classes,
                root.someObjects("works", works::read),
                root.object("usual", CatalogueFile::usual),
                root.object("spreads", CatalogueFile::spreads),
                root.whole("testDriveMinutes", 1, LONGEST_MINUTES),
                root.whole("signOffMinutes", 1, LONGEST_MINUTES),
                items.all());
    }

    private static MachineClass machineClass(Fields fields, Map<String, String> seen, ItemFields items) {
        String id = fields.filled("id");
        fields.unique("id", id, seen);
        String name = fields.filled("name");
        int massKg = fields.whole("massKg", 20, HEAVIEST_KG);
        List<Integer> wash = byMud(fields, "washMinutes");
        MachineClass.Moving moving = fields.object("moving", CatalogueFile::moving);
        Map<String, String> pointsSeen = new HashMap<>();
        List<Point> points = fields.someObjects("points", each -> point(each, pointsSeen, items));
        return new MachineClass(id, name, massKg, wash, moving, points);
    }

    private static MachineClass.Moving moving(Fields fields) {
        int driven = fields.whole("driven", 1, LONGEST_MINUTES);
        int pushed = fields.whole("pushed", 1, LONGEST_MINUTES);
        int raise = fields.whole("raise", 1, LONGEST_MINUTES);
        int lower = fields.whole("lower", 1, LONGEST_MINUTES);
        return new MachineClass.Moving(driven, pushed, raise, lower);
    }

    private static Point point(Fields fields, Map<String, String> seen, ItemFields items) {
        String id = fields.filled("id");
        fields.unique("id", id, seen);
        Step step = fields.oneOf("step", Step.class);
        if (isWash(fields)) {
            fields.fault("step", "nothing is inspected on the wash pad");
        }
        return new Point(
                id,
                fields.filled("name"),
                fields.filled("where"),
                step,
                fields.oneOf("due", Depth.class),
                fields.whole("inspectMinutes", 1, LONGEST_MINUTES),
                byMud(fields, "uncoverMinutes"),
                fields.findText("caution").orElse(""),
                fields.flag("stopsRiding", false),
                fields.findObject("measure", CatalogueFile::measure),
                renewedWith(fields, items));
    }

    private static Optional<String> renewedWith(Fields fields, ItemFields items) {
        Optional<Item> item = items.find(fields, "renewedWith");
        if (item.filter(each -> !each.isDisposable()).isPresent()) {
            fields.fault(
                    "renewedWith", "%s is not disposable".formatted(item.get().id()));
        }
        return item.map(Item::id);
    }

    private static Point.Measure measure(Fields fields) {
        String unit = fields.filled("unit");
        double low = fields.decimal("low", -FURTHEST_LIMIT, FURTHEST_LIMIT);
        double high = fields.decimal("high", -FURTHEST_LIMIT, FURTHEST_LIMIT);
        if (high < low) {
            fields.fault("high", "is below \"low\"");
        }
        return new Point.Measure(unit, low, high);
    }

    /** Minutes at each mud grade: more mud never takes less time. */
    private static List<Integer> byMud(Fields fields, String key) {
        List<Integer> minutes = fields.wholeList(key, Mud.values().length, 0, LONGEST_MINUTES);
        for (int grade = 1; grade < minutes.size(); grade++) {
            if (minutes.get(grade) < minutes.get(grade - 1)) {
                fields.fault(key + "[" + grade + "]", "more mud must not take less than the grade before");
            }
        }
        return minutes;
    }

    private static Map<Usual, Usual.Words> usual(Fields fields) {
        Map<Usual, Usual.Words> words = new EnumMap<>(Usual.class);
        for (Usual task : Usual.values()) {
            words.put(task, fields.object(Fields.nameOf(task), CatalogueFile::words));
        }
        return words;
    }

    private static Usual.Words words(Fields fields) {
        return new Usual.Words(fields.filled("name"), fields.findText("caution").orElse(""));
    }

    private static Spreads spreads(Fields fields) {
        Map<WorkKind, Double> byKind = fields.object("byKind", CatalogueFile::byKind);
        double machine = fields.decimal("machine", 0, WIDEST_SPREAD);
        double person = fields.decimal("person", 0, WIDEST_SPREAD);
        return new Spreads(byKind, machine, person);
    }

    private static Map<WorkKind, Double> byKind(Fields fields) {
        Map<WorkKind, Double> spreads = new EnumMap<>(WorkKind.class);
        for (WorkKind kind : WorkKind.values()) {
            spreads.put(kind, fields.decimal(Fields.nameOf(kind), 0, WIDEST_SPREAD));
        }
        return spreads;
    }

    /** Whether the file says so itself, rather than that the step could not be read. */
    static boolean isWash(Fields fields) {
        return fields.findText("step").filter(Fields.nameOf(Step.WASH)::equals).isPresent();
    }
}
