package org.shedboard.day;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.shedboard.hours.Activity;
import org.shedboard.hours.HoursRules;
import org.shedboard.register.Notice;
import org.shedboard.register.Reading;
import org.shedboard.register.Rung;
import org.shedboard.shop.Amount;
import org.shedboard.shop.Condition;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Hold;
import org.shedboard.shop.Mark;
import org.shedboard.shop.Mud;
import org.shedboard.shop.OwnersWord;
import org.shedboard.shop.Payer;
import org.shedboard.shop.TaskPin;

/**
 * Something a person does to the day. Ids are those of the shop's values; a machine, a person or a place that the day does not
 * know is refused, as is whatever the shed would not allow.
 */
public sealed interface Act {
    /** Opens the day: who is here, and each hoist checked by name or locked out. */
    record OpenDay(String by, List<Here> here, List<Checked> checks) implements Act {
        /** A person who is here, from when and until when. */
        public record Here(String personId, Instant from, Instant until) {}

        /** A hoist somebody looked at, or why it is locked out. */
        public record Checked(String placeId, String by, Optional<String> lockedOut) {}
    }

    /**
     * Takes a machine in, or books it.
     *
     * @param expected when it is expected; empty when it stands here now
     * @param tag the number on its key; the lowest free one when empty
     * @param depth how deep to look; as the work asks when empty
     */
    record TakeIn(
            Whose whose,
            Which which,
            Mud mud,
            Optional<Depth> depth,
            Condition condition,
            List<Wanted> wanted,
            OptionalInt tag,
            OptionalInt meterHours,
            Optional<Instant> expected,
            String note,
            Optional<Said> said,
            Dials dials)
            implements Act {
        /** A machine whose hour meter alone is read, and goes with what it showed before. */
        public TakeIn(
                Whose whose,
                Which which,
                Mud mud,
                Optional<Depth> depth,
                Condition condition,
                List<Wanted> wanted,
                OptionalInt tag,
                OptionalInt meterHours,
                Optional<Instant> expected,
                String note,
                Optional<Said> said) {
            this(whose, which, mud, depth, condition, wanted, tag, meterHours, expected, note, said, Dials.AS_EXPECTED);
        }

        /** What else is known of its meters. */
        public record Dials(OptionalInt kilometres, Reading.Told told) {
            public static final Dials AS_EXPECTED = new Dials(OptionalInt.empty(), Reading.Told.AS_EXPECTED);
        }

        /** The same, with what was said of a reading when it was asked about. */
        public TakeIn told(Reading.Told told) {
            return new TakeIn(
                    whose,
                    which,
                    mud,
                    depth,
                    condition,
                    wanted,
                    tag,
                    meterHours,
                    expected,
                    note,
                    said,
                    new Dials(dials.kilometres(), told));
        }

        /** The owner: one we know by id, or a new one by name and telephone. */
        public record Whose(Optional<String> ownerId, String name, String phone) {}

        /**
         * The machine: one we know by id, or a new one of this class. A year and a number said of one that we know are what it has from now
         * on.
         */
        public record Which(
                Optional<String> machineId, String classId, String label, OptionalInt modelYear, String number) {
            public static Which known(String machineId) {
                return known(machineId, OptionalInt.empty(), "");
            }

            /** @param number as it has it already when blank */
            public static Which known(String machineId, OptionalInt modelYear, String number) {
                return new Which(Optional.of(machineId), "", "", modelYear, number);
            }
        }

        /** A time said to the owner at once. */
        public record Said(Instant at, String by, String to) {}
    }

    /**
     * A piece of work wanted and who pays.
     *
     * @param noticeId the maker's notice that asks for it
     */
    record Wanted(String workId, Payer payer, Optional<String> noticeId) {
        public Wanted(String workId, Payer payer) {
            this(workId, payer, Optional.empty());
        }

        /** What a maker asks for, at the maker's cost. */
        public static Wanted of(Notice notice) {
            return new Wanted(notice.workId(), Payer.MAKER, Optional.of(notice.id()));
        }
    }

    /** What a meter shows between two visits, as the owner says it. */
    record ReadMeter(String machineId, Reading.Unit unit, double value, Reading.Told told, String by)
            implements Act, OnMachine {}

    /**
     * An owner was rung about a service that is due.
     *
     * @param again when to ring again, where they said so
     */
    record NoteRung(String machineId, Rung.Said said, Optional<LocalDate> again, String note, String by)
            implements Act, OnMachine {}

