package org.shedboard.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.shedboard.day.Act;
import org.shedboard.day.FixOffer;
import org.shedboard.day.KnockOffChance;
import org.shedboard.day.Quote;
import org.shedboard.day.Refusal;
import org.shedboard.day.Trace;
import org.shedboard.day.WhatIf;
import org.shedboard.day.WhySoLong;
import org.shedboard.pack.story.Differences;
import org.shedboard.register.History;
import org.shedboard.tally.LookBack;
import org.shedboard.words.Words;

/** Every message is answered, and every key of every screen says what it is. */
class UpdateTest {
    @Test
    void every_message_is_answered_on_every_screen() {
        List<Msg> messages = messages();
        Set<Class<?>> told = messages.stream().map(Msg::getClass).collect(Collectors.toSet());
        assertEquals(Set.of(Msg.class.getPermittedSubclasses()), told);
        for (Board board : boards()) {
            for (Msg msg : messages) {
                Update.of(board, msg);
            }
        }
    }

    private static List<Msg> messages() {
        FakeShell shell = FakeShell.demonstration();
        Known.Seen seen = shell.board().seen().orElseThrow();
        Act act = new Act.Release("V1");
        Refusal refusal = new Refusal("not_held", List.of("12"));
        return List.of(
                new Msg.Pressed(Key.OTHER, Instant.EPOCH),
                new Msg.FormKept(Map.of("text.FIND", "marrowby")),
                new Msg.Pointed(List.of(Key.DOWN), Instant.EPOCH),
                new Msg.Seen(seen.outlook(), seen.tally()),
                new Msg.HoursRead(seen.tally()),
                new Msg.LookedBack(LookBack.of(seen.tally().ledger(), List.of())),
                new Msg.HistoryRead(new History("M1", List.of())),
                new Msg.KnockOffSeen(Optional.empty()),
                new Msg.DriftsSeen(List.of()),
                new Msg.Warned(List.of()),
                new Msg.Saved(act, Optional.of("V1")),
                new Msg.NotDone(act, refusal),
                new Msg.Quoted(new Quote.Answer.NotGiven(refusal), 1),
                new Msg.BetterFound(shell.day().posted().orElseThrow(), Differences.of("V1", "V2", "V3")),
                new Msg.Tried(WhatIf.NOTHING, WhatIf.NOTHING.on(seen.outlook())),
                new Msg.Kept(WhatIf.NOTHING, Trace.NOTHING),
                new Msg.NotKept(WhatIf.NOTHING, refusal),
                new Msg.FixOffered(new FixOffer.Answer.NotGiven(refusal)),
                new Msg.Written("The report is there."),
                new Msg.WentWrong("The disk is full."),
                new Msg.TimeWent(Instant.EPOCH),
                new Msg.NoShop());
    }

