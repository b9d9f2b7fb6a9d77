package org.shedboard.board;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import org.shedboard.board.Overlay.Choice;
import org.shedboard.board.Overlay.Purpose;
import org.shedboard.board.Overlay.Reply;
import org.shedboard.day.Act;
import org.shedboard.day.Day;
import org.shedboard.day.Names;
import org.shedboard.day.NextTask;
import org.shedboard.day.Notices;
import org.shedboard.day.Outlook;
import org.shedboard.estimate.Work;
import org.shedboard.hours.Activity;
import org.shedboard.hours.Errand;
import org.shedboard.register.Notice;
import org.shedboard.shop.Hold;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Payer;
import org.shedboard.shop.Person;
import org.shedboard.shop.Place;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;
import org.shedboard.shop.VisitState;
import org.shedboard.words.Words;

/** The questions the board asks before it acts. */
final class Asks {
    /** Keys of the answers to a long question: the digits, then the letters. */
    private static final String KEYS = "123456789abcdefghijklmnopqrstuvwxyz";

    private final Outlook outlook;
    private final Day day;

    Asks(Outlook outlook) {
        this.outlook = outlook;
        this.day = outlook.day();
    }

    /** Whether an act goes over what was done at another terminal first; nothing has to be typed again for it. */
    static Overlay allTheSame(Act act, String whatWasFirst) {
        Choice mine = new Choice(
                KEYS.charAt(0), Words.say("ask.all_the_same.mine"), Optional.empty(), new Overlay.Reply.Carry(act));
        return new Overlay.Choose(
                Words.say("ask.all_the_same"),
                List.of(whatWasFirst, Words.say("ask.all_the_same.theirs")),
                List.of(mine),
                0);
    }

    /** Who starts a task: whoever the plan has on it is the answer that Enter gives. */
    Overlay whoStarts(Subject subject, Task task) {
        Optional<String> planned = subject.plannedPerson(task);
        List<Choice> choices = new ArrayList<>();
        int selected = 0;
        for (Person person : day.shop().people()) {
            if (planned.filter(person.id()::equals).isPresent()) {
                selected = choices.size();
            }
            Act start = new Act.Start(person.id(), subject.visit().id(), task.id(), Optional.empty());
            choices.add(choice(choices, label(person, planned), off(person, task), start));
        }
        String title = Words.say("ask.who_starts", task.name(), Names.of(day, subject.visit()));
        return new Overlay.Choose(title, choices, selected);
    }

    Overlay whoTakesOver(Visit visit, Task task) {
        List<Choice> choices = new ArrayList<>();
        for (Person person : day.shop().people()) {
            Act over = new Act.HandOver(visit.id(), task.id(), person.id());
            choices.add(choice(choices, label(person, Optional.empty()), off(person, task), over));
        }
        return new Overlay.Choose(Words.say("ask.who_takes_over", task.name(), Names.of(day, visit)), choices, 0);
    }

    private String label(Person person, Optional<String> planned) {
        String doing = NextTask.of(outlook, person)
                .filter(NextTask::isRunning)
                .map(on -> Words.say(
                        "ask.person_on", Names.of(day, on.visit()), on.task().name()))
                .or(() -> day.openEntryOf(person.id()).map(entry -> besides(entry.activity())))
                .orElse(Words.say("ask.person_free"));
        String plan = planned.filter(person.id()::equals).isPresent() ? Words.say("ask.person_planned") : "";
        return Words.say("ask.person", person.name(), doing, plan).strip();
    }

    /** What somebody is on that is no task of their own. */
    private String besides(Activity activity) {
        if (activity instanceof Activity.Break pause) {
            return Words.say("ask.person_break", Words.say("break." + pause.kind()));
        }
        if (activity instanceof Activity.OtherWork work) {
            return Words.say("ask.person_other", Words.say("otherWork." + work.kind()));
        }
        String visitId =
                activity instanceof Activity.Lent lent ? lent.to().visitId() : ((Activity.OnStay) activity).visitId();
        return Words.say(
                "ask.person_lent",
                day.findVisit(visitId).map(visit -> Names.of(day, visit)).orElse(visitId));
    }

