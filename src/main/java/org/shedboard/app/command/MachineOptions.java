package org.shedboard.app.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.shedboard.day.Act;
import org.shedboard.day.Day;
import org.shedboard.register.Notice;
import org.shedboard.shop.Condition;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Owner;
import org.shedboard.shop.Payer;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** A machine that comes in, described on the command line: to take it in, or only to hear a time. */
final class MachineOptions {
    @Option(names = "--machine", paramLabel = "TEXT", descriptionKey = "option.in.machine")
    private Optional<String> machine;

    @Option(names = "--owner", paramLabel = "NAME", descriptionKey = "option.in.owner")
    private Optional<String> owner;

    @Option(names = "--phone", paramLabel = "NUMBER", descriptionKey = "option.in.phone")
    private Optional<String> phone;

    @Option(names = "--class", paramLabel = "CLASS", descriptionKey = "option.in.class")
    private Optional<String> machineClass;

    @Option(names = "--label", paramLabel = "TEXT", descriptionKey = "option.in.label")
    private Optional<String> label;

    @Option(names = "--year", paramLabel = "YEAR", descriptionKey = "option.in.year")
    private Optional<Integer> year;

    @Option(names = "--number", paramLabel = "TEXT", descriptionKey = "option.in.number")
    private Optional<String> number;

    @Option(names = "--work", paramLabel = "WORK[=PAYER]", descriptionKey = "option.in.work")
    private List<String> works = List.of();

    @Option(names = "--notice", paramLabel = "NOTICE", descriptionKey = "option.in.notice")
    private List<String> notices = List.of();

    @Option(names = "--mud", paramLabel = "GRADE", descriptionKey = "option.in.mud")
    private Optional<Mud> mud;

    @Option(names = "--depth", paramLabel = "DEPTH", descriptionKey = "option.in.depth")
    private Optional<Depth> depth;

    @Option(names = "--not-running", descriptionKey = "option.in.notRunning")
    private boolean notRunning;

    @Option(names = "--not-rolling", descriptionKey = "option.in.notRolling")
    private boolean notRolling;

    @Option(names = "--not-steering", descriptionKey = "option.in.notSteering")
    private boolean notSteering;

    @Option(names = "--not-stopping", descriptionKey = "option.in.notStopping")
    private boolean notStopping;

    @Option(names = "--tag", paramLabel = "NUMBER", descriptionKey = "option.newTag")
    private Optional<Integer> tag;

    @Option(names = "--meter", paramLabel = "HOURS", descriptionKey = "option.in.meter")
    private Optional<Integer> meter;

    @Option(names = "--meter-km", paramLabel = "KILOMETRES", descriptionKey = "option.in.meterKm")
    private Optional<Integer> kilometres;

    @Mixin
    private MeterOptions told;

    @Option(names = "--expected", paramLabel = "TIME", descriptionKey = "option.in.expected")
    private Optional<String> expected;

    @Option(names = "--note", paramLabel = "TEXT", descriptionKey = "option.in.note")
    private Optional<String> note;

    /** Whether a machine is described at all. */
    boolean isGiven() {
        return machine.isPresent() || machineClass.isPresent();
    }

    Act.TakeIn act(Seen seen, Optional<Act.TakeIn.Said> said) {
        Asked asked = new Asked(seen);
        Act.TakeIn.Which which = which(asked);
        String classId = which.machineId()
                .flatMap(seen.day().books()::findMachine)
                .map(Machine::classId)
                .orElse(which.classId());
        if (works.isEmpty() && notices.isEmpty()) {
            throw new WrongUse("form.which_work");
        }
        return new Act.TakeIn(
                whose(seen.day()),
                which,
                mud.orElseThrow(() -> new WrongUse("form.which_mud")),
                depth,
                new Condition(!notRunning, !notRolling, !notSteering, !notStopping),
                allWanted(seen, classId),
                whole(tag),
                whole(meter),
                expected.map(asked::time),
                note.orElse(""),
                said,
                new Act.TakeIn.Dials(whole(kilometres), told.told()));
    }

    private List<Act.Wanted> allWanted(Seen seen, String classId) {
        List<Act.Wanted> wanted = new ArrayList<>(wanted(new Asked(seen), classId, works));
        for (String id : notices) {
            Notice notice = seen.day().books().register().notices().stream()
                    .filter(each -> each.id().equalsIgnoreCase(id))
                    .findFirst()
                    .orElseThrow(() -> new CannotDo("notice_unknown", id));
            wanted.add(Act.Wanted.of(notice));
        }
        return wanted;
    }

    /** Whose machine it is, as it is said to the owner. */
    String ownerName(Seen seen) {
        return machine.map(text -> new Asked(seen).machine(text))
                .map(known -> seen.day().books().expectOwner(known.ownerId()).name())
                .or(() -> owner)
                .orElse("");
    }

    private Act.TakeIn.Which which(Asked asked) {
        if (machine.isPresent()) {
            return Act.TakeIn.Which.known(asked.machine(machine.get()).id(), whole(year), number.orElse(""));
        }
        String classId = machineClass
                .map(text -> asked.machineClass(text).id())
                .orElseThrow(() -> new WrongUse("command.which_machine"));
        return new Act.TakeIn.Which(Optional.empty(), classId, label.orElse(""), whole(year), number.orElse(""));
    }

    private Act.TakeIn.Whose whose(Day day) {
        String name = owner.orElse("");
        Optional<String> known = day.books().owners().stream()
                .filter(each -> each.name().equalsIgnoreCase(name))
                .map(Owner::id)
                .findFirst();
        return new Act.TakeIn.Whose(known, name, phone.orElse(""));
    }

    /** Work by key or id, each with {@code =owner}, {@code =maker} or {@code =own-account} where somebody else pays. */
    static List<Act.Wanted> wanted(Asked asked, String classId, List<String> works) {
        List<Act.Wanted> wanted = new ArrayList<>();
        for (String text : works) {
            int at = text.indexOf('=');
            String key = at < 0 ? text : text.substring(0, at);
            Payer payer = at < 0 ? Payer.OWNER : payer(text.substring(at + 1));
            wanted.add(new Act.Wanted(asked.work(classId, key).id(), payer));
        }
        return wanted;
    }

    private static Payer payer(String text) {
        return Named.find(Payer.class, text)
                .orElseThrow(() -> new WrongUse("command.not_one_of", text, Named.all(Payer.class)));
    }

    private static OptionalInt whole(Optional<Integer> number) {
        return number.map(OptionalInt::of).orElse(OptionalInt.empty());
    }
}
