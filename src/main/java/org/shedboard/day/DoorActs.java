package org.shedboard.day;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.shedboard.estimate.Estimator;
import org.shedboard.estimate.Work;
import org.shedboard.register.NoticeTaken;
import org.shedboard.register.Register;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Handover;
import org.shedboard.shop.Intake;
import org.shedboard.shop.Line;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Owner;
import org.shedboard.shop.Promise;
import org.shedboard.shop.Stay;
import org.shedboard.shop.Visit;
import org.shedboard.shop.VisitState;
import org.shedboard.words.When;

/** What happens at the door: machines come and go, and owners are told a time. */
final class DoorActs {
    private final Draft draft;
    private final Instant now;

    DoorActs(Draft draft, Instant now) {
        this.draft = draft;
        this.now = now;
    }

    Outcome takeIn(Act.TakeIn act) {
        Optional<Refusal> no = refusal(act);
        if (no.isPresent()) {
            return new Outcome.Refused(no.get());
        }
        Owner owner = ownerOf(act.whose(), act.which());
        Machine machine = machineOf(act, owner);
        List<Line> lines = linesOf(draft, act.wanted());
        Intake intake = new Intake(act.expected().orElse(now), act.mud(), depthOf(act), act.condition(), act.note())
                .withMeterHours(act.meterHours())
                .alsoLookingAt(LastTime.pointsOf(draft.day(), machine.id()))
                .withWashDownFirst(owner.washDownFirst());
        Visit visit = new Visit(
                draft.newId("V"),
                machine.id(),
                act.expected().isPresent() ? OptionalInt.empty() : OptionalInt.of(tagOf(act.tag())),
                act.expected().isPresent() ? VisitState.BOOKED : VisitState.IN_YARD,
                intake,
                lines,
                staysOf(machine, intake, lines),
                List.of(),
                List.of(),
                Optional.empty(),
                Optional.empty());
        for (Act.TakeIn.Said said : act.said().stream().toList()) {
            visit = visit.plusPromise(new Promise(said.at(), said.by(), said.to(), now, "", false));
        }
        draft.put(visit);
        takeNotices(draft, visit, lines, act.wanted());
        return draft.doneWith(visit);
    }

    /** Remembers which lines came of a maker's notice. */
    static void takeNotices(Draft draft, Visit visit, List<Line> lines, List<Act.Wanted> wanted) {
        for (int i = 0; i < wanted.size(); i++) {
            String lineId = lines.get(i).id();
            wanted.get(i)
                    .noticeId()
                    .ifPresent(notice -> draft.put(
                            new NoticeTaken(notice, visit.machineId(), visit.id(), lineId, NoticeTaken.State.TAKEN)));
        }
    }

    /** Why a notice cannot become work on a machine. */
    static Optional<Refusal> noticeRefusal(Day day, Optional<String> machineId, List<Act.Wanted> wanted) {
        Register register = day.books().register();
        for (String id :
                wanted.stream().flatMap(each -> each.noticeId().stream()).toList()) {
            if (register.findNotice(id).isEmpty()) {
                return Optional.of(Refusal.of("notice_unknown", id));
            }
            if (machineId.filter(machine -> register.isTaken(id, machine)).isPresent()) {
                return Optional.of(Refusal.of(
                        "notice_taken", id, register.findNotice(id).get().title()));
            }
        }
        return Optional.empty();
    }

    private Optional<Refusal> refusal(Act.TakeIn act) {
        Books books = draft.day().books();
        Optional<String> classId = act.which().machineId().isPresent()
                ? books.findMachine(act.which().machineId().get()).map(Machine::classId)
                : books.catalogue().findClass(act.which().classId()).map(each -> each.id());
        if (classId.isEmpty()) {
            return Optional.of(
                    act.which().machineId().isPresent()
                            ? Refusal.of(
                                    "machine_unknown", act.which().machineId().get())
                            : Refusal.of("class_unknown", act.which().classId()));
        }
        Optional<Refusal> whose = whoseRefusal(act);
        if (whose.isPresent()) {
            return whose;
        }
        Optional<Visit> already = alreadyHere(act.which());
        if (already.isPresent()) {
            return Optional.of(Refusal.of(
                    already.get().state() == VisitState.BOOKED ? "machine_booked" : "machine_here",
                    Names.of(draft.day(), already.get())));
        }
        return wantedRefusal(draft.day(), classId.get(), act.wanted())
                .or(() -> noticeRefusal(draft.day(), act.which().machineId(), act.wanted()))
                .or(() -> tagRefusal(act.tag()))
                .or(() -> MeterQuestions.of(draft.day(), act, now))
                .or(() -> RegisterActs.yearRefusal(draft.day(), act.which().modelYear()))
                .or(() -> act.expected().filter(at -> at.isBefore(now)).map(at -> Refusal.of("expected_is_over")))
                .or(() -> act.said().flatMap(said -> promiseRefusal(said.at(), said.by())));
    }

