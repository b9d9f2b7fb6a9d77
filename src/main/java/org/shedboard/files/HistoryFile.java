package org.shedboard.files;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.shedboard.day.Setup;
import org.shedboard.estimate.Catalogue;
import org.shedboard.estimate.MachineClass;
import org.shedboard.estimate.PastFinding;
import org.shedboard.estimate.PastVisit;
import org.shedboard.estimate.Work;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Person;
import org.shedboard.shop.Step;

/** A shop's finished visits as a file, oldest first. */
public final class HistoryFile {
    /** A step of one visit that took longer was not clocked off. */
    private static final int LONGEST_MINUTES = 2_000;

    private final Catalogue catalogue;
    private final Map<String, Machine> machines;
    private final Set<String> people;
    private final Set<String> works;
    private LocalDate latest = LocalDate.MIN;

    private HistoryFile(Setup setup, Catalogue catalogue) {
        this.catalogue = catalogue;
        this.machines = setup.machines().stream().collect(Collectors.toMap(Machine::id, machine -> machine));
        this.people = ShopFile.ids(setup.shop().people().stream().map(Person::id));
        this.works = ShopFile.ids(catalogue.works().stream().map(Work::id));
    }

    public static Reading<List<PastVisit>> read(String json, Setup setup, Catalogue catalogue) {
        HistoryFile file = new HistoryFile(setup, catalogue);
        return Reading.of(json, root -> {
            root.findText("note");
            return root.objects("visits", file::visit);
        });
    }

    private PastVisit visit(Fields fields) {
        LocalDate date = fields.parsed("date", "a date such as 2026-05-12", latest, LocalDate::parse);
        if (date.isBefore(latest)) {
            fields.fault("date", "lies before the visit before it");
        }
        latest = date;
        String machineId = fields.text("machine");
        fields.known("machine", machineId, machines.keySet(), "machine");
        Mud mud = Mud.of(fields.whole("mud", 0, Mud.values().length - 1));
        Depth depth = fields.oneOf("depth", Depth.class);
        List<String> done = works(fields, machineId);
        Map<Step, Integer> minutes = fields.object("minutes", HistoryFile::minutes);
        Map<Step, String> doers = fields.object("people", this::people);
        if (!minutes.keySet().equals(doers.keySet())) {
            fields.fault("people", "does not name one person for each step that has minutes");
        }
        List<PastFinding> findings = findings(fields, machineId, done);
        return new PastVisit(date, machineId, mud, depth, done, minutes, doers, meters(fields), findings);
    }

    private List<PastFinding> findings(Fields fields, String machineId, List<String> done) {
        Optional<MachineClass> machineClass =
                Optional.ofNullable(machines.get(machineId)).flatMap(machine -> catalogue.findClass(machine.classId()));
        FindingFields findings = new FindingFields(machineClass, people, done);
        return fields.objectsOrNone("findings", findings::read);
    }

    private static PastVisit.Meters meters(Fields fields) {
        return new PastVisit.Meters(
                fields.findWhole("meterHours", 0, ShopFile.MOST_HOURS),
                fields.findWhole("meterKilometres", 0, ShopFile.MOST_KILOMETRES),
                fields.flag("newMeter", false));
    }

    private List<String> works(Fields fields, String machineId) {
        List<String> ids = fields.texts("works");
        fields.allKnown("works", ids, works, "work");
        Optional<Machine> machine = Optional.ofNullable(machines.get(machineId));
        for (int i = 0; i < ids.size(); i++) {
            Optional<Work> work = catalogue.findWork(ids.get(i));
            if (work.isPresent()
                    && machine.isPresent()
                    && !work.get().isFor(machine.get().classId())) {
                String words = "\"%s\" is no work for a %s";
                fields.fault(
                        "works[" + i + "]",
                        words.formatted(ids.get(i), machine.get().classId()));
            }
        }
        return ids;
    }

    private static Map<Step, Integer> minutes(Fields fields) {
        Map<Step, Integer> minutes = new EnumMap<>(Step.class);
        for (Step step : Step.values()) {
            fields.findWhole(Fields.nameOf(step), 1, LONGEST_MINUTES).ifPresent(number -> minutes.put(step, number));
        }
        return Map.copyOf(minutes);
    }

    private Map<Step, String> people(Fields fields) {
        Map<Step, String> found = new EnumMap<>(Step.class);
        for (Step step : Step.values()) {
            String name = Fields.nameOf(step);
            fields.findText(name).ifPresent(id -> {
                fields.known(name, id, people, "person");
                found.put(step, id);
            });
        }
        return Map.copyOf(found);
    }
}
