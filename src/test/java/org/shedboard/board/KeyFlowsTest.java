package org.shedboard.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.shedboard.day.Act;
import org.shedboard.day.NextTask;
import org.shedboard.day.Posted;
import org.shedboard.day.Quote;
import org.shedboard.day.Refusal;
import org.shedboard.day.WhyPlanned;
import org.shedboard.estimate.Work;
import org.shedboard.forecast.Explanation;
import org.shedboard.hours.Activity;
import org.shedboard.hours.Errand;
import org.shedboard.pack.Search;
import org.shedboard.pack.search.Packer;
import org.shedboard.pack.story.Differences;
import org.shedboard.shop.Hold;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Mark;
import org.shedboard.shop.Mud;
import org.shedboard.shop.OwnersWord;
import org.shedboard.shop.Payer;
import org.shedboard.shop.Person;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;
import org.shedboard.shop.VisitState;
import org.shedboard.tally.ClosingItem;
import org.shedboard.words.Words;

/** What the foreman and the people in the shed do with the keys, on the demonstration day at 09:40. */
class KeyFlowsTest {
    private final FakeShell shell = FakeShell.demonstration();

    @Test
    void the_weeks_ahead_are_looked_at_day_by_day_and_left() {
        FakeShell shell =
                FakeShell.demonstration().types("v").press(Key.DOWN, Key.DOWN).types("s");
        assertEquals(ahead(shell).showing(Screen.Ahead.Page.SKILLS).to(2), ahead(shell));
        shell.press(Key.UP, Key.UP, Key.UP).types("p");
        assertEquals(ahead(shell).showing(Screen.Ahead.Page.PLACES).to(0), ahead(shell));
        shell.press(Key.ESCAPE);
        assertTrue(shell.board().screen() instanceof Screen.Places);
    }

    @Test
    void why_a_task_is_planned_so_is_asked_on_the_board_goes_from_task_to_task_and_is_told_anew() {
        FakeShell shell = FakeShell.demonstration().types("12y");
        Screen.Why first = (Screen.Why) shell.board().screen();
        String task = first.why().orElseThrow().task().id();
        assertEquals(
                shell.board()
                        .expectOutlook()
                        .nextTaskOf(shell.day().findByTag(12).orElseThrow())
                        .orElseThrow()
                        .id(),
                task);
        shell.press(Key.DOWN);
        assertEquals(first.task() + 1, ((Screen.Why) shell.board().screen()).task());
        shell.press(Key.UP).minutesPass(5);
        Screen.Why later = (Screen.Why) shell.board().screen();
        assertEquals(first.task(), later.task());
        assertEquals(
                WhyPlanned.of(
                        shell.board().expectOutlook(),
                        later.why().orElseThrow().visit(),
                        later.why().orElseThrow().task()),
                later.why());
        shell.press(Key.ESCAPE);
        assertTrue(shell.board().screen() instanceof Screen.Places);
    }

    @Test
    void on_a_sheet_why_is_about_the_task_the_cursor_is_on() {
        FakeShell shell = FakeShell.demonstration().types("12").press(Key.ENTER, Key.DOWN, Key.DOWN);
        int task = ((Screen.Sheet) shell.board().screen()).task();
        shell.types("y");
        assertEquals(task, ((Screen.Why) shell.board().screen()).task());
    }

    @Test
    void why_a_visit_takes_so_long_is_told_anew_when_something_happens_and_left_for_why_it_is_then() {
        FakeShell shell = FakeShell.demonstration().types("12").press(Key.ENTER).types("yy");
        Screen.Minutes before = (Screen.Minutes) shell.board().screen();
        Visit visit = before.why().visit();
        List<Work> works = shell.day()
                .books()
                .catalogue()
                .worksFor(shell.day().machineOf(visit).classId());
        Act.Wanted more = new Act.Wanted(works.get(works.size() - 1).id(), Payer.OWNER);
        shell.does(new Act.AddWork(visit.id(), List.of(more)));
        Screen.Minutes after = (Screen.Minutes) shell.board().screen();
        assertEquals(0, before.why().explained().minutesFrom(Explanation.Source.ADDED));
        assertTrue(after.why().explained().minutesFrom(Explanation.Source.ADDED) > 0);
        shell.press(Key.DOWN, Key.DOWN, Key.UP);
        assertEquals(1, ((Screen.Minutes) shell.board().screen()).scroll());
        shell.press(Key.ESCAPE);
        assertTrue(shell.board().screen() instanceof Screen.Why);
    }

    private static Screen.Ahead ahead(FakeShell shell) {
        return (Screen.Ahead) shell.board().screen();
    }

    @Test
    void a_machine_of_ours_goes_with_the_owner_and_comes_back_by_the_same_key() {
        FakeShell shell = FakeShell.demonstration().types("12").press(Key.ENTER).types("lthe yellow quad");
        shell.press(Key.ENTER).assertDone();
        assertEquals(
                "the yellow quad",
                shell.day().books().register().loansOut().get(0).label());
        shell.types("l").assertDone();
        assertTrue(shell.day().books().register().loansOut().isEmpty());
    }