    private Optional<Refusal> whoseRefusal(Act.TakeIn act) {
        if (act.which().machineId().isPresent()) {
            return Optional.empty();
        }
        Optional<String> id = act.whose().ownerId();
        if (id.isPresent()) {
            return draft.day().books().findOwner(id.get()).isPresent()
                    ? Optional.empty()
                    : Optional.of(Refusal.of("owner_unknown", id.get()));
        }
        return act.whose().name().isBlank() ? Optional.of(Refusal.of("owner_missing")) : Optional.empty();
    }

    private Optional<Visit> alreadyHere(Act.TakeIn.Which which) {
        return draft.day().visits().stream()
                .filter(visit -> visit.state().isOpen() || visit.state().isHere())
                .filter(visit ->
                        which.machineId().filter(visit.machineId()::equals).isPresent())
                .findFirst();
    }

    static Optional<Refusal> wantedRefusal(Day day, String classId, List<Act.Wanted> wanted) {
        if (wanted.isEmpty()) {
            return Optional.of(Refusal.of("nothing_wanted"));
        }
        for (Act.Wanted each : wanted) {
            Optional<Work> work = day.books().catalogue().findWork(each.workId());
            if (work.isEmpty()) {
                return Optional.of(Refusal.of("work_unknown", each.workId()));
            }
            if (!work.get().isFor(classId)) {
                return Optional.of(Refusal.of(
                        "work_not_for_class",
                        work.get().name(),
                        day.books().catalogue().expectClass(classId).name()));
            }
        }
        return Optional.empty();
    }

    private Optional<Refusal> tagRefusal(OptionalInt tag) {
        if (tag.isEmpty()) {
            return Optional.empty();
        }
        if (tag.getAsInt() < 1 || tag.getAsInt() > HIGHEST_TAG) {
            return Optional.of(Refusal.of("tag_out_of_range", tag.getAsInt(), HIGHEST_TAG));
        }
        return draft.day()
                .findByTag(tag.getAsInt())
                .map(visit -> Refusal.of("tag_taken", tag.getAsInt(), Names.of(draft.day(), visit)));
    }

    /** Key tags carry at most three digits. */
    private static final int HIGHEST_TAG = 999;

