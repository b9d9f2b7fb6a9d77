package org.shedboard.files;

import java.time.Year;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.shedboard.estimate.Catalogue;
import org.shedboard.estimate.Figure;
import org.shedboard.estimate.MachineClass;
import org.shedboard.estimate.Point;
import org.shedboard.estimate.Spreads;
import org.shedboard.estimate.Usual;
import org.shedboard.estimate.WashDown;
import org.shedboard.estimate.Work;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Step;
import org.shedboard.shop.WorkKind;
import org.shedboard.words.Words;

/** The catalogue as a file: machine classes with their inspection points, the works, the words of the usual tasks. */
public final class CatalogueFile {
    /** No single look, wash or task is longer; a longer one is a slip of the finger. */
    static final int LONGEST_MINUTES = Figure.LONGEST_MINUTES;

    private static final int HEAVIEST_KG = 20_000;
    private static final double WIDEST_SPREAD = 2;

    private CatalogueFile() {}

    /** @param nextYear the newest model year there can be; until then it must be plain which part is which */
    public static Reading<Catalogue> read(String json, Year nextYear) {
        return Reading.of(json, root -> catalogue(root, nextYear));
    }

    private static Catalogue catalogue(Fields root, Year nextYear) {
        root.findText("note");
        ItemFields items = new ItemFields(root);
        Map<String, String> seen = new HashMap<>();
        PointFields pointFields = new PointFields(items);
        List<MachineClass> classes = root.someObjects("classes", fields -> machineClass(fields, seen, pointFields));
        WorkFields workFields = new WorkFields(seen.keySet(), new PartFields(items, nextYear));
        List<Work> works = root.someObjects("works", workFields::read);
        pointFields.checkMending(works);
        return new Catalogue(
                classes,
                works,
                root.object("usual", CatalogueFile::usual),
                root.object("spreads", CatalogueFile::spreads),
                root.whole("testDriveMinutes", 1, LONGEST_MINUTES),
                root.whole("signOffMinutes", 1, LONGEST_MINUTES),
                items.all(),
                root.findObject("washDown", CatalogueFile::washDown).orElse(WashDown.USUAL));
    }

    private static WashDown washDown(Fields fields) {
        return new WashDown(
                fields.whole("signMinutes", 1, LONGEST_MINUTES), fields.whole("padMinutes", 1, LONGEST_MINUTES));
    }

    private static MachineClass machineClass(Fields fields, Map<String, String> seen, PointFields pointFields) {
        String id = fields.filled("id");
        fields.unique("id", id, seen);
        String name = fields.filled("name");
        int massKg = fields.whole("massKg", 20, HEAVIEST_KG);
        List<Integer> wash = byMud(fields, "washMinutes");
        MachineClass.Moving moving = fields.object("moving", CatalogueFile::moving);
        Map<String, String> pointsSeen = new HashMap<>();
        List<Point> points = fields.someObjects("points", each -> pointFields.read(each, id, pointsSeen));
        return new MachineClass(id, name, massKg, wash, moving, points);
    }

    private static MachineClass.Moving moving(Fields fields) {
        int driven = fields.whole("driven", 1, LONGEST_MINUTES);
        int pushed = fields.whole("pushed", 1, LONGEST_MINUTES);
        int raise = fields.whole("raise", 1, LONGEST_MINUTES);
        int lower = fields.whole("lower", 1, LONGEST_MINUTES);
        return new MachineClass.Moving(driven, pushed, raise, lower);
    }

    /** Minutes at each mud grade: more mud never takes less time. */
    static List<Integer> byMud(Fields fields, String key) {
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
            words.put(task, words(fields, task));
        }
        return words;
    }

    /** Files from before there was a wash-down have no words for it. */
    private static Usual.Words words(Fields fields, Usual task) {
        String name = Fields.nameOf(task);
        return switch (task) {
            case SIGN_WASH_DOWN ->
                fields.findObject(name, CatalogueFile::words)
                        .orElse(new Usual.Words(Words.say("usual.sign_wash_down"), ""));
            case CLEAN_PAD ->
                fields.findObject(name, CatalogueFile::words).orElse(new Usual.Words(Words.say("usual.clean_pad"), ""));
            default -> fields.object(name, CatalogueFile::words);
        };
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