    @Test
    void a_makers_notice_is_taken_up_by_its_digit_and_the_maker_pays() {
        FakeShell shell = FakeShell.demonstration()
                .types("tcorrowby burr")
                .press(Key.ENTER)
                .types("1");
        shell.press(Key.ENTER).types("0").press(Key.ENTER).assertDone();
        Act.TakeIn act = (Act.TakeIn) shell.lastAct();
        assertEquals(List.of(new Act.Wanted("brakes-front", Payer.MAKER, Optional.of("KB-22-4"))), act.wanted());
    }

    @Test
    void a_known_machine_is_taken_in_with_a_promise_in_the_fewest_keys() {
        int before = shell.day().visits().size();
        shell.types("t")
                .types("nettlecroft pivot")
                .press(Key.ENTER)
                .types("o")
                .press(Key.ENTER)
                .types("1")
                .press(Key.ENTER);
        shell.assertDone();
        assertEquals(before + 1, shell.day().visits().size());
        Visit visit = shell.visitOf("M36");
        assertEquals(VisitState.IN_YARD, visit.state());
        assertEquals(Mud.DUSTY, visit.intake().mud());
        assertEquals("oil-mower", visit.lines().get(0).workId());
        assertTrue(visit.promise().orElseThrow().at().isAfter(shell.now()));
        assertEquals("Nettlecroft, Rushy Bottom", visit.promise().orElseThrow().to());
        assertEquals(new Screen.Places(Optional.of(visit.id())), shell.board().screen());
        assertEquals(Optional.empty(), shell.board().draft());
    }

    @Test
    void the_promise_that_is_filled_in_has_four_chances_in_five() {
        shell.types("t")
                .types("nettlecroft pivot")
                .press(Key.ENTER)
                .types("o")
                .press(Key.ENTER)
                .types("1");
        Screen.TakeIn form = (Screen.TakeIn) shell.board().screen();
        TakeInReading reading = TakeInReading.of(shell.board(), form.form());
        assertTrue(reading.offer().orElseThrow().chance() >= 80);
        assertEquals(Optional.of(reading.offer().orElseThrow().promise()), reading.time(TakeInForm.Field.PROMISE));
    }

    @Test
    void enter_waits_for_the_day_packed_anew_where_the_posted_one_has_no_time_to_offer() {
        shell.types("tmarrowby burr")
                .press(Key.ENTER)
                .types("m")
                .press(Key.ENTER)
                .types("2");
        TakeInForm form = ((Screen.TakeIn) shell.board().screen()).form();
        Quote whole = ((Quote.Answer.Given) form.answer().orElseThrow()).quote();
        Quote open = new Quote(whole.estimate(), whole.why(), Optional.empty(), Optional.empty(), true, List.of());
        shell.tell(new Msg.Quoted(new Quote.Answer.Given(open), form.round()));
        shell.press(Key.ENTER);
        shell.assertRefused("working it out …");
        shell.tell(new Msg.Quoted(new Quote.Answer.Given(whole), form.round()));
        shell.press(Key.ENTER);
        assertTrue(shell.lastAct() instanceof Act.TakeIn);
    }

    @Test
    void a_promise_typed_by_hand_is_not_overwritten_by_a_later_quote() {
        shell.types("t")
                .types("nettlecroft pivot")
                .press(Key.ENTER)
                .types("o")
                .press(Key.ENTER)
                .types("1");
        for (int i = 0; i < 20; i++) {
            shell.press(Key.BACKSPACE);
        }
        shell.types("1555").press(Key.BACK_TAB).types("3").press(Key.ENTER);
        shell.assertDone();
        assertEquals(
                LocalTime.of(15, 55),
                shell.day().timeOf(shell.visitOf("M36").promise().orElseThrow().at()));
        assertEquals(Mud.CAKED, shell.visitOf("M36").intake().mud());
    }

    @Test
    void a_new_machine_of_a_new_owner_is_taken_in() {
        shell.types("t").types("Zebedee").press(Key.ENTER);
        // owner is filled in from what was looked for; then telephone, class, label, number, year
        shell.press(Key.ENTER)
                .types("0000 000 999")
                .press(Key.ENTER)
                .types("2")
                .press(Key.ENTER)
                .types("Burr 520")
                .press(Key.ENTER);
        shell.types("ZZ-520-77")
                .press(Key.ENTER)
                .types("2021")
                .press(Key.ENTER)
                .types("m")
                .press(Key.ENTER)
                .types("2")
                .press(Key.ENTER);
        shell.assertDone();
        Visit visit = shell.day()
                .expectVisit(shell.day()
                        .visits()
                        .get(shell.day().visits().size() - 1)
                        .id());
        assertEquals("Zebedee", shell.day().ownerOf(visit).name());
        assertEquals("quad", shell.day().machineOf(visit).classId());
        assertEquals(OptionalInt.of(2021), shell.day().machineOf(visit).modelYear());
        assertEquals(
                List.of(shell.day().machineOf(visit)),
                Found.machines(Found.finder(shell.day()), shell.day(), "zz-520"),
                "found by its number next time");
        assertEquals("minor-quad", visit.lines().get(0).workId());
    }

