package org.shedboard.day;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.shedboard.estimate.MachineClass;
import org.shedboard.estimate.Point;
import org.shedboard.register.Carried;
import org.shedboard.register.IdNumber;
import org.shedboard.register.NextDue;
import org.shedboard.register.Notice;
import org.shedboard.register.NumberRemark;
import org.shedboard.register.Reading;
import org.shedboard.register.Upkeep;
import org.shedboard.shop.Finding;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Owner;
import org.shedboard.shop.OwnersWord;
import org.shedboard.shop.Visit;

/** What is to be known about a machine at the door, found. */
public final class DoorNotes {
    private final Day day;
    private final Act.TakeIn wanted;
    private final Instant now;
    private final List<DoorNote> notes = new ArrayList<>();

    private DoorNotes(Day day, Act.TakeIn wanted, Instant now) {
        this.day = day;
        this.wanted = wanted;
        this.now = now;
    }

    /**
     * The most urgent first.
     *
     * @param wanted the machine as far as it is described; it need not be one that could be taken in like this
     */
    public static List<DoorNote> of(Day day, Act.TakeIn wanted, Instant now) {
        return new DoorNotes(day, wanted, now).all();
    }

    private List<DoorNote> all() {
        leftLastTime();
        machine().ifPresent(this::service);
        year();
        numberFaults();
        parts();
        fullDay();
        washDown();
        makersNotices();
        return notes.stream().sorted(Comparator.comparing(DoorNote::kind)).toList();
    }

    /** What the machine took home when it was last here, a note for each sort. */
    private void leftLastTime() {
        Map<DoorNote.Kind, List<String>> points = new EnumMap<>(DoorNote.Kind.class);
        machine()
                .ifPresent(machine -> day.books()
                        .register()
                        .carriedBy(machine.id())
                        .forEach(carried -> {
                            MachineClass machineClass = day.books().catalogue().expectClass(machine.classId());
                            machineClass
                                    .findPoint(carried.finding().pointId())
                                    .ifPresent(point -> points.computeIfAbsent(
                                                    kindOf(point, carried), kind -> new ArrayList<>())
                                            .add(LastTime.say(day, point, carried)));
                        }));
        points.forEach((kind, said) -> notes.add(DoorNote.of(kind, String.join(", ", said))));
    }

    private static DoorNote.Kind kindOf(Point point, Carried carried) {
        Finding finding = carried.finding();
        boolean declined = finding.word()
                .filter(word -> word.answer() == OwnersWord.Answer.NO)
                .isPresent();
        return switch (finding.mark()) {
            case FIX ->
                point.stopsRiding()
                        ? DoorNote.Kind.LAST_NOT_TO_RIDE
                        : declined ? DoorNote.Kind.LAST_DECLINED : DoorNote.Kind.LAST_FIX;
            case NOT_REACHED -> DoorNote.Kind.LAST_NOT_REACHED;
            case WATCH, GOOD -> DoorNote.Kind.LAST_WATCH;
        };
    }

    /** A service that may be done by now, unless it is wanted already. */
    private void service(Machine machine) {
        Upkeep upkeep = day.books().upkeep();
        List<String> works = wanted.wanted().stream().map(Act.Wanted::workId).toList();
        upkeep.nextDue(machine, now)
                .filter(due -> due.on(LocalDate.ofInstant(now, day.zone())) != NextDue.State.AHEAD)
                .filter(due -> !upkeep.isDoneBy(machine, due, works))
                .flatMap(this::note)
                .ifPresent(notes::add);
    }

    /** Empty where the meter, as it is read now, has not come to what it was thought to have passed. */
    private Optional<DoorNote> note(NextDue due) {
        OptionalInt read = due.dial().map(dial -> read(dial.unit())).orElse(OptionalInt.empty());
        if (read.isEmpty()) {
            return Optional.of(asExpected(due));
        }
        NextDue.Dial dial = due.dial().orElseThrow();
        String work = day.books().catalogue().expectWork(due.workId()).name();
        return read.getAsInt() < dial.due()
                ? Optional.empty()
                : Optional.of(DoorNote.of(
                        DoorNote.Kind.SERVICE_BY_READING,
                        work,
                        dial.sayDue(),
                        dial.unit().say(read.getAsInt())));
    }

    private OptionalInt read(Reading.Unit unit) {
        return unit == Reading.Unit.HOURS ? wanted.meterHours() : wanted.dials().kilometres();
    }

    private DoorNote asExpected(NextDue due) {
        String work = day.books().catalogue().expectWork(due.workId()).name();
        return due.dial()
                .map(dial -> DoorNote.of(DoorNote.Kind.SERVICE_BY_METER, work, dial.sayDue(), dial.sayNow()))
                .orElseGet(() -> DoorNote.of(
                        DoorNote.Kind.SERVICE_BY_DATE,
                        work,
                        Clocks.sayFullDate(due.dates().likely())));
    }

