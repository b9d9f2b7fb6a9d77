package org.shedboard.day;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.shedboard.register.Notice;
import org.shedboard.register.NoticeTaken.State;
import org.shedboard.shop.Line;
import org.shedboard.shop.Mud;
import org.shedboard.shop.NumberRange;
import org.shedboard.shop.Payer;
import org.shedboard.shop.Visit;

/** The maker of quads wants the brakes of some of them changed. */
class NoticesTest {
    private static final Notice BRAKES = new Notice(
            "N-1",
            "Pads crack",
            List.of("quad"),
            "quad-1",
            OptionalInt.empty(),
            OptionalInt.empty(),
            NumberRange.ANY,
            "brakes");
    private static final Notice BY_NUMBER = new Notice(
            "N-2",
            "Pads crack too",
            List.of(),
            "",
            OptionalInt.empty(),
            OptionalInt.empty(),
            new NumberRange("Q", OptionalLong.empty(), OptionalLong.empty()),
            "brakes");

    private final Shed shed = Shed.open();

    @BeforeEach
    void theMakerWrites() {
        shed.does(new Act.SetNotices(List.of(BRAKES, BY_NUMBER)));
    }

    @Test
    void it_is_offered_at_the_door_of_a_machine_that_it_concerns_or_may_concern() {
        assertEquals(
                List.of(
                        DoorNote.of(DoorNote.Kind.NOTICE, "N-1", "Pads crack"),
                        DoorNote.of(DoorNote.Kind.NOTICE_MAYBE, "N-2", "Pads crack too")),
                notes(Shed.takeIn("quad-1", Mud.CLEAN, "oil")));
        assertEquals(
                List.of(DoorNote.of(DoorNote.Kind.NOTICE_MAYBE, "N-2", "Pads crack too")),
                notes(Shed.takeIn("quad-2", Mud.CLEAN, "oil")));
    }

    @Test
    void it_is_not_offered_where_there_is_no_such_work_for_the_machine() {
        assertEquals(List.of(), notes(Shed.takeIn("tractor-1", Mud.CLEAN, "oil")));
    }

    @Test
    void what_is_taken_up_is_a_line_that_the_maker_pays_and_is_not_offered_again() {
        Act.TakeIn wanted = with(Shed.takeIn("quad-1", Mud.CLEAN, "oil"), BRAKES);
        assertEquals(
                List.of(DoorNote.Kind.NOTICE_MAYBE),
                notes(wanted).stream().map(DoorNote::kind).toList());
        Visit visit = shed.visit(shed.does(wanted).orElseThrow());
        Line line = visit.lines().get(1);
        assertEquals(Payer.MAKER, line.payer());
        assertEquals("brakes", line.workId());
        assertEquals(List.of(State.TAKEN), states(visit.id()));
        assertEquals(
                line.id(),
                shed.day().books().register().takenOn(visit.id()).get(0).lineId());
        assertEquals(List.of(BY_NUMBER), Notices.openOn(shed.day(), visit));
        shed.assertRefused("notice_taken", new Act.AddWork(visit.id(), List.of(Act.Wanted.of(BRAKES))));
    }

    @Test
    void it_is_done_when_the_visit_is_done_with_it() {
        String visit =
                shed.does(with(Shed.takeIn("quad-1", Mud.CLEAN, "oil"), BRAKES)).orElseThrow();
        shed.worksThrough("ada", visit);
        assertEquals(List.of(State.TAKEN), states(visit));
        shed.works("bo", visit, "sign-off");
        assertEquals(List.of(State.DONE), states(visit));
        shed.does(new Act.Collect(visit, Optional.empty()));
        assertEquals(
                List.of(DoorNote.Kind.NOTICE_MAYBE),
                notes(Shed.takeIn("quad-1", Mud.CLEAN, "oil")).stream()
                        .map(DoorNote::kind)
                        .toList());
    }

    @Test
    void a_booking_that_is_called_off_opens_it_again() {
        String visit =
                shed.does(with(Shed.booking("quad-1", "12:00", "oil"), BRAKES)).orElseThrow();
        shed.does(new Act.CallOff(visit, false));
        assertEquals(List.of(State.DROPPED), states(visit));
        assertEquals(
                DoorNote.of(DoorNote.Kind.NOTICE, "N-1", "Pads crack"),
                notes(Shed.takeIn("quad-1", Mud.CLEAN, "oil")).get(0));
        shed.does(with(Shed.takeIn("quad-1", Mud.CLEAN, "oil"), BRAKES));
    }

    @Test
    void it_can_be_added_to_a_machine_that_is_here() {
        String visit = shed.quad();
        shed.does(new Act.AddWork(visit, List.of(Act.Wanted.of(BRAKES))));
        assertEquals(List.of(State.TAKEN), states(visit));
    }

    @Test
    void a_notice_that_nobody_wrote_cannot_be_taken_up() {
        shed.assertRefused(
                "notice_unknown",
                new Act.AddWork(shed.quad(), List.of(new Act.Wanted("brakes", Payer.MAKER, Optional.of("N-9")))));
    }

    @Test
    void a_machine_has_what_is_open_before_what_is_wanted_and_what_is_done() {
        assertEquals(List.of("N-1 OPEN", "N-2 TO_CHECK"), standing("quad-1"));
        assertEquals(List.of("N-2 TO_CHECK"), standing("quad-2"));
        assertEquals(List.of(), standing("tractor-1"));
        String visit =
                shed.does(with(Shed.takeIn("quad-1", Mud.CLEAN, "oil"), BRAKES)).orElseThrow();
        assertEquals(List.of("N-2 TO_CHECK", "N-1 WANTED"), standing("quad-1"));
        shed.worksThrough("ada", visit);
        shed.works("bo", visit, "sign-off");
        assertEquals(List.of("N-2 TO_CHECK", "N-1 DONE"), standing("quad-1"));
    }

    @Test
    void a_booking_that_is_called_off_leaves_a_notice_open_once() {
        String visit =
                shed.does(with(Shed.booking("quad-1", "12:00", "oil"), BRAKES)).orElseThrow();
        shed.does(new Act.CallOff(visit, false));
        assertEquals(List.of("N-1 OPEN", "N-2 TO_CHECK"), standing("quad-1"));
    }

    private List<String> standing(String machine) {
        return Notices.on(shed.day(), shed.day().books().expectMachine(machine)).stream()
                .map(each -> each.notice().id() + " " + each.state())
                .toList();
    }

    private List<State> states(String visit) {
        return shed.day().books().register().takenOn(visit).stream()
                .map(taken -> taken.state())
                .toList();
    }

    private List<DoorNote> notes(Act.TakeIn wanted) {
        return DoorNotes.of(shed.day(), wanted, shed.now()).stream()
                .filter(note -> note.kind() == DoorNote.Kind.NOTICE || note.kind() == DoorNote.Kind.NOTICE_MAYBE)
                .toList();
    }

    private static Act.TakeIn with(Act.TakeIn plain, Notice notice) {
        return new Act.TakeIn(
                plain.whose(),
                plain.which(),
                plain.mud(),
                plain.depth(),
                plain.condition(),
                List.of(plain.wanted().get(0), Act.Wanted.of(notice)),
                plain.tag(),
                plain.meterHours(),
                plain.expected(),
                plain.note(),
                plain.said());
    }
}