    @Test
    void a_new_machine_whose_number_allows_two_years_is_asked_for_its_year_and_nobody_guesses() {
        newMachine("1M8GDM9A1AP042788");
        Overlay.Choose ask = (Overlay.Choose) shell.board().overlay().orElseThrow();
        assertEquals(
                List.of("1980", "2010", Words.say("ask.another_year"), Words.say("machine.not_known")),
                ask.choices().stream().map(Overlay.Choice::label).toList());
        assertEquals(3, ask.selected(), "Enter takes none of the two");
        shell.types("2").types("m").press(Key.ENTER).types("2").press(Key.ENTER);
        shell.assertDone();
        assertEquals(OptionalInt.of(2010), lastMachine().modelYear());
        assertEquals("1M8GDM9A1AP042788", lastMachine().number());
    }

    @Test
    void a_machine_whose_year_nobody_knows_is_taken_in_without_one() {
        newMachine("1M8GDM9A1AP042788");
        shell.press(Key.ENTER).types("m").press(Key.ENTER).types("2").press(Key.ENTER);
        shell.assertDone();
        assertEquals(OptionalInt.empty(), lastMachine().modelYear());
    }

    @Test
    void another_year_than_the_number_allows_can_be_typed() {
        newMachine("1M8GDM9A1AP042788");
        shell.types("3")
                .types("2012")
                .press(Key.ENTER)
                .types("m")
                .press(Key.ENTER)
                .types("2")
                .press(Key.ENTER);
        shell.assertDone();
        assertEquals(OptionalInt.of(2012), lastMachine().modelYear());
    }

    @Test
    void a_number_that_fails_is_kept_and_nothing_is_refused() {
        newMachine("1M8GDM9A5KP042788");
        shell.types("2").types("m").press(Key.ENTER).types("2").press(Key.ENTER);
        shell.assertDone();
        assertEquals("1M8GDM9A5KP042788", lastMachine().number());
        assertEquals(OptionalInt.of(2019), lastMachine().modelYear());
    }

    @Test
    void a_known_machine_without_a_year_is_asked_for_it_and_keeps_it() {
        shell.does(new Act.CorrectMachine("M10", "Burr 520", OptionalInt.empty(), "1M8GDM9A1AP042788", 300));
        shell.types("tquillgate burr 1m8gdm").press(Key.ENTER);
        assertTrue(shell.board().overlay().isPresent());
        shell.types("2").types("m").press(Key.ENTER).types("2").press(Key.ENTER);
        shell.assertDone();
        assertEquals(
                OptionalInt.of(2010), shell.day().books().expectMachine("M10").modelYear());
    }

    @Test
    void a_known_machine_without_a_number_can_be_given_one_at_the_door() {
        shell.does(new Act.CorrectMachine("M10", "Burr Zero", OptionalInt.empty(), "", 300));
        shell.types("tburr zero").press(Key.ENTER);
        assertEquals(Optional.empty(), shell.board().overlay());
        shell.press(Key.UP, Key.UP).types("1M8GDM9A1AP042788").press(Key.ENTER).types("1");
        shell.types("m").press(Key.ENTER).types("2").press(Key.ENTER);
        shell.assertDone();
        assertEquals(
                "1M8GDM9A1AP042788", shell.day().books().expectMachine("M10").number());
        assertEquals(
                OptionalInt.of(1980), shell.day().books().expectMachine("M10").modelYear());
    }

    /** A quad of somebody new, as far as its number. */
    private void newMachine(String number) {
        shell.types("tZebedee").press(Key.ENTER, Key.ENTER, Key.ENTER);
        shell.types("2")
                .press(Key.ENTER)
                .types("Burr 520")
                .press(Key.ENTER)
                .types(number)
                .press(Key.ENTER);
    }

    private Machine lastMachine() {
        List<Visit> visits = shell.day().visits();
        return shell.day().machineOf(visits.get(visits.size() - 1));
    }

    @Test
    void escape_keeps_the_draft_and_t_brings_it_back() {
        shell.types("t").types("nettlecroft pivot").press(Key.ENTER).types("o").press(Key.ESCAPE);
        assertTrue(shell.board().screen() instanceof Screen.Places);
        shell.types("t1");
        Screen.TakeIn form = (Screen.TakeIn) shell.board().screen();
        assertEquals(Optional.of("M36"), form.form().machineId());
        assertEquals(List.of("oil-mower"), form.form().workIds());
        shell.press(Key.ESCAPE);
        assertTrue(shell.board().draft().isPresent());
        shell.types("t2");
        assertEquals(TakeInForm.EMPTY, ((Screen.TakeIn) shell.board().screen()).form());
    }

    @Test
    void closing_the_day_asks_first_and_says_what_it_leaves() {
        for (Person person : shell.day().shop().people()) {
            shell.does(new Act.Stop(person.id(), true));
        }
        shell.types("lc");
        assertEquals(
                4,
                ClosingKeys.items(shell.board()).stream()
                        .filter(item -> item.kind() == ClosingItem.Kind.GOES_OVER)
                        .count());
        shell.types("c");
        assertFalse(shell.day().isClosed());
        shell.types("1");
        assertFalse(shell.day().isClosed());
        assertTrue(((Overlay.TypeIn) shell.board().overlay().orElseThrow()).isSecret());
        shell.types("2468").press(Key.ENTER);
        assertEquals(Optional.of(new Effect.Signed("P1", "2468")), shell.lastSignature());
        assertTrue(shell.day().isClosed());
    }