    private void year() {
        OptionalInt year = wanted.which().modelYear();
        if (year.isEmpty()) {
            year = machine().map(Machine::modelYear).orElse(OptionalInt.empty());
        }
        List<Integer> possible = number().years(day.date().getYear());
        String years = String.join(", ", possible.stream().map(String::valueOf).toList());
        if (year.isPresent()) {
            if (!possible.isEmpty() && !possible.contains(year.getAsInt())) {
                notes.add(DoorNote.of(DoorNote.Kind.YEAR_NOT_OF_NUMBER, years, year.getAsInt()));
            }
        } else if (!possible.isEmpty()) {
            notes.add(DoorNote.of(DoorNote.Kind.YEARS_POSSIBLE, years));
        } else if (isDescribed()) {
            notes.add(DoorNote.of(DoorNote.Kind.YEAR_UNKNOWN));
        }
    }

    private void numberFaults() {
        for (NumberRemark fault : number().faults()) {
            switch (fault.kind()) {
                case CHECK_DIGIT_WRONG -> notes.add(new DoorNote(DoorNote.Kind.CHECK_DIGIT_WRONG, fault.values()));
                case LETTER_EXCLUDED -> notes.add(new DoorNote(DoorNote.Kind.NUMBER_LETTER, fault.values()));
                case NO_YEAR -> notes.add(new DoorNote(DoorNote.Kind.NUMBER_NO_YEAR, fault.values()));
                case ALMOST_VEHICLE -> notes.add(new DoorNote(DoorNote.Kind.NUMBER_LENGTH, fault.values()));
                default -> {
                    // what is only told of a number is told on the machine's page
                }
            }
        }
    }

    /** Those that are not wanted yet. */
    private void makersNotices() {
        for (Notice notice : Notices.openOn(day, wanted.which())) {
            boolean isWanted = wanted.wanted().stream()
                    .anyMatch(
                            each -> each.noticeId().filter(notice.id()::equals).isPresent());
            if (!isWanted) {
                DoorNote.Kind kind =
                        Notices.isSure(day, wanted.which(), notice) ? DoorNote.Kind.NOTICE : DoorNote.Kind.NOTICE_MAYBE;
                notes.add(DoorNote.of(kind, notice.id(), notice.title()));
            }
        }
    }

    /** The number that was said, else the one the machine has. */
    private IdNumber number() {
        String said = wanted.which().number();
        return IdNumber.of(said.isBlank() ? machine().map(Machine::number).orElse("") : said);
    }

    private void washDown() {
        machine()
                .map(Machine::ownerId)
                .or(() -> wanted.whose().ownerId())
                .flatMap(day.books()::findOwner)
                .filter(Owner::washDownFirst)
                .ifPresent(owner -> notes.add(DoorNote.of(DoorNote.Kind.WASH_DOWN_FIRST, owner.name())));
    }

    /** What would be short if the machine came in like this, and what somebody has to look for on it. */
    private void parts() {
        if (Acts.apply(day, Quoting.withoutPromise(wanted), now) instanceof Outcome.Done done) {
            Visit visit = done.day().expectVisit(done.subject().orElseThrow());
            List<Cover> covers = SetAside.of(done.day(), now).of(visit);
            covers.stream().filter(Cover::isShort).forEach(this::isShort);
            covers.stream().map(Cover::need).filter(Need::isOpen).distinct().forEach(this::toCheck);
        }
    }

    private void isShort(Cover cover) {
        DoorNote.Kind kind =
                cover.state() == Cover.State.ON_ORDER ? DoorNote.Kind.PART_ON_ORDER : DoorNote.Kind.PART_NOT_ORDERED;
        String item = day.books().catalogue().nameOfItem(cover.itemId());
        notes.add(DoorNote.of(kind, item, Clocks.sayTime(day, cover.from().orElseThrow())));
    }

    private void toCheck(Need need) {
        String items =
                need.itemIds().stream().map(day.books().catalogue()::nameOfItem).collect(Collectors.joining(", "));
        notes.add(DoorNote.of(DoorNote.Kind.PART_TO_CHECK, need.part().name(), items));
    }

    /** A booking is not refused for it: the foreman may know better. */
    private void fullDay() {
        notes.addAll(new FullDay(day, now).notes(wanted));
    }

    /** The machine, if it is one we know. */
    private Optional<Machine> machine() {
        return wanted.which().machineId().flatMap(day.books()::findMachine);
    }

    private boolean isDescribed() {
        return machine().isPresent() || !wanted.which().label().isBlank();
    }
}