    private int tagOf(OptionalInt wish) {
        Set<Integer> taken = draft.day().visits().stream()
                .flatMapToInt(visit -> visit.tag().stream())
                .boxed()
                .collect(Collectors.toSet());
        return wish.orElseGet(() -> IntStream.rangeClosed(1, HIGHEST_TAG)
                .filter(tag -> !taken.contains(tag))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("all tags are taken")));
    }

    private Owner ownerOf(Act.TakeIn.Whose whose, Act.TakeIn.Which which) {
        Books books = draft.day().books();
        if (which.machineId().isPresent()) {
            return books.expectOwner(
                    books.expectMachine(which.machineId().get()).ownerId());
        }
        if (whose.ownerId().isPresent()) {
            return books.expectOwner(whose.ownerId().get());
        }
        Owner owner = new Owner(draft.newId("O"), whose.name(), whose.phone());
        draft.put(owner);
        return owner;
    }

    private Machine machineOf(Act.TakeIn act, Owner owner) {
        Books books = draft.day().books();
        Act.TakeIn.Which which = act.which();
        if (which.machineId().isPresent()) {
            Machine known = books.expectMachine(which.machineId().get());
            Machine told = told(known, act);
            if (!told.equals(known)) {
                draft.put(told);
            }
            new MeterActs(draft, now).atTheDoor(told, act);
            return told;
        }
        Machine machine = new Machine(
                draft.newId("M"),
                owner.id(),
                which.classId(),
                which.label(),
                which.modelYear(),
                which.number(),
                books.catalogue().expectClass(which.classId()).massKg(),
                act.meterHours());
        draft.put(machine);
        new MeterActs(draft, now).atTheDoor(machine, act);
        return machine;
    }

    /** What was said of a machine that we know is what it has from now on. */
    private static Machine told(Machine known, Act.TakeIn act) {
        Machine told = known;
        if (act.meterHours().isPresent()) {
            told = told.withMeterHours(act.meterHours().getAsInt());
        }
        if (act.which().modelYear().isPresent()) {
            told = told.withModelYear(act.which().modelYear());
        }
        return act.which().number().isBlank()
                ? told
                : told.withNumber(act.which().number());
    }

    static List<Line> linesOf(Draft draft, List<Act.Wanted> wanted) {
        List<Line> lines = new ArrayList<>();
        for (Act.Wanted each : wanted) {
            Work work = draft.day().books().catalogue().expectWork(each.workId());
            lines.add(new Line(draft.newId("L"), work.id(), work.name(), each.payer(), work.lineParts()));
        }
        return lines;
    }

    private Depth depthOf(Act.TakeIn act) {
        return act.depth()
                .orElseGet(() -> act.wanted().stream()
                        .map(wanted -> draft.day()
                                .books()
                                .catalogue()
                                .expectWork(wanted.workId())
                                .depth())
                        .max(Comparator.naturalOrder())
                        .orElse(Depth.ONCE_OVER));
    }

    private List<Stay> staysOf(Machine machine, Intake intake, List<Line> lines) {
        return new Estimator(draft.day().books().catalogue())
                .estimate(machine.classId(), intake, lines)
                .stays();
    }

    Outcome arrive(Act.Arrive act) {
        return draft.onVisit(act.visitId(), visit -> arrive(act, visit));
    }

    private Outcome arrive(Act.Arrive act, Visit visit) {
        if (visit.state() != VisitState.BOOKED) {
            return new Outcome.Refused(Refusal.of("not_booked", Names.of(draft.day(), visit)));
        }
        Optional<Refusal> no = tagRefusal(act.tag());
        if (no.isPresent()) {
            return new Outcome.Refused(no.get());
        }
        Intake intake = visit.intake()
                .withArrives(now)
                .withMud(act.mud().orElse(visit.intake().mud()))
                .alsoLookingAt(LastTime.pointsOf(draft.day(), visit.machineId()))
                .withWashDownFirst(draft.day().ownerOf(visit).washDownFirst());
        Visit here = visit.withState(VisitState.IN_YARD)
                .withIntake(intake)
                .withTag(OptionalInt.of(tagOf(act.tag())))
                .withStays(staysOf(draft.day().machineOf(visit), intake, visit.lines()));
        draft.put(here);
        return draft.doneWith(here);
    }

    Outcome collect(Act.Collect act) {
        return draft.onVisit(act.visitId(), visit -> collect(act, visit));
    }

    private Outcome collect(Act.Collect act, Visit visit) {
        if (visit.state() != VisitState.DONE) {
            return new Outcome.Refused(Refusal.of("not_done_yet", Names.of(draft.day(), visit)));
        }
        Optional<Refusal> no = handoverRefusal(act, visit);
        if (no.isPresent()) {
            return new Outcome.Refused(no.get());
        }
        Visit gone = visit.withState(VisitState.GONE).withTag(OptionalInt.empty());
        for (Act.Collect.Handed handed : act.handed().stream().toList()) {
            gone = gone.handedOver(new Handover(handed.by(), handed.to(), handed.told(), now));
        }
        draft.carry(gone.machineId(), TakenHome.of(draft.day(), gone));
        draft.put(gone);
        return draft.doneWith(gone);
    }

    private Optional<Refusal> handoverRefusal(Act.Collect act, Visit visit) {
        if (act.handed().isEmpty()) {
            return Riding.isStopped(draft.day(), visit)
                    ? Optional.of(Refusal.of("tell_not_to_ride", Names.of(draft.day(), visit)))
                    : Optional.empty();
        }
        Act.Collect.Handed handed = act.handed().get();
        if (draft.day().shop().findPerson(handed.by()).isEmpty()) {
            return Optional.of(Refusal.of("person_unknown", handed.by()));
        }
        return handed.to().isBlank() || handed.told().isBlank()
                ? Optional.of(Refusal.of("handover_incomplete", Names.of(draft.day(), visit)))
                : Optional.empty();
    }

    Outcome callOff(Act.CallOff act) {
        return draft.onVisit(act.visitId(), visit -> callOff(act, visit));
    }

    private Outcome callOff(Act.CallOff act, Visit visit) {
        if (visit.state() != VisitState.BOOKED) {
            return new Outcome.Refused(Refusal.of("not_booked", Names.of(draft.day(), visit)));
        }
        Visit off = visit.withState(act.noShow() ? VisitState.NO_SHOW : VisitState.CANCELLED);
        draft.put(off);
        return draft.doneWith(off);
    }

    Outcome sayPromise(Act.SayPromise act) {
        return draft.onVisit(act.visitId(), visit -> sayPromise(act, visit));
    }

    private Outcome sayPromise(Act.SayPromise act, Visit visit) {
        if (!visit.state().isOpen()) {
            return new Outcome.Refused(Refusal.of("nothing_to_promise", Names.of(draft.day(), visit)));
        }
        if (visit.promise().isPresent() && act.why().isBlank()) {
            return new Outcome.Refused(Refusal.of("why_changed", Names.of(draft.day(), visit)));
        }
        Optional<Refusal> no = promiseRefusal(act.at(), act.by());
        if (no.isPresent()) {
            return new Outcome.Refused(no.get());
        }
        Visit promised = visit.plusPromise(new Promise(act.at(), act.by(), act.to(), now, act.why(), act.ownersWish()));
        draft.put(promised);
        return draft.doneWith(promised);
    }

    private Optional<Refusal> promiseRefusal(Instant at, String by) {
        if (draft.day().shop().findPerson(by).isEmpty()) {
            return Optional.of(Refusal.of("person_unknown", by));
        }
        return at.isBefore(now)
                ? Optional.of(
                        Refusal.of("promise_is_over", When.CLOCK.say(draft.day().timeOf(at))))
                : Optional.empty();
    }
}