    @Test
    void a_time_nobody_has_seen_is_not_promised_by_an_enter_too_many() {
        Board form = Update.of(shell.board(), pressed('t', 1)).board();
        for (char letter : "nettlecroft pivot\n".toCharArray()) {
            form = Update.of(form, pressed(letter, 1)).board();
        }
        for (char letter : "o\n2".toCharArray()) {
            form = Update.of(form, pressed(letter, 1)).board();
        }
        Turn hasty = Update.of(form, pressed('\n', 1));
        assertEquals(List.of(), hasty.effects());
        assertTrue(hasty.board().note().orElseThrow().isRefusal());
    }

    private static Msg.Pressed pressed(char letter, int second) {
        return new Msg.Pressed(letter == '\n' ? Key.ENTER : Key.of(letter), Instant.EPOCH.plusSeconds(second));
    }

    @Test
    void a_form_that_was_not_touched_leaves_no_draft() {
        shell.types("t").press(Key.ESCAPE);
        assertEquals(Optional.empty(), shell.board().draft());
    }

    @Test
    void what_is_missing_on_the_form_is_said_and_the_form_stays() {
        shell.types("t").press(Key.control('s'));
        shell.assertRefused(Words.say("form.which_machine"));
        shell.types("nettlecroft pivot").press(Key.ENTER).press(Key.ENTER);
        shell.assertRefused(Words.say("form.which_work"));
        shell.types("o").press(Key.ENTER, Key.ENTER);
        shell.assertRefused(Words.say("form.which_mud"));
        assertTrue(shell.board().screen() instanceof Screen.TakeIn);
    }

    @Test
    void a_machine_that_is_here_cannot_be_taken_in_again() {
        shell.types("t").types("marrowby heeler").press(Key.ENTER);
        shell.assertRefused(Words.say("form.already_here"));
    }

    @Test
    void the_day_is_opened_by_name_with_each_hoist_checked() {
        FakeShell early = FakeShell.unopened();
        early.types("o");
        early.press(Key.DOWN, Key.DOWN, Key.DOWN).types(" ");
        early.press(Key.DOWN).types(" ").types("1");
        early.press(Key.DOWN).types(" ").types("0").types("the arm creaks").press(Key.ENTER);
        early.press(Key.ENTER).types("1");
        early.assertDone();
        assertTrue(early.day().isOpened());
        assertTrue(early.day().opening().orElseThrow().isChecked("H1"));
        assertFalse(early.day().opening().orElseThrow().isChecked("H2"));
        assertEquals(3, early.day().opening().orElseThrow().attendances().size());
        assertTrue(early.day().posted().isPresent());
        assertEquals(Screen.Places.START, early.board().screen());
    }

    @Test
    void opening_with_nobody_here_is_refused_and_unchecked_hoists_are_named_in_the_question() {
        FakeShell early = FakeShell.unopened();
        early.types("o").press(Key.ENTER);
        assertEquals(Words.say("ask.who_opens_unchecked", 2), title(early));
        early.press(Key.ESCAPE);
        for (int i = 0; i < 4; i++) {
            early.types(" ").press(Key.DOWN);
        }
        early.press(Key.ENTER);
        early.assertRefused(Words.say("nobody_here"));
    }

    @Test
    void until_when_somebody_stays_is_typed() {
        FakeShell early = FakeShell.unopened();
        early.types("o").types("u");
        for (int i = 0; i < 5; i++) {
            early.press(Key.BACKSPACE);
        }
        early.types("12").press(Key.ENTER).press(Key.ENTER).types("1");
        assertEquals(
                LocalTime.NOON,
                early.day()
                        .timeOf(early.day()
                                .opening()
                                .orElseThrow()
                                .attendanceOf("P1")
                                .orElseThrow()
                                .until()));
    }

    private static String title(FakeShell shell) {
        return shell.board()
                .overlay()
                .map(overlay -> overlay instanceof Overlay.Choose choose ? choose.title() : "")
                .orElse("");
    }

    @Test
    void handing_out_a_task_offers_whom_the_plan_has_on_it_first() {
        Visit gully = shell.visitOf("M6");
        shell.types("12").types("s");
        Overlay.Choose choose = (Overlay.Choose) shell.board().overlay().orElseThrow();
        Task next = gully.tasks().get(0);
        String planned = shell.board()
                .expectOutlook()
                .timeOf(gully.id(), next.id())
                .orElseThrow()
                .person()
                .orElseThrow();
        Overlay.Choice marked = choose.choices().get(choose.selected());
        Act.Start start = (Act.Start) ((Overlay.Reply.Carry) marked.reply()).act();
        assertEquals(planned, start.personId());
        assertEquals(next.id(), start.taskId());
        assertTrue(marked.label().endsWith(Words.say("ask.person_planned")));
    }

    @Test
    void somebody_else_than_planned_is_chosen_by_their_digit_and_who_may_not_says_why() {
        Visit gully = shell.visitOf("M6");
        shell.types("12").types("s").types("1");
        Act.Start start = (Act.Start) shell.lastAct();
        assertEquals("P1", start.personId());
        assertEquals(gully.id(), start.visitId());
    }