    /** A booked machine has come. */
    record Arrive(String visitId, Optional<Mud> mud, OptionalInt tag) implements Act, OnVisit {}

    /** A time is promised, or changed with a reason. */
    record SayPromise(String visitId, Instant at, String by, String to, String why, boolean ownersWish)
            implements Act, OnVisit {}

    /** A person starts, or goes on with, a task; the place is needed where the plan does not say it. */
    record Start(String personId, String visitId, String taskId, Optional<String> placeId)
            implements Act, OnVisit, ByPerson {}

    /** Whoever is on the task stops for now; the task waits half done. */
    record Pause(String visitId, String taskId) implements Act, OnVisit {}

    /**
     * The hands-on work of a task is over.
     *
     * @param rest the mark for the inspection points of this task that have no finding yet; without it they must all have one
     * @param why why those points were not reached, where that is their mark
     */
    record Finish(String personId, String visitId, String taskId, Optional<Mark> rest, String why)
            implements Act, OnVisit, ByPerson {
        public Finish(String personId, String visitId, String taskId, Optional<Mark> rest) {
            this(personId, visitId, taskId, rest, "");
        }
    }

    /**
     * A finding at one inspection point.
     *
     * @param note what there is to say of it; of a point not reached, why
     */
    record Tick(String personId, String visitId, String pointId, Mark mark, OptionalDouble measured, String note)
            implements Act, OnVisit, ByPerson {}

    /** A visit cannot go on. */
    record HoldVisit(String visitId, Hold.Reason reason, String note, Optional<Instant> until)
            implements Act, OnVisit {}

    /** A held visit can go on. */
    record Release(String visitId) implements Act, OnVisit {}

    /** The rest of a begun task goes to another person, who starts on it at once. */
    record HandOver(String visitId, String taskId, String toPersonId) implements Act, OnVisit {}

    /** Work found on the way is added. */
    record AddWork(String visitId, List<Wanted> wanted) implements Act, OnVisit {}

    /**
     * The owner was asked about a fix that was found; with a yes the work for it is added.
     *
     * @param by id of the person who asked
     * @param of who was asked
     */
    record OwnerSaid(String visitId, String pointId, OwnersWord.Answer answer, String by, String of)
            implements Act, OnVisit {}

    /** A person goes on to work that belongs to no machine. */
    record DoOther(String personId, Activity.OtherWork.Kind kind) implements Act, ByPerson {}

    /** A person goes on a break; a task they leave waits half done. */
    record TakeBreak(String personId, Activity.Break.Kind kind) implements Act, ByPerson {}

    /** A person lends a hand at the machine of this visit; who was on another one goes back to it afterwards. */
    record Lend(String personId, String visitId) implements Act, OnVisit, ByPerson {}

    /** Who lent a hand goes back to what they were called away from. */
    record BringBack(String personId) implements Act, ByPerson {}

    /**
     * A person stops what they are on; gone when {@code leaves} is set.
     *
     * @param at when that was, for who forgot to say so; now when empty
     */
    record Stop(String personId, boolean leaves, Optional<Instant> at) implements Act, ByPerson {
        public Stop(String personId, boolean leaves) {
            this(personId, leaves, Optional.empty());
        }
    }

    /**
     * Hours are put right after the fact, by a new row that names the old one.
     *
     * @param by id of the person who answers for it
     * @param replaces id of the entry, or of the presence, that is wrong; empty where one is missing
     * @param right what is right; empty where the old one is only struck out
     */
    record Correct(String by, Optional<String> replaces, Optional<Written> right, String why) implements Act {
        /** What a person did, from when to when. */
        public record Written(String personId, Activity activity, Instant from, Instant to) {}
    }

    /** Other work is planned for a person at a time. */
    record PlanErrand(String personId, Activity.OtherWork.Kind kind, Instant from, int minutes, String note)
            implements Act, ByPerson {}

    /** The person it is planned for goes on it. */
    record RunErrand(String errandId) implements Act {}

    /** It is not wanted any more. */
    record DropErrand(String errandId) implements Act {}

    /** What the payer of a line is to be charged for it, in minutes, is agreed. */
    record AgreeHours(String visitId, String lineId, int minutes) implements Act, OnVisit {}

    /** The shop's rules for its hours are changed. */
    record SetHoursRules(String by, HoursRules rules) implements Act {}

    /** A person comes, or stays until another time than was said at opening. */
    record BeHere(String personId, Instant until) implements Act, ByPerson {}