    private Optional<String> off(Person person, Task task) {
        if (!day.isHere(person)) {
            return Optional.of(Words.say("person_not_here", person.name()));
        }
        return task.isFor(person)
                ? Optional.empty()
                : Optional.of(Words.say("skill_missing", person.name(), task.name(), Words.say(task.skill())));
    }

    Overlay whyHeld(Visit visit) {
        List<Choice> choices = new ArrayList<>();
        for (Hold.Reason reason : Hold.Reason.values()) {
            Overlay note = new Overlay.TypeIn(
                    Words.say("ask.hold_note", Words.say(reason)),
                    Typing.EMPTY,
                    new Purpose.HoldNote(visit.id(), reason));
            choices.add(
                    new Choice(KEYS.charAt(choices.size()), Words.say(reason), Optional.empty(), new Reply.Ask(note)));
        }
        return new Overlay.Choose(Words.say("ask.why_held", Names.of(day, visit)), choices, 0);
    }

    Overlay howMuddy(Visit visit) {
        List<Choice> choices = new ArrayList<>();
        for (Mud mud : Mud.values()) {
            Act arrive = new Act.Arrive(visit.id(), Optional.of(mud), OptionalInt.empty());
            choices.add(
                    new Choice((char) ('0' + mud.grade()), Words.say(mud), Optional.empty(), new Reply.Carry(arrive)));
        }
        return new Overlay.Choose(
                Words.say("ask.how_muddy", Names.of(day, visit)),
                choices,
                visit.intake().mud().grade());
    }

    Overlay callOff(Visit visit) {
        return new Overlay.Choose(
                Words.say("ask.call_off", Names.of(day, visit)),
                List.of(
                        new Choice(
                                '1',
                                Words.say("ask.cancelled"),
                                Optional.empty(),
                                carry(new Act.CallOff(visit.id(), false))),
                        new Choice(
                                '2',
                                Words.say("ask.no_show"),
                                Optional.empty(),
                                carry(new Act.CallOff(visit.id(), true)))),
                0);
    }

    Overlay whichWork(Visit visit) {
        List<Choice> choices = new ArrayList<>();
        for (Work work : day.books().catalogue().worksFor(day.machineOf(visit).classId())) {
            Act add = new Act.AddWork(visit.id(), List.of(new Act.Wanted(work.id(), Payer.OWNER)));
            choices.add(choice(choices, work.name(), Optional.empty(), add));
        }
        for (Notice notice : Notices.openOn(day, visit)) {
            Act add = new Act.AddWork(visit.id(), List.of(Act.Wanted.of(notice)));
            choices.add(choice(choices, Words.say("form.notice", notice.title()), Optional.empty(), add));
        }
        return new Overlay.Choose(Words.say("ask.which_work", Names.of(day, visit)), choices, 0);
    }

    /** The time to promise, filled in with the earliest quarter of an hour that has four chances in five. */
    Overlay whatTime(Visit visit) {
        return new Overlay.TypeIn(
                Words.say("ask.promise", Names.of(day, visit)),
                safeTime(visit).map(at -> Typing.of(Moments.typed(day, at))).orElse(Typing.EMPTY),
                new Purpose.PromiseTime(visit.id()));
    }

    private Optional<Instant> safeTime(Visit visit) {
        OptionalInt minute = outlook.readyAt(visit.id()).isPresent()
                ? outlook.chances().minuteWith(visit.id(), 0.8)
                : OptionalInt.empty();
        return minute.isPresent() ? Optional.of(day.instantOf((minute.getAsInt() + 14) / 15 * 15)) : Optional.empty();
    }

    /** Whose wish a changed promise is: what the owner asks for does not count against us. */
    Overlay whoseWish(Visit visit, Instant at, String why, String by) {
        String to = day.ownerOf(visit).name();
        return new Overlay.Choose(
                Words.say("ask.whose_wish"),
                List.of(
                        new Choice(
                                '1',
                                Words.say("ask.our_change"),
                                Optional.empty(),
                                carry(new Act.SayPromise(visit.id(), at, by, to, why, false))),
                        new Choice(
                                '2',
                                Words.say("ask.owners_wish"),
                                Optional.empty(),
                                carry(new Act.SayPromise(visit.id(), at, by, to, why, true)))),
                0);
    }