    @Test
    void on_the_next_screen_five_starts_and_six_finishes() {
        Person marnie = shell.day().shop().expectPerson("P1");
        shell.types("n").types("1");
        assertEquals(new Screen.Next("P1", Optional.empty()), shell.board().screen());
        NextTask next = NextTask.of(shell.board().expectOutlook(), marnie).orElseThrow();
        assertFalse(next.isRunning());
        shell.types("6");
        shell.assertRefused(Words.say("off.start_first"));
        shell.types("5");
        if (shell.board().note().orElseThrow().isRefusal()) {
            // the plan has her wait for a place or a machine: what she is told is a sentence, and nothing is begun
            assertFalse(shell.note().isBlank());
            return;
        }
        assertEquals(next.task().id(), ((Act.Start) shell.lastAct()).taskId());
        shell.types("5");
        shell.assertRefused(Words.say("off.already_on_it"));
    }

    @Test
    void one_to_four_mark_the_points_one_after_the_other_and_six_finishes_when_all_are_marked() {
        shell.types("n").types("2");
        String visit = shell.visitOf("M1").id();
        String task = "inspect-underside";
        Mark[] marks = {Mark.GOOD, Mark.WATCH, Mark.FIX, Mark.NOT_REACHED};
        int pressed = 0;
        shell.types("6");
        assertTrue(shell.board().note().orElseThrow().isRefusal(), "points are open still");
        while (NextPoint.of(shell.board(), next()).isPresent()) {
            NextPoint point = NextPoint.of(shell.board(), next()).orElseThrow();
            Mark mark = marks[pressed % 4];
            shell.types(String.valueOf(1 + pressed % 4));
            if (mark == Mark.NOT_REACHED) {
                shell.types("2");
            }
            assertEquals(
                    mark,
                    shell.day()
                            .expectVisit(visit)
                            .findingAt(point.point().id())
                            .orElseThrow()
                            .mark());
            if (shell.board().overlay().filter(Overlay.TypeIn.class::isInstance).isPresent()) {
                shell.types("3.5").press(Key.ENTER);
                assertEquals(
                        3.5,
                        shell.day()
                                .expectVisit(visit)
                                .findingAt(point.point().id())
                                .orElseThrow()
                                .measured()
                                .orElseThrow());
            }
            if (shell.board().overlay().isPresent()) {
                shell.types("0");
            }
            pressed++;
        }
        assertTrue(pressed > 4);
        shell.types("1");
        shell.assertRefused(Words.say("off.no_point_open"));
        shell.types("6");
        assertTrue(shell.day().expectVisit(visit).findTask(task).orElseThrow().isDone());
    }

    private Screen.Next next() {
        return (Screen.Next) shell.board().screen();
    }

    @Test
    void seven_looks_at_the_point_before_once_more() {
        shell.types("n").types("2");
        NextPoint first = NextPoint.of(shell.board(), next()).orElseThrow();
        shell.types("7");
        NextPoint before = NextPoint.of(shell.board(), next()).orElseThrow();
        assertEquals(first.number() - 1, before.number());
        shell.types("4").types("1");
        assertEquals(
                Mark.NOT_REACHED,
                shell.visitOf("M1").findingAt(before.point().id()).orElseThrow().mark());
        assertEquals(
                first.point(), NextPoint.of(shell.board(), next()).orElseThrow().point());
    }

    @Test
    void whoever_looks_back_before_a_finding_is_saved_is_not_sent_onward_by_the_saving() {
        shell.types("n2");
        NextPoint marked = NextPoint.of(shell.board(), next()).orElseThrow();
        shell.types("1");
        assertTrue(marked.number()
                < NextPoint.of(shell.board(), next()).orElseThrow().number());
        Act tick = ((Effect.CarryOut) shell.effects.get(shell.effects.size() - 1)).act();
        shell.types("7");
        shell.tell(new Msg.Saved(tick, Optional.empty()));
        assertEquals(
                marked.point(),
                NextPoint.of(shell.board(), next()).orElseThrow().point());
    }

    @Test
    void enter_records_nothing_for_wet_hands() {
        shell.types("n").types("2");
        int before = shell.effects.size();
        shell.press(Key.ENTER, Key.ENTER);
        assertEquals(before, shell.effects.size());
        assertTrue(shell.board().screen() instanceof Screen.Next);
    }

    @Test
    void a_second_press_within_three_tenths_of_a_second_is_a_bounce() {
        shell.types("n").types("2");
        int before = shell.effects.size();
        shell.pressAfter(400, Key.of('2')).pressAfter(299, Key.of('2'));
        assertEquals(before + 1, shell.effects.size());
        shell.pressAfter(1, Key.of('2'));
        assertEquals(before + 2, shell.effects.size());
    }

    @Test
    void a_bounce_of_not_reached_does_not_choose_a_reason() {
        shell.types("n").types("2");
        int before = shell.effects.size();
        shell.pressAfter(400, Key.of('4')).pressAfter(200, Key.of('4'));
        assertEquals(before, shell.effects.size());
        assertTrue(shell.board().overlay().isPresent());
        shell.pressAfter(400, Key.of('2'));
        assertEquals("no time", ((Act.Tick) shell.lastAct()).note());
    }

    @Test
    void a_reason_that_is_not_usual_is_typed() {
        shell.types("n").types("2").types("4").types("7");
        shell.press(Key.ENTER);
        shell.assertRefused(Words.say("ask.reason_missing"));
        shell.types("the guard is riveted").press(Key.ENTER);
        assertEquals("the guard is riveted", ((Act.Tick) shell.lastAct()).note());
        assertEquals(Mark.NOT_REACHED, ((Act.Tick) shell.lastAct()).mark());
    }