    /** A hoist is checked, or locked out, in the course of the day. */
    record CheckHoist(OpenDay.Checked checked) implements Act {}

    /**
     * The machine went home.
     *
     * @param handed how it was handed over; a machine that is not to be ridden does not go without
     */
    record Collect(String visitId, Optional<Handed> handed) implements Act, OnVisit {
        /**
         * Who handed a machine over.
         *
         * @param by id of the person
         * @param to who took it
         * @param told what they were told
         */
        public record Handed(String by, String to, String told) {}
    }

    /** A booking will not come: cancelled by the owner, or a no-show. */
    record CallOff(String visitId, boolean noShow) implements Act, OnVisit {}

    /** A property's machines are washed down first from now on, or are no longer; what has begun stays as it is. */
    record SetWashDown(String ownerId, boolean first) implements Act, OnOwner {}

    /** What makers ask for, in place of what was known of it before. */
    record SetNotices(List<Notice> notices) implements Act {
        public SetNotices {
            notices = List.copyOf(notices);
        }
    }

    /**
     * A machine of ours goes with the owner of a visit's machine.
     *
     * @param machineId the machine, where it is on the books
     * @param label what it is called; as on the books when blank
     */
    record LendMachine(String visitId, Optional<String> machineId, String label) implements Act, OnVisit {}

    /** It came back. */
    record GetBack(String loanId) implements Act {}

    /** Everybody works to this plan from now on. */
    record Post(Posted plan) implements Act {}

    /**
     * It is said which of the items that a part can be is the one on this machine.
     *
     * @param part the part's name on the line
     */
    record FitPart(String visitId, String lineId, String part, String itemId, String personId)
            implements Act, OnVisit, ByPerson, OnItem {}

    /**
     * So much of an item is on the shelf, as somebody counted.
     *
     * @param bin where it lies; where it lay before when empty
     */
    record CountStock(String itemId, Amount amount, Optional<String> bin, String by) implements Act, OnItem {}

    /**
     * An item is ordered.
     *
     * @param due when it is expected; after the days it usually takes when empty
     */
    record OrderStock(String itemId, Amount amount, Optional<Instant> due, String by) implements Act, OnItem {}

    /** What was ordered is here. */
    record OrderCame(String orderId, String by) implements Act {}
    /** What the register says of a machine is put right; all four are as they are to be from now on. */
    record CorrectMachine(String machineId, String label, OptionalInt modelYear, String number, int massKg)
            implements Act, OnMachine {}

    /** An owner's name and telephone are put right. */
    record CorrectOwner(String ownerId, String name, String phone) implements Act, OnOwner {}

    /** Two records are of one machine: all that names the other one names the one that is kept. */
    record MergeMachines(String keepId, String otherId) implements Act {}

    /** An owner asked to be forgotten: name and telephone are erased wherever they stand; hours and history are kept. */
    record ForgetOwner(String ownerId) implements Act, OnOwner {}

    /**
     * One figure of the catalogue is put right.
     *
     * @param was its minutes when that was decided
     * @param by id of the person who decided it
     */
    record AcceptFigure(String figureId, int was, int minutes, String by) implements Act {}

    /** Plans give a task the minutes that so many in a hundred such tasks stay within. */
    record SetPackedPercent(String by, int percent) implements Act {}

    /**
     * Takes an act back, or does again what was taken back: everything it changed is as it was before it. Hours are put right by new
     * rows.
     *
     * @param by id of the person who answers for it
     * @param why what stands beside the hours that are put right by it
     */
    record TakeBack(Trace trace, String by, String why) implements Act {}

    /**
     * The foreman insists on where, when or by whom a task is done, in place of whatever was insisted on for it before.
     *
     * @param pin what is empty is for the plan to say
     */
    record PinTask(String visitId, String taskId, TaskPin pin) implements Act, OnVisit {}

    /** Nothing is insisted on for a task any more. */
    record LiftPin(String visitId, String taskId) implements Act, OnVisit {}

    /** The day is over: from here on it changes only by correction. */
    record CloseDay(String by) implements Act {}

    /** An act about a visit. */
    interface OnVisit {
        String visitId();
    }

    /** An act of a person, or about what a person is on. */
    interface ByPerson {
        String personId();
    }

    /** An act about a machine, whether it is here or not. */
    interface OnMachine {
        String machineId();
    }

    /** An act about an owner. */
    interface OnOwner {
        String ownerId();
    }

    /** An act about an item of the shelf. */
    interface OnItem {
        String itemId();
    }
}