    /** One board for each screen. */
    private static List<Board> boards() {
        List<Board> boards = new ArrayList<>();
        Board starting = Board.starting(ZoneOffset.UTC);
        boards.add(starting);
        boards.add(starting.with(new Screen.FirstRun()));
        boards.add(starting.with(new Screen.Setup(SetupForm.USUAL)));
        FakeShell shell = FakeShell.demonstration();
        boards.add(shell.board());
        boards.add(shell.board()
                .offering(
                        Optional.of(new Better(shell.day().posted().orElseThrow(), Differences.of("V1", "V2", "V3")))));
        shell.day().visits().forEach(visit -> boards.add(shell.board().on(new Screen.Sheet(visit.id(), 0, 0))));
        shell.day()
                .shop()
                .people()
                .forEach(person -> boards.add(shell.board().on(new Screen.Next(person.id(), Optional.empty()))));
        for (Screen.Hours.Page page : Screen.Hours.Page.values()) {
            boards.add(shell.board().on(new Screen.Hours(page, shell.day().date(), 0)));
        }
        boards.add(shell.board().on(Screen.Register.START));
        boards.add(shell.board().on(new Screen.MachinePage("M1")));
        boards.add(shell.board().on(new Screen.MachinePage("gone")));
        boards.add(shell.board().on(Deeds.ahead(shell.board(), Screen.Ahead.Page.PLACES)));
        shell.day()
                .visits()
                .forEach(visit ->
                        boards.add(shell.board().on(new Screen.Minutes(WhySoLong.of(shell.day(), visit), 0))));
        for (Screen.ScorecardPage.Page page : Screen.ScorecardPage.Page.values()) {
            boards.add(shell.board().on(Deeds.scorecard(shell.board(), page)));
        }
        boards.add(withOursOut());
        boards.add(FakeShell.demonstration().types("12y").board());
        boards.add(FakeShell.demonstration().types("=d1").board());
        Better better = new Better(shell.day().posted().orElseThrow(), Differences.of("V1", "V2", "V3"));
        boards.add(TrialKeys.offer(shell.board().offering(Optional.of(better))).board());
        boards.add(shell.board().on(new Screen.Closing(0)));
        boards.add(shell.board().on(RingKeys.of(shell.board(), 1, 0)));
        boards.add(shell.board().on(new Screen.Suggested(List.of(), 0)));
        boards.add(shell.board().on(new Screen.Shelf(0)));
        boards.add(shell.board().on(Screen.Crew.START));
        boards.add(new HandKeys(FakeShell.demonstration().board())
                .perform(Deed.PICK_UP)
                .board());
        boards.add(shell.board().on(new Screen.Next("P1", Optional.empty()).joinedBy("P2")));
        boards.add(shell.board().on(Screen.YardPage.START));
        boards.add(shell.board().on(Screen.YardPage.START.filtered(Typing.of("zebra"))));
        FakeShell plug = FakeShell.onThePlug();
        boards.add(plug.board().on(new Screen.Sheet(plug.visitOf("M54").id(), 0, 0)));
        boards.add(plug.board().on(new Screen.Next("P1", Optional.empty())));
        boards.add(shell.board().on(new Screen.TakeIn(TakeInForm.EMPTY)));
        boards.add(shell.board().on(new Screen.Opening(OpenForm.of(shell.day()))));
        boards.add(shell.board().on(new Screen.Help(Keys.of(shell.board()), 0)));
        boards.add(FakeShell.unopened().board());
        return boards;
    }

    /** The sheet of a machine for which one of ours is out. */
    private static Board withOursOut() {
        FakeShell shell = FakeShell.demonstration().types("12").press(Key.ENTER).types("lthe yellow quad");
        return shell.press(Key.ENTER).board();
    }

    @Test
    void the_boards_of_this_test_show_every_screen() {
        Set<Class<?>> shown =
                boards().stream().map(board -> board.screen().getClass()).collect(Collectors.toSet());
        assertEquals(Set.of(Screen.class.getPermittedSubclasses()), shown);
    }

    @Test
    void every_key_says_what_it_does_and_why_it_is_off_and_no_key_stands_twice_on_a_screen() {
        Set<Deed> bound = new HashSet<>();
        for (Board board : boards()) {
            List<Binding> keys = Keys.of(board);
            assertEquals(
                    keys.size(),
                    keys.stream()
                            .map(binding -> binding.label().toLowerCase(Locale.ROOT))
                            .distinct()
                            .count(),
                    board.screen() + " has a key twice: " + keys);
            for (Binding binding : keys) {
                bound.add(binding.deed());
                assertFalse(binding.label().isBlank());
                assertFalse(binding.name().isBlank());
                assertTrue(binding.help().endsWith("."), binding.help());
                binding.off().ifPresent(why -> assertTrue(why.endsWith("."), why));
            }
        }
        assertEquals(Set.of(Deed.values()), bound);
    }

    @Test
    void a_key_that_is_off_says_why() {
        FakeShell shell = FakeShell.unopened();
        shell.types("s");
        shell.assertRefused(Words.say("off.nothing_selected"));
        shell.types("w");
        shell.assertRefused(Words.say("off.day_not_open"));
        assertEquals(List.of(), shell.effects);
    }