    @Test
    void what_reads_outside_its_limits_is_not_recorded_as_good() {
        String visit = backAtRearPads();
        shell.types("1").types("0.8").press(Key.ENTER);
        // read again, watch, fix
        assertTrue(shell.board().overlay().orElseThrow() instanceof Overlay.Choose);
        shell.types("3");
        Act.Tick tick = (Act.Tick) shell.lastAct();
        assertEquals(Mark.FIX, tick.mark());
        assertEquals(0.8, tick.measured().orElseThrow());
        assertEquals(
                Mark.FIX,
                shell.day()
                        .expectVisit(visit)
                        .findingAt("pads-rear")
                        .orElseThrow()
                        .mark());
    }

    /** Tobin looks at the rear pads of tag 7 once more, as somebody who may say that they are good. */
    private String backAtRearPads() {
        shell.types("n").types("2");
        for (int points = 0; points < 26 && !isAt("brake-hoses"); points++) {
            shell.types("1");
        }
        shell.types("7");
        assertTrue(isAt("pads-rear"));
        return shell.visitOf("M1").id();
    }

    private boolean isAt(String pointId) {
        return NextPoint.of(shell.board(), next())
                .filter(point -> point.point().id().equals(pointId))
                .isPresent();
    }

    @Test
    void a_fix_that_can_be_put_right_asks_for_the_owners_word_and_yes_adds_the_work() {
        backAtRearPads();
        shell.types("3").types("0.9").press(Key.ENTER);
        Overlay.Choose offer = (Overlay.Choose) shell.board().overlay().orElseThrow();
        assertTrue(offer.about().size() > 2, offer.about().toString());
        int lines = shell.visitOf("M1").lines().size();
        shell.types("1234");
        assertEquals(lines, shell.visitOf("M1").lines().size(), "keys that mark points answer nothing");
        shell.types("+");
        assertEquals(lines + 1, shell.visitOf("M1").lines().size());
        Act.OwnerSaid said = (Act.OwnerSaid) shell.lastAct();
        assertEquals("P2", said.by());
        assertEquals(OwnersWord.Answer.YES, said.answer());
    }

    @Test
    void a_fix_whose_value_is_left_out_is_offered_all_the_same() {
        backAtRearPads();
        shell.types("3").press(Key.ESCAPE);
        assertTrue(shell.board().overlay().orElseThrow() instanceof Overlay.Choose);
        shell.types("-");
        assertEquals(OwnersWord.Answer.NO, ((Act.OwnerSaid) shell.lastAct()).answer());
    }

    @Test
    void the_sheet_asks_about_one_of_several_fixes_and_later_is_what_enter_says() {
        shell.types("7").press(Key.ENTER).types("o").types("1");
        shell.press(Key.ENTER);
        assertEquals(OwnersWord.Answer.LATER, ((Act.OwnerSaid) shell.lastAct()).answer());
    }

    @Test
    void a_sheet_asks_for_its_report_to_be_written() {
        shell.types("7").press(Key.ENTER).types("w");
        assertEquals(new Effect.WriteReport(shell.visitOf("M1").id()), shell.effects.get(shell.effects.size() - 1));
    }

    @Test
    void the_page_keys_move_a_sheet_whose_points_do_not_fit() {
        shell.types("7").press(Key.ENTER).press(Key.PAGE_DOWN, Key.PAGE_DOWN, Key.PAGE_UP);
        assertEquals(6, ((Screen.Sheet) shell.board().screen()).scroll());
        shell.press(Key.PAGE_UP, Key.PAGE_UP);
        assertEquals(0, ((Screen.Sheet) shell.board().screen()).scroll());
    }

    @Test
    void eight_holds_the_machine_for_a_reason() {
        shell.types("n").types("2").types("8").types("1").types("a rear boot").press(Key.ENTER);
        Visit trudge = shell.visitOf("M1");
        assertEquals(VisitState.HELD, trudge.state());
        assertEquals(Hold.Reason.PARTS, trudge.hold().orElseThrow().reason());
        assertEquals("a rear boot", trudge.hold().orElseThrow().note());
        assertEquals(Optional.empty(), shell.day().openEntryOf("P2"));
    }

    @Test
    void nine_goes_on_to_other_work_or_off() {
        shell.types("n").types("4").types("9").types("1");
        assertEquals(
                new Activity.OtherWork(Activity.OtherWork.Kind.CLEANING_SHOP),
                shell.day().openEntryOf("P4").orElseThrow().activity());
        shell.types("9").types("8");
        assertEquals(Optional.empty(), shell.day().openEntryOf("P4"));
    }

    @Test
    void a_promise_is_changed_with_a_reason_and_whose_wish_it_was() {
        shell.types("9").types("p");
        for (int i = 0; i < 20; i++) {
            shell.press(Key.BACKSPACE);
        }
        shell.types("1630").press(Key.ENTER).press(Key.ENTER);
        shell.assertRefused(Words.say("ask.reason_missing"));
        shell.types("the owner rang").press(Key.ENTER).types("2");
        Visit heeler = shell.visitOf("M2");
        assertEquals("the owner rang", heeler.promise().orElseThrow().why());
        assertTrue(heeler.promise().orElseThrow().ownersWish());
        assertEquals(heeler.promise(), heeler.firstPromise());
        assertEquals(
                LocalTime.of(16, 30),
                shell.day().timeOf(heeler.promise().orElseThrow().at()));
    }