    /** What a person goes on to; the digits up to seven are the kinds and the breaks, as they lie on the number pad. */
    Overlay otherWork(String personId) {
        List<Choice> choices = new ArrayList<>();
        for (Activity.OtherWork.Kind kind : Activity.OtherWork.Kind.values()) {
            choices.add(
                    choice(choices, Words.say("otherWork." + kind), Optional.empty(), new Act.DoOther(personId, kind)));
        }
        for (Activity.Break.Kind kind : List.of(Activity.Break.Kind.REST, Activity.Break.Kind.MEAL)) {
            choices.add(choice(
                    choices,
                    Words.say("ask.break", Words.say("break." + kind)),
                    Optional.empty(),
                    new Act.TakeBreak(personId, kind)));
        }
        choices.add(new Choice('8', Words.say("ask.stop"), Optional.empty(), carry(new Act.Stop(personId, false))));
        choices.add(new Choice('9', Words.say("ask.leaves"), Optional.empty(), carry(new Act.Stop(personId, true))));
        day.errandsOf(personId).stream()
                .filter(errand -> errand.state() == Errand.State.PLANNED)
                .findFirst()
                .ifPresent(errand -> choices.add(
                        new Choice('0', errandLabel(errand), Optional.empty(), carry(new Act.RunErrand(errand.id())))));
        String name = day.shop().expectPerson(personId).name();
        return new Overlay.Choose(Words.say("ask.other_work", name), choices, 0);
    }

    private String errandLabel(Errand errand) {
        return Errands.say(day, errand);
    }

    /** Where a hand is wanted: every machine that is here and not done, those in hand first. */
    /** The machines that somebody can lend a hand on, those in hand first. */
    static List<Visit> machinesToLendOn(Outlook outlook) {
        return outlook.queue().stream()
                .filter(visit -> visit.state().isHere())
                .sorted(Comparator.comparing(visit -> visit.state() != VisitState.IN_HAND))
                .toList();
    }

    Overlay whereToLend(Person person) {
        ChoiceList choices = new ChoiceList();
        machinesToLendOn(outlook)
                .forEach(visit -> choices.carry(Names.of(day, visit), new Act.Lend(person.id(), visit.id())));
        return choices.titled(Words.say("ask.where_to_lend", person.name()));
    }

    private Overlay whichErrand(Person person) {
        ChoiceList choices = new ChoiceList();
        for (Activity.OtherWork.Kind kind : Activity.OtherWork.Kind.values()) {
            choices.ask(
                    Words.say("otherWork." + kind),
                    new Overlay.TypeIn(
                            Words.say("ask.errand", person.name()),
                            Typing.EMPTY,
                            new Purpose.Errand(person.id(), kind)));
        }
        day.errandsOf(person.id()).stream()
                .filter(errand -> errand.state() == Errand.State.PLANNED)
                .forEach(errand -> choices.carry(
                        Words.say("ask.drop_errand", errandLabel(errand)), new Act.DropErrand(errand.id())));
        return choices.titled(Words.say("ask.which_errand", person.name()));
    }

    Overlay crew() {
        List<Choice> choices = new ArrayList<>();
        for (Person person : day.shop().people()) {
            Reply reply = new Reply.Ask(crewMember(person));
            choices.add(new Choice(KEYS.charAt(choices.size()), crewLabel(person), Optional.empty(), reply));
        }
        return new Overlay.Choose(Words.say("ask.crew"), choices, 0);
    }

    private String crewLabel(Person person) {
        return day.isHere(person)
                ? label(person, Optional.empty())
                : Words.say("ask.person", person.name(), Words.say("ask.person_away"), "")
                        .strip();
    }

    /** What there is to say of somebody: until when they stay, where they are not here yet. */
    Overlay crewMember(Person person) {
        return day.isHere(person) ? hereNow(person) : until(person);
    }