    @Test
    void escape_leads_back_out_of_every_screen() {
        for (Board board : boards()) {
            Board out = board;
            for (int i = 0; i < 3; i++) {
                out = Update.of(out, new Msg.Pressed(Key.ESCAPE, Instant.EPOCH.plusSeconds(9 + i)))
                        .board();
            }
            boolean home = Stream.of(Screen.Places.class, Screen.FirstRun.class, Screen.Loading.class)
                    .anyMatch(out.screen().getClass()::equals);
            assertTrue(home, board.screen() + " leads to " + out.screen());
        }
    }

    @Test
    void control_l_paints_anew_and_control_c_leaves_from_anywhere() {
        for (Board board : boards()) {
            assertEquals(
                    List.of(new Effect.Repaint()),
                    Update.of(board, new Msg.Pressed(Key.control('l'), Instant.EPOCH))
                            .effects());
            assertEquals(
                    List.of(new Effect.Quit()),
                    Update.of(board, new Msg.Pressed(Key.control('c'), Instant.EPOCH))
                            .effects());
        }
    }

    @Test
    void one_sets_up_ones_own_shop_or_looks_around() {
        Board first =
                Update.of(Board.starting(ZoneOffset.UTC), new Msg.NoShop()).board();
        assertEquals(
                List.of(new Effect.OpenDemonstration()),
                Update.of(first, new Msg.Pressed(Key.of('2'), Instant.EPOCH)).effects());
        Board setup =
                Update.of(first, new Msg.Pressed(Key.of('1'), Instant.EPOCH)).board();
        Turn turn = Turn.to(setup);
        for (String text : List.of("Gate 7", "Ada", "Bo, Di", "Cy", "", "", "", "", "")) {
            for (char character : text.toCharArray()) {
                turn = Update.of(turn.board(), new Msg.Pressed(Key.of(character), Instant.EPOCH));
            }
            turn = Update.of(turn.board(), new Msg.Pressed(Key.ENTER, Instant.EPOCH));
        }
        Effect.MakeShop make = (Effect.MakeShop) turn.effects().get(0);
        assertEquals("Gate 7", make.shop().name());
        assertEquals(4, make.shop().people().size());
        assertEquals(
                List.of("W1", "H1", "F1", "F2"),
                make.shop().places().stream().map(place -> place.id()).toList());
    }

    @Test
    void a_sheet_left_open_overnight_whose_visit_is_over_gives_way_to_the_board() {
        Known.Seen tomorrow = FakeShell.unopened().board().seen().orElseThrow();
        FakeShell shell = FakeShell.demonstration();
        shell.types("9").press(Key.ENTER).types("h");
        shell.tell(new Msg.Seen(tomorrow.outlook(), tomorrow.tally()));
        assertEquals(Screen.Places.START, shell.board().screen());
        assertEquals(Optional.empty(), shell.board().overlay());
        FakeShell wet = FakeShell.demonstration();
        wet.types("n").types("2");
        wet.tell(new Msg.Seen(tomorrow.outlook(), tomorrow.tally()));
        assertTrue(wet.board().screen() instanceof Screen.Next);
        wet.press(Key.ESCAPE);
        assertEquals(Screen.Places.START, wet.board().screen());
    }

    @Test
    void how_sure_knock_off_is_stands_until_it_is_worked_out_anew_but_not_overnight() {
        FakeShell shell = FakeShell.demonstration();
        Known.Seen today = shell.board().seen().orElseThrow();
        Optional<KnockOffChance> chance = KnockOffChance.of(today.outlook());
        shell.tell(new Msg.KnockOffSeen(chance));
        shell.minutesPass(1);
        assertTrue(chance.isPresent());
        assertEquals(chance, shell.board().seen().orElseThrow().knockOff());
        Known.Seen tomorrow = FakeShell.unopened().board().seen().orElseThrow();
        shell.tell(new Msg.Seen(tomorrow.outlook(), tomorrow.tally()));
        assertEquals(Optional.empty(), shell.board().seen().orElseThrow().knockOff());
    }
}