    @Test
    void a_time_that_cannot_be_read_is_said_and_can_be_typed_again() {
        shell.types("9").types("p").types("x").press(Key.ENTER);
        assertTrue(shell.board().note().orElseThrow().isRefusal());
        assertTrue(shell.board().overlay().isPresent());
    }

    @Test
    void a_machine_not_to_be_ridden_goes_with_who_hands_it_over_to_whom_and_what_they_were_told() {
        Visit done = shell.day().visits().stream()
                .filter(visit -> visit.state() == VisitState.DONE)
                .findFirst()
                .orElseThrow();
        shell.does(new Act.Tick("P1", done.id(), "brake-feel", Mark.FIX, OptionalDouble.empty(), ""));
        shell.types(String.valueOf(done.tag().orElseThrow())).types("c").types("2");
        shell.press(Key.ENTER).press(Key.ENTER);
        Act.Collect.Handed handed = ((Act.Collect) shell.lastAct()).handed().orElseThrow();
        assertEquals("P2", handed.by());
        assertEquals(shell.day().ownerOf(done).name(), handed.to());
        assertTrue(handed.told().matches("Not to be ridden: Brake.*"), handed.told());
        assertEquals(VisitState.GONE, shell.day().expectVisit(done.id()).state());
    }

    @Test
    void a_machine_that_may_be_ridden_goes_at_once() {
        Visit done = shell.day().visits().stream()
                .filter(visit -> visit.state() == VisitState.DONE)
                .findFirst()
                .orElseThrow();
        shell.types(String.valueOf(done.tag().orElseThrow())).types("c");
        assertEquals(VisitState.GONE, shell.day().expectVisit(done.id()).state());
    }

    @Test
    void the_day_is_closed_once_everybody_is_clocked_off() {
        shell.types("lc");
        shell.types("c");
        shell.assertRefused(Words.say("off.closing_blocked"));
        for (int i = 0; i < 4; i++) {
            // the first answer is "now", as it is not knock-off yet
            shell.press(Key.ENTER).types("1");
            shell.assertDone();
        }
        shell.types("c12468").press(Key.ENTER);
        assertTrue(shell.day().isClosed());
        shell.types("c");
        shell.assertRefused(Words.say("off.day_closed"));
    }

    @Test
    void a_refusal_shows_as_a_note_and_changes_nothing() {
        var before = shell.day();
        shell.tell(new Msg.NotDone(new Act.Release("V1"), new Refusal("not_held", List.of("9 (Marrowby)"))));
        shell.assertRefused("9 (Marrowby) is not held.");
        assertEquals(before, shell.day());
        shell.types("?");
        assertTrue(shell.board().note().isEmpty());
    }

    @Test
    void a_better_plan_is_offered_and_posted_by_b() {
        shell.types("b");
        shell.assertRefused(Words.say("off.no_better"));
        for (String person : List.of("P1", "P2", "P3")) {
            shell.does(new Act.Stop(person, true));
        }
        for (String person : List.of("P1", "P2", "P3")) {
            shell.does(new Act.BeHere(person, shell.now().plusSeconds(7 * 3600)));
        }
        var problem = shell.board().expectOutlook().problem();
        Posted better = new Posted(
                Packer.pack(problem, new Search(3, 3000)), shell.day().origin());
        Optional<Posted> before = shell.day().posted();
        shell.tell(new Msg.BetterFound(better, Differences.of("V1", "V2", "V3")));
        shell.types("b");
        assertEquals(before, shell.day().posted());
        assertTrue(((Screen.Trial) shell.board().screen())
                        .comparison()
                        .orElseThrow()
                        .earlier()
                > 0);
        shell.press(Key.ENTER);
        assertTrue(shell.board().screen() instanceof Screen.Places);
        assertTrue(shell.lastAct() instanceof Act.Post);
        shell.assertDone();
        assertEquals(Optional.empty(), shell.board().better());
        assertNotEquals(before, shell.day().posted());
        assertFalse(shell.board().expectOutlook().tasksOf("P1").isEmpty());
    }

    @Test
    void an_offer_goes_when_the_day_has_moved_on() {
        shell.tell(new Msg.BetterFound(shell.day().posted().orElseThrow(), Differences.of("V1", "V2", "V3")));
        shell.types("n").types("4").types("9").types("1").types("0");
        assertEquals(Optional.empty(), shell.board().better());
    }

    @Test
    void pasted_text_reaches_fields_only() {
        shell.press(Key.PASTE_START).types("q").press(Key.ENTER).types("t").press(Key.PASTE_END);
        assertTrue(shell.board().screen() instanceof Screen.Places);
        assertEquals(List.of(), shell.effects);
        shell.types("t")
                .press(Key.PASTE_START)
                .types("quill")
                .press(Key.ENTER, Key.TAB)
                .types("gate")
                .press(Key.PASTE_END);
        Screen.TakeIn form = (Screen.TakeIn) shell.board().screen();
        assertEquals("quillgate", form.form().text(TakeInForm.Field.FIND));
        assertEquals(TakeInForm.Field.FIND, form.form().field());
    }