    private Overlay hereNow(Person person) {
        return new Overlay.Choose(
                person.name(),
                List.of(
                        new Choice('1', Words.say("ask.stays_until"), Optional.empty(), new Reply.Ask(until(person))),
                        new Choice(
                                '2', Words.say("ask.other"), Optional.empty(), new Reply.Ask(otherWork(person.id()))),
                        new Choice(
                                '3', Words.say("ask.leaves"), Optional.empty(), carry(new Act.Stop(person.id(), true))),
                        new Choice('4', Words.say("ask.lends"), whyNotLend(), new Reply.Ask(whereToLend(person))),
                        new Choice(
                                '5', Words.say("ask.is_back"), Optional.empty(), carry(new Act.BringBack(person.id()))),
                        new Choice(
                                '6',
                                Words.say("ask.plans_errand"),
                                Optional.empty(),
                                new Reply.Ask(whichErrand(person)))),
                0);
    }

    private Optional<String> whyNotLend() {
        return machinesToLendOn(outlook).isEmpty() ? Optional.of(Words.say("off.nothing_here")) : Optional.empty();
    }

    private Overlay until(Person person) {
        return new Overlay.TypeIn(
                Words.say("ask.until", person.name()),
                Typing.of(person.knockOff().toString()),
                new Purpose.Until(person.id()));
    }

    Overlay whichHoist(String by) {
        List<Choice> choices = new ArrayList<>();
        for (Place hoist : day.shop().hoists()) {
            choices.add(new Choice(
                    KEYS.charAt(choices.size()), hoist.name(), Optional.empty(), new Reply.Ask(whoChecked(hoist, by))));
        }
        return new Overlay.Choose(Words.say("ask.which_hoist"), choices, 0);
    }

    private Overlay whoChecked(Place hoist, String by) {
        List<Choice> choices = new ArrayList<>();
        for (Person person : day.shop().people()) {
            Act check = new Act.CheckHoist(new Act.OpenDay.Checked(hoist.id(), person.id(), Optional.empty()));
            Optional<String> off =
                    day.isHere(person) ? Optional.empty() : Optional.of(Words.say("person_not_here", person.name()));
            choices.add(choice(choices, person.name(), off, check));
        }
        Overlay why = new Overlay.TypeIn(
                Words.say("ask.why_locked_out", hoist.name()), Typing.EMPTY, new Purpose.LockOut(hoist.id()));
        choices.add(new Choice('0', Words.say("ask.lock_out"), Optional.empty(), new Reply.Ask(why)));
        return new Overlay.Choose(Words.say("ask.who_checked", hoist.name()), choices, 0);
    }

    Overlay whoseNext() {
        return whoseNext(Words.say("ask.whose_next"), Set.of(), id -> new Screen.Next(id, Optional.empty()));
    }

    /** Whose instead of this person's; not that of who stands beside. */
    Overlay whoseInstead(Screen.Next now) {
        Set<String> beside = now.beside().map(other -> Set.of(other.personId())).orElse(Set.of());
        return whoseNext(Words.say("ask.whose_next"), beside, now::of);
    }

    Overlay whoJoins(Screen.Next now) {
        return whoseNext(Words.say("ask.who_joins"), Set.of(now.personId()), now::joinedBy);
    }

    private Overlay whoseNext(String title, Set<String> without, Function<String, Screen> screen) {
        List<Choice> choices = new ArrayList<>();
        for (Person person : day.shop().people()) {
            if (!without.contains(person.id())) {
                choices.add(new Choice(
                        KEYS.charAt(choices.size()),
                        label(person, Optional.empty()),
                        Optional.empty(),
                        new Reply.Show(screen.apply(person.id()))));
            }
        }
        return new Overlay.Choose(title, choices, 0);
    }

    private static Reply carry(Act act) {
        return new Reply.Carry(act);
    }

    private static Choice choice(List<Choice> before, String label, Optional<String> off, Act act) {
        return new Choice(KEYS.charAt(before.size()), label, off, carry(act));
    }
}
