package org.shedboard.files;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.shedboard.day.Setup;
import org.shedboard.estimate.Catalogue;
import org.shedboard.estimate.MachineClass;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Owner;
import org.shedboard.shop.Person;
import org.shedboard.shop.Pin;
import org.shedboard.shop.Place;
import org.shedboard.shop.PlaceKind;
import org.shedboard.shop.Shop;
import org.shedboard.shop.Skill;
import org.shedboard.shop.Window;

/** A shop as a file: its places, people, owners and machines, and for a demonstration how its first morning goes. */
public final class ShopFile {
    private static final int HEAVIEST_KG = 20_000;
    private static final int STRONGEST_KG = 100_000;
    private static final int OLDEST_YEAR = 1900;
    private static final int NEWEST_YEAR = 2100;
    static final int MOST_HOURS = 1_000_000;
    static final int MOST_KILOMETRES = 10_000_000;
    private static final String PIN_FORM = "a text of " + Pin.SHORTEST + " to " + Pin.LONGEST + " digits";
    private static final Window ANY = new Window(LocalTime.MIN, LocalTime.MAX);

    private final Catalogue catalogue;
    private final Map<String, String> placesSeen = new HashMap<>();
    private final Map<String, String> peopleSeen = new HashMap<>();
    private final Map<String, Pin> pins = new HashMap<>();
    private final Map<String, String> ownersSeen = new HashMap<>();
    private final Map<String, String> machinesSeen = new HashMap<>();

    private ShopFile(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** The shop, with no past visits yet. */
    public static Reading<Setup> read(String json, Catalogue catalogue) {
        return Reading.of(json, new ShopFile(catalogue)::setup);
    }

    private Setup setup(Fields root) {
        root.findText("note");
        Shop shop = shop(root);
        List<Owner> owners = root.objectsOrNone("owners", this::owner);
        List<Machine> machines = root.objectsOrNone("machines", this::machine);
        MorningFields morning = new MorningFields(shop, machines, catalogue);
        NoticeFields notices = new NoticeFields(catalogue);
        StockFields shelf = new StockFields(catalogue);
        return new Setup(shop, owners, machines, List.of(), root.findObject("morning", morning::read), pins)
                .withStock(root.objectsOrNone("shelf", shelf::read))
                .withNotices(root.objectsOrNone("notices", notices::read));
    }

    private Shop shop(Fields root) {
        return new Shop(
                root.filled("name"),
                root.parsed("zone", "a time zone such as Australia/Brisbane", ZoneOffset.UTC, ZoneId::of),
                workdays(root),
                root.someObjects("places", this::place),
                root.someObjects("people", this::person));
    }

    private static Set<DayOfWeek> workdays(Fields root) {
        Set<DayOfWeek> days = new HashSet<>(root.someOf("workdays", DayOfWeek.class));
        if (days.isEmpty()) {
            root.fault("workdays", "names no day");
            days.addAll(List.of(DayOfWeek.values()));
        }
        return days;
    }

    private Place place(Fields fields) {
        String id = fields.filled("id");
        fields.unique("id", id, placesSeen);
        String name = fields.filled("name");
        PlaceKind kind = fields.oneOf("kind", PlaceKind.class);
        return new Place(
                id, name, kind, kind == PlaceKind.HOIST ? fields.whole("ratedKg", 1, STRONGEST_KG) : Place.NO_LIMIT);
    }

    private Person person(Fields fields) {
        String id = fields.filled("id");
        fields.unique("id", id, peopleSeen);
        fields.findUntold("pin", PIN_FORM, text -> Pin.of(text.toCharArray())).ifPresent(pin -> pins.put(id, pin));
        List<Window> shifts = shifts(fields);
        List<Window> overtime = windows(fields, "overtime");
        checkOrder(fields, "shifts", shifts);
        checkOrder(fields, "overtime", overtime);
        if (!shifts.contains(ANY)) {
            checkApart(fields, shifts, overtime);
        }
        return new Person(
                id,
                fields.filled("name"),
                fields.filled("role"),
                new HashSet<>(fields.someOf("skills", Skill.class)),
                fields.whole("pacePercent", 10, 1000),
                shifts,
                overtime);
    }

    /** The usual hours; any, so that reading goes on, where none could be read. */
    private static List<Window> shifts(Fields fields) {
        int before = fields.faultCount();
        List<Window> shifts = windows(fields, "shifts");
        if (shifts.isEmpty() && fields.faultCount() == before) {
            fields.fault("shifts", "names no hours");
        }
        return shifts.isEmpty() ? List.of(ANY) : shifts;
    }

    private static List<Window> windows(Fields fields, String name) {
        return fields.allParsed(name, "hours such as 07:00-09:30", ShopFile::window);
    }

    private static Window window(String text) {
        String[] ends = text.split("-", -1);
        if (ends.length != 2) {
            throw new IllegalArgumentException(text);
        }
        return new Window(LocalTime.parse(ends[0]), LocalTime.parse(ends[1]));
    }

    private static void checkOrder(Fields fields, String name, List<Window> windows) {
        for (int i = 1; i < windows.size(); i++) {
            if (windows.get(i).from().isBefore(windows.get(i - 1).to())) {
                fields.fault(name + "[" + i + "]", "begins before the hours before it end");
            }
        }
    }

    private static void checkApart(Fields fields, List<Window> shifts, List<Window> overtime) {
        for (int i = 0; i < overtime.size(); i++) {
            Window extra = overtime.get(i);
            if (shifts.stream()
                    .anyMatch(shift ->
                            shift.from().isBefore(extra.to()) && extra.from().isBefore(shift.to()))) {
                fields.fault("overtime[" + i + "]", "lies inside the usual shift");
            }
        }
    }

    private Owner owner(Fields fields) {
        String id = fields.filled("id");
        fields.unique("id", id, ownersSeen);
        return new Owner(
                id, fields.filled("name"), fields.findText("phone").orElse(""), fields.flag("washDownFirst", false));
    }

    private Machine machine(Fields fields) {
        String id = fields.filled("id");
        fields.unique("id", id, machinesSeen);
        String ownerId = fields.text("owner");
        fields.known("owner", ownerId, ownersSeen.keySet(), "owner");
        String classId = fields.text("class");
        fields.known("class", classId, classIds(), "machine class");
        return new Machine(
                id,
                ownerId,
                classId,
                fields.filled("label"),
                fields.findWhole("modelYear", OLDEST_YEAR, NEWEST_YEAR),
                fields.findText("number").orElse(""),
                massKg(fields, classId),
                fields.findWhole("meterHours", 0, MOST_HOURS));
    }

    /** Its own mass where somebody weighed it, its class's where not. */
    private int massKg(Fields fields, String classId) {
        OptionalInt own = fields.findWhole("massKg", 1, HEAVIEST_KG);
        return own.orElseGet(
                () -> catalogue.findClass(classId).map(MachineClass::massKg).orElse(1));
    }

    private Set<String> classIds() {
        return ids(catalogue.classes().stream().map(MachineClass::id));
    }

    static Set<String> ids(Stream<String> all) {
        return all.collect(Collectors.toSet());
    }
}
