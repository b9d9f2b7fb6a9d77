package org.shedboard.files;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.shedboard.estimate.Catalogue;
import org.shedboard.estimate.MachineClass;
import org.shedboard.estimate.Point;
import org.shedboard.estimate.Spreads;
import org.shedboard.estimate.Usual;
import org.shedboard.estimate.Work;
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

    private final List<Fault> faults = new ArrayList<>();
    private final Fields root;

    private CatalogueFile(String json) {
        this.root = Json.parse(json, faults);
    }

    public static Reading<Catalogue> read(String json) {
        CatalogueFile file = new CatalogueFile(json);
        return file.faults.isEmpty() ? file.read() : new Reading<>(Optional.empty(), file.faults);
    }

    private Reading<Catalogue> read() {
        root.textOrNone("note");
        List<MachineClass> classes = classes();
        Set<String> ids = new HashSet<>(classes.stream().map(MachineClass::id).toList());
        List<Work> works = new WorkFields(ids).read(root.someObjects("works"));
        Map<Usual, Usual.Words> usual = usual(root.object("usual"));
        Spreads spreads = spreads(root.object("spreads"));
        int testDrive = root.whole("testDriveMinutes", 1, LONGEST_MINUTES);
        int signOff = root.whole("signOffMinutes", 1, LONGEST_MINUTES);
        root.end();
        return Reading.of(faults, () -> new Catalogue(classes, works, usual, spreads, testDrive, signOff));
    }

    private List<MachineClass> classes() {
        Map<String, String> seen = new HashMap<>();
        return root.someObjects("classes").stream()
                .map(fields -> machineClass(fields, seen))
                .toList();
    }

    private static MachineClass machineClass(Fields fields, Map<String, String> seen) {
        String id = fields.text("id");
        fields.unique("id", id, seen);
        String name = fields.text("name");
        int massKg = fields.whole("massKg", 20, HEAVIEST_KG);
        List<Integer> wash = byMud(fields, "washMinutes");
        MachineClass.Moving moving = moving(fields.object("moving"));
        Map<String, String> pointsSeen = new HashMap<>();
        List<Point> points = fields.someObjects("points").stream()
                .map(each -> point(each, pointsSeen))
                .toList();
        fields.end();
        return new MachineClass(id, name, massKg, wash, moving, points);
    }

    private static MachineClass.Moving moving(Fields fields) {
        int driven = fields.whole("driven", 1, LONGEST_MINUTES);
        int pushed = fields.whole("pushed", 1, LONGEST_MINUTES);
        int raise = fields.whole("raise", 1, LONGEST_MINUTES);
        int lower = fields.whole("lower", 1, LONGEST_MINUTES);
        fields.end();
        return new MachineClass.Moving(driven, pushed, raise, lower);
    }

    private static Point point(Fields fields, Map<String, String> seen) {
        String id = fields.text("id");
        fields.unique("id", id, seen);
        Step step = fields.oneOf("step", Step.class);
        if (step == Step.WASH && fields.has("step") && fields.textOrNone("step").equals("wash")) {
            fields.fault("step", "nothing is inspected on the wash pad");
        }
        Point point = new Point(
                id,
                fields.text("name"),
                fields.text("where"),
                step,
                fields.oneOf("due", Depth.class),
                fields.whole("inspectMinutes", 1, LONGEST_MINUTES),
                byMud(fields, "uncoverMinutes"),
                fields.textOrNone("caution"),
                fields.flag("stopsRiding"),
                fields.has("measure") ? Optional.of(measure(fields.object("measure"))) : Optional.empty());
        fields.end();
        return point;
    }

    private static Point.Measure measure(Fields fields) {
        String unit = fields.text("unit");
        double low = fields.number("low", -FURTHEST_LIMIT, FURTHEST_LIMIT);
        double high = fields.number("high", -FURTHEST_LIMIT, FURTHEST_LIMIT);
        if (high < low) {
            fields.fault("high", "must not be below \"low\"");
        }
        fields.end();
        return new Point.Measure(unit, low, high);
    }

    /** Minutes at each mud grade: more mud never takes less time. */
    private static List<Integer> byMud(Fields fields, String key) {
        List<Integer> minutes = fields.wholes(key, Mud.values().length, 0, LONGEST_MINUTES);
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
            words.put(task, words(fields.object(Fields.nameOf(task))));
        }
        fields.end();
        return words;
    }

    private static Usual.Words words(Fields fields) {
        Usual.Words words = new Usual.Words(fields.text("name"), fields.textOrNone("caution"));
        fields.end();
        return words;
    }

    private static Spreads spreads(Fields fields) {
        Fields kinds = fields.object("byKind");
        Map<WorkKind, Double> byKind = new EnumMap<>(WorkKind.class);
        for (WorkKind kind : WorkKind.values()) {
            byKind.put(kind, kinds.number(Fields.nameOf(kind), 0, WIDEST_SPREAD));
        }
        kinds.end();
        double machine = fields.number("machine", 0, WIDEST_SPREAD);
        double person = fields.number("person", 0, WIDEST_SPREAD);
        fields.end();
        return new Spreads(byKind, machine, person);
    }
}
