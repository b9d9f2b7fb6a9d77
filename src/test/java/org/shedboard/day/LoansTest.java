package org.shedboard.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shedboard.register.Loan;

/** Quad 3 is one of the shop's own. */
class LoansTest {
    private final Shed shed = Shed.open();
    private final String visit = shed.quad();

    @Test
    void a_machine_of_ours_is_out_with_the_owner_until_it_is_back() {
        lend("quad-3");
        Loan loan = out().get(0);
        assertEquals("O-a", loan.ownerId());
        assertEquals("quad-3", loan.label());
        assertEquals(visit, loan.visitId());
        shed.at("09:00").does(new Act.GetBack(loan.id()));
        assertEquals(List.of(), out());
        assertEquals(
                Optional.of(Shed.time("09:00")),
                shed.day().books().register().loans().get(0).back());
    }

    @Test
    void something_that_is_not_on_the_books_is_lent_by_its_name() {
        shed.does(new Act.LendMachine(visit, Optional.empty(), "the old ute"));
        assertEquals("the old ute", out().get(0).label());
        assertEquals(Optional.empty(), out().get(0).machineId());
    }

    @Test
    void what_is_out_is_not_lent_again_and_what_is_back_is() {
        lend("quad-3");
        shed.assertRefused("lent_already", new Act.LendMachine(visit, Optional.of("quad-3"), ""));
        shed.does(new Act.GetBack(out().get(0).id()));
        lend("quad-3");
    }

    @Test
    void what_does_not_exist_is_not_lent_and_does_not_come_back() {
        shed.assertRefused("machine_unknown", new Act.LendMachine(visit, Optional.of("quad-9"), ""));
        shed.assertRefused("nothing_lent", new Act.LendMachine(visit, Optional.empty(), " "));
        shed.assertRefused("visit_unknown", new Act.LendMachine("V999", Optional.of("quad-3"), ""));
        shed.assertRefused("loan_unknown", new Act.GetBack("B999"));
    }

    @Test
    void nothing_is_lent_for_a_visit_that_is_over() {
        String booked = shed.does(Shed.booking("quad-2", "12:00", "oil")).orElseThrow();
        shed.does(new Act.CallOff(booked, true));
        shed.assertRefused("not_here_any_more", new Act.LendMachine(booked, Optional.of("quad-3"), ""));
    }

    @Test
    void ours_is_asked_for_once_the_owners_machine_is_done_and_after_it_is_collected() {
        lend("quad-3");
        assertTrue(concerns().isEmpty());
        shed.worksThrough("ada", visit).works("bo", visit, "sign-off");
        Concern asked = new Concern(Concern.Kind.LOAN_OUT, Optional.empty(), List.of("quad-3", "Tarn", "07:00"));
        assertEquals(List.of(asked), concerns());
        shed.does(new Act.Collect(visit, Optional.empty()));
        assertEquals(List.of(asked), concerns());
        shed.does(new Act.GetBack(out().get(0).id()));
        assertEquals(List.of(), concerns());
    }

    private void lend(String machine) {
        shed.does(new Act.LendMachine(visit, Optional.of(machine), ""));
    }

    private List<Loan> out() {
        return shed.day().books().register().loansOut();
    }

    private List<Concern> concerns() {
        return Concerns.of(shed.outlook()).stream()
                .filter(concern -> concern.kind() == Concern.Kind.LOAN_OUT)
                .toList();
    }
}