    @Test
    void pasting_does_not_answer_a_question() {
        shell.types("9").types("h").press(Key.PASTE_START).types("1").press(Key.PASTE_END);
        assertTrue(shell.board().overlay().orElseThrow() instanceof Overlay.Choose);
        assertEquals(List.of(), shell.effects);
    }

    @Test
    void quitting_and_help_are_a_key_away() {
        shell.types("?");
        assertTrue(shell.board().screen() instanceof Screen.Help);
        shell.press(Key.ESCAPE).types("q");
        assertEquals(List.of(new Effect.Quit()), shell.effects);
    }

    @Test
    void a_hand_is_lent_by_one_key_and_brought_back_by_another() {
        shell.types("n2");
        String task = shell.day().runningOf("P2").orElseThrow().task().id();
        shell.types("-");
        shell.assertRefused(Words.say("off.not_lent"));
        shell.types("+").types("2");
        shell.assertDone();
        assertTrue(shell.day().openEntryOf("P2").orElseThrow().activity() instanceof Activity.Lent);
        shell.types("-");
        shell.assertDone();
        assertEquals(task, shell.day().runningOf("P2").orElseThrow().task().id());
    }

    @Test
    void an_errand_is_planned_by_typing_when_how_long_and_what_about() {
        shell.types("w462").types("14:00 45 parts run").press(Key.ENTER);
        shell.assertDone();
        Errand errand = shell.day().errands().get(0);
        assertEquals(List.of("P4", 45, "parts run"), List.of(errand.personId(), errand.minutes(), errand.note()));
        shell.types("n4").types("90");
        assertEquals(Errand.State.BEGUN, shell.day().errands().get(0).state());
    }

    @Test
    void an_errand_that_cannot_be_read_says_how_to_write_it_and_keeps_what_was_typed() {
        shell.types("w462").types("soon").press(Key.ENTER);
        shell.assertRefused(Words.say("form.errand_unread", "soon"));
        assertEquals(
                "soon",
                ((Overlay.TypeIn) shell.board().overlay().orElseThrow())
                        .typing()
                        .text());
    }

    @Test
    void ones_own_row_is_put_right_with_times_a_reason_and_a_name() {
        shell.types("lr").press(Key.DOWN, Key.DOWN, Key.ENTER);
        shell.press(Key.control('u')).types("08:50-09:20").press(Key.ENTER);
        shell.types("the kettle").press(Key.ENTER).types("1");
        shell.assertDone();
        Act.Correct correct = (Act.Correct) shell.lastAct();
        assertEquals("P1", correct.by());
        assertEquals("the kettle", correct.why());
        assertEquals(Optional.empty(), shell.lastSignature());
    }

    @Test
    void anothers_row_is_signed_for_with_a_pin_that_nobody_sees() {
        shell.types("lr")
                .press(Key.DOWN, Key.DOWN)
                .types("xnever was")
                .press(Key.ENTER)
                .types("2");
        Overlay.TypeIn pin = (Overlay.TypeIn) shell.board().overlay().orElseThrow();
        assertTrue(pin.isSecret());
        shell.types("13579").press(Key.ENTER);
        assertEquals(Optional.of(new Effect.Signed("P2", "13579")), shell.lastSignature());
        assertFalse(shell.lastSignature().toString().contains("13579"));
    }

    @Test
    void times_of_a_row_that_cannot_be_read_are_refused_and_kept() {
        shell.types("lr").press(Key.DOWN, Key.DOWN, Key.ENTER).press(Key.control('u'));
        shell.types("half nine").press(Key.ENTER);
        shell.assertRefused(Words.say("form.span_unread", "half nine"));
        assertTrue(shell.board().overlay().isPresent());
    }

    @Test
    void the_hours_of_other_days_and_of_the_week_are_read_when_they_are_looked_at() {
        shell.types("l").press(Key.LEFT);
        LocalDate yesterday = shell.day().date().minusDays(1);
        assertEquals(
                new Effect.ReadHours(yesterday, yesterday.plusDays(1)), shell.effects.get(shell.effects.size() - 1));
        shell.types("w");
        LocalDate monday = LocalDate.of(2026, 5, 11);
        assertEquals(new Effect.ReadHours(monday, monday.plusWeeks(1)), shell.effects.get(shell.effects.size() - 1));
    }

    @Test
    void who_mistypes_their_pin_is_asked_again_and_what_was_to_be_signed_is_not_lost() {
        shell.types("lr")
                .press(Key.DOWN, Key.DOWN)
                .types("xnever was")
                .press(Key.ENTER)
                .types("2");
        Overlay asked = shell.board().overlay().orElseThrow();
        Act act = ((Overlay.Purpose.Sign) ((Overlay.TypeIn) asked).purpose()).act();
        shell.tell(new Msg.NotDone(act, new Refusal("pin_wrong", List.of())));
        assertEquals(Optional.of(asked), shell.board().overlay());
        shell.assertRefused(Words.say("pin_wrong"));
    }

    @Test
    void a_refusal_that_is_not_of_a_pin_asks_for_none() {
        Act act = new Act.CloseDay("P1");
        shell.tell(new Msg.NotDone(act, new Refusal("still_here", List.of("Wren"))));
        assertEquals(Optional.empty(), shell.board().overlay());
    }
}
