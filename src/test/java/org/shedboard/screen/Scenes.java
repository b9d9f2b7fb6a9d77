package org.shedboard.screen;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Supplier;
import org.shedboard.board.Board;
import org.shedboard.board.Earlier;
import org.shedboard.board.Key;
import org.shedboard.board.Msg;
import org.shedboard.board.NextPoint;
import org.shedboard.board.Screen;
import org.shedboard.day.Act;
import org.shedboard.day.Posted;
import org.shedboard.day.Refusal;
import org.shedboard.estimate.Catalogue;
import org.shedboard.estimate.Figure;
import org.shedboard.grid.Grid;
import org.shedboard.grid.Size;
import org.shedboard.learn.Circumstances;
import org.shedboard.learn.Lesson;
import org.shedboard.learn.Sort;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Search;
import org.shedboard.pack.search.Packer;
import org.shedboard.pack.story.Differences;
import org.shedboard.shop.Amount;
import org.shedboard.shop.Condition;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Mark;
import org.shedboard.shop.Mud;
import org.shedboard.shop.Payer;
import org.shedboard.shop.Visit;
import org.shedboard.shop.VisitState;
import org.shedboard.words.Words;

/** What the screens look like in each state that matters; the first of every screen is its ordinary one. */
final class Scenes {
    /** One state of one screen, which is come to once, however often it is drawn. */
    static final class Scene {
        private final String screen;
        private final String name;
        private final Supplier<Rehearsal> rehearsal;
        private Optional<Board> board = Optional.empty();

        private Scene(String screen, String name, Supplier<Rehearsal> rehearsal) {
            this.screen = screen;
            this.name = name;
            this.rehearsal = rehearsal;
        }

        String screen() {
            return screen;
        }

        String name() {
            return name;
        }

        synchronized Board board() {
            Board seen = board.orElseGet(() -> rehearsal.get().board());
            board = Optional.of(seen);
            return seen;
        }

        Grid drawn(Size size) {
            return View.of(board(), size);
        }

        @Override
        public String toString() {
            return screen + " " + name;
        }
    }

    private static final String TOBIN = "2";
    private static final String MARNIE_ID = "P1";

    /** A name of sixty letters, one in wide letters, one from right to left, and one that would steer the terminal. */
    static final List<String> AWKWARD_NAMES = List.of(
            "Quibberlingstone-Marrowfatherington-Underhollowayshire-Estate",
            "乾燥した丘の牧場",
            "אבגדה, ערבה",
            "Evil\u001b[2J\u001b]0;gone\u0007\u009b31m \u202eback\u0000");

    private static final List<Scene> ALL = new ArrayList<>();

    private Scenes() {}

    static {
        add("loading", "reading", Rehearsal::starting);
        add("loading", "awaiting-server", () -> away(Rehearsal.starting(), "app.records_awaited"));
        add("look-only", "board", () -> demonstration().lookingOnly());
        add("look-only", "key-off", () -> demonstration().lookingOnly().type("t"));
        add("look-only", "next", () -> demonstration().lookingOnly().type("n" + TOBIN));
        add("look-only", "help", () -> demonstration().lookingOnly().type("?"));
        add("first-run", "no-shop", Rehearsal::withoutShop);
        setUp();
        board();
        sheet();
        next();
        takeIn();
        add("opening", "all-here", () -> Rehearsal.beforeOpening().type("o"));
        add("opening", "one-away-one-hoist-locked-out", Scenes::halfOpened);
        add("hours", "morning", () -> demonstration().type("l"));
        add("hours", "moved-up", () -> closed().type("l").press(Key.DOWN, Key.DOWN, Key.DOWN, Key.DOWN));
        add("hours", "machines", () -> closed().type("lm"));
        add("hours", "rows", () -> closed().type("lr").press(Key.DOWN, Key.DOWN, Key.DOWN));
        add("hours", "month", () -> closed().type("lb"));
        add("hours", "week", () -> closed().type("lw"));
        add("hours", "not-open", () -> Rehearsal.beforeOpening().type("l"));
        add("hours", "closed", () -> closed().type("l"));
        ring();
        suggested();
        shelf();
        add("help", "board", () -> demonstration().type("?"));
        add("help", "board-moved-up", () -> down(demonstration().type("?"), 30));
        add("help", "sheet", () -> demonstration().press(Key.ENTER).type("?"));
        ahead();
        scorecard();
        questions();
        register();
        minutes();
        why();
        trial();
        axis();
        takingBack();
        byHand();
        yard();
        add("board", "records-away", () -> away(demonstration(), "app.records_away"));
        add("take-in", "records-away", () -> away(demonstration().type("tmarrowby"), "app.records_away"));
        add("next", "two-people", () -> demonstration().type("n2/1"));
        add("next", "two-people-first-has-keys", () -> demonstration().type("n2/1/"));
    }

    private static Rehearsal away(Rehearsal rehearsal, String sentence) {
        String why = "no server answers at shed.example:9217; see that it runs there";
        return rehearsal.told(new Msg.RecordsAway(Words.say(sentence, why, "09:40")));
    }

    /** Tobin is on tag 7. */
    private static void takingBack() {
        add("board", "take-back", () -> demonstration().type("7uz"));
        add("board", "taken-back", () -> demonstration().type("7uz").press(Key.ENTER));
        add(
                "board",
                "do-again",
                () -> demonstration().type("7uz").press(Key.ENTER).type("z"));
        add("board", "take-back-past-what-stays", Scenes::pausedThenSomebodyStays);
        add(
                "sheet",
                "take-back",
                () -> demonstration().type("7").press(Key.ENTER).type("uz"));
        add("crew", "take-back", () -> demonstration().type("7u").press(Key.TAB).type("z"));
    }

    /** Of the two things done here the second stays. */
    private static Rehearsal pausedThenSomebodyStays() {
        return demonstration().type("7uk1").press(Key.ENTER).type("z");
    }

    /** A task in hand, and the pin where it was dropped. */
    private static void byHand() {
        add("in-hand", "picked-up", () -> held(0));
        add("in-hand", "moved", () -> held(0).press(Key.RIGHT));
        add("in-hand", "breaks-a-promise", () -> times(held(1), Key.RIGHT, 24));
        add("in-hand", "refused", () -> times(held(2).type("  "), Key.LEFT, 12));
        add("in-hand", "two-hours", () -> times(demonstration().type("++ "), Key.RIGHT, 6));
        add("board", "pinned", () -> held(0).press(Key.RIGHT, Key.RIGHT, Key.ENTER));
        add("sheet", "pinned", () -> held(2).press(Key.RIGHT, Key.RIGHT, Key.ENTER, Key.ENTER));
    }

    private static Rehearsal held(int row) {
        return times(demonstration(), Key.DOWN, row).type(" ");
    }

    private static Rehearsal times(Rehearsal rehearsal, Key key, int presses) {
        for (int i = 0; i < presses; i++) {
            rehearsal.press(key);
        }
        return rehearsal;
    }

    /** Everything here or due, in its orders and with a filter. */
    private static void yard() {
        add("yard", "morning", () -> demonstration().press(Key.TAB));
        add("yard", "dirtiest-first", () -> demonstration().press(Key.TAB).type("ooo"));
        add("yard", "words-typed", () -> demonstration().press(Key.TAB).type("/muddy yard"));
        add(
                "yard",
                "nothing-has-the-words",
                () -> demonstration().press(Key.TAB).type("/zebra").press(Key.ENTER));
        add("yard", "closed", () -> closed().press(Key.TAB));
        add("yard", "own-shop-empty", () -> ownShop().press(Key.TAB));
        add("yard", "awkward-names", () -> awkward().press(Key.TAB));
    }

    /** The places and the crew, closer, further and later. */
    private static void axis() {
        add("board", "two-hours", () -> demonstration().type("++"));
        add("board", "five-days", () -> demonstration().type("---"));
        add("board", "tomorrow", () -> demonstration().type(">>>>>>>>>>>"));
        add("board", "late-by", () -> demonstration().later(180).type("+"));
        add("board", "earlier", () -> demonstration().later(600).type("+<<<<<<<"));
        add("crew", "morning", () -> demonstration().press(Key.BACK_TAB));
        add("crew", "two-hours", () -> demonstration().type("++").press(Key.BACK_TAB));
        add("crew", "five-days", () -> demonstration().type("---").press(Key.BACK_TAB));
        add("crew", "not-open", () -> Rehearsal.beforeOpening().press(Key.BACK_TAB));
        add("crew", "over-the-shift", () -> demonstration().later(440).press(Key.BACK_TAB, Key.DOWN));
        add("crew", "own-shop-empty", () -> ownShop().press(Key.BACK_TAB));
        add("crew", "say-of-them", () -> demonstration().press(Key.BACK_TAB, Key.DOWN, Key.ENTER));
    }

    /** The demonstration with its one booking selected, wherever the plan has it. */
    private static Rehearsal onTheBooking() {
        Rehearsal rehearsal = demonstration().press(Key.DOWN);
        for (int presses = 0; presses < 10 && !isOnTheBooking(rehearsal); presses++) {
            rehearsal.press(Key.DOWN);
        }
        return rehearsal;
    }

    private static boolean isOnTheBooking(Rehearsal rehearsal) {
        String selected =
                ((Screen.Places) rehearsal.board().screen()).selected().orElseThrow();
        return rehearsal.day().expectVisit(selected).state() == VisitState.BOOKED;
    }

    private static void trial() {
        add("trial", "hoist-out", () -> demonstration().type("=k10hose").press(Key.ENTER));
        add("trial", "nothing-yet", () -> demonstration().type("="));
        add("trial", "several", () -> several().press(Key.DOWN));
        add("trial", "not-possible", () -> sickFromEleven().later(120));
        add("trial", "better-plan", () -> backAfterAll().type("b"));
        add("trial", "which-promise", () -> demonstration().type("=p"));
    }

    /** Three people leave and come back; the plan that was moved along is far from the best by then. */
    private static Rehearsal backAfterAll() {
        Rehearsal rehearsal = demonstration();
        List<String> people = List.of("P1", "P2", "P3");
        people.forEach(person -> rehearsal.done(new Act.Stop(person, true)));
        people.forEach(person ->
                rehearsal.done(new Act.BeHere(person, rehearsal.outlook().at().plusSeconds(7 * 3600))));
        Plan found = Packer.pack(rehearsal.outlook().problem(), new Search(3, 3000));
        Posted plan = new Posted(found, rehearsal.day().origin());
        return rehearsal.told(new Msg.BetterFound(plan, rehearsal.outlook().differenceTo(found)));
    }

    private static Rehearsal several() {
        Rehearsal rehearsal = sickFromEleven().type("k10hose");
        return rehearsal.press(Key.ENTER);
    }

    /** Tobin stays until eleven. */
    private static Rehearsal sickFromEleven() {
        Rehearsal rehearsal = demonstration().type("=w21");
        for (int letter = 0; letter < 8; letter++) {
            rehearsal.press(Key.BACKSPACE);
        }
        return rehearsal.type("11:00").press(Key.ENTER);
    }

    private static void why() {
        add("why", "waits", () -> demonstration().type("12").type("y"));
        add("why", "begun", () -> demonstration().type("7").type("y"));
        add("why", "another-task", () -> demonstration().type("12y").press(Key.DOWN, Key.DOWN, Key.DOWN));
        add("why", "booked", () -> onTheBooking().type("y"));
        add("why", "done", () -> demonstration().type("7y").press(Key.UP, Key.UP, Key.UP, Key.UP));
    }

    private static void minutes() {
        add(
                "minutes",
                "muddy",
                () -> demonstration().type("12").press(Key.ENTER).type("yy"));
        add("minutes", "begun", () -> demonstration().type("7").press(Key.ENTER).type("yy"));
        add(
                "minutes",
                "clean",
                () -> demonstration().type("11").press(Key.ENTER).type("yy"));
        add("minutes", "booked", () -> onTheBooking().press(Key.ENTER).type("yy"));
        add(
                "minutes",
                "moved-up",
                () -> demonstration().type("7").press(Key.ENTER).type("yy").press(Key.DOWN, Key.DOWN, Key.DOWN));
    }

    private static void register() {
        add("register", "all", () -> demonstration().type("m"));
        add("register", "found", () -> demonstration().type("mqulilgate"));
        add("register", "nothing-found", () -> demonstration().type("mzzzzz"));
        add("machine", "visits", () -> page("quillgate trudge"));
        add("machine", "check-digit-wrong", () -> numbered("1M8GDM9A5KP042788"));
        add("machine", "two-years", () -> numbered("1m8gdm9a1ap042788").type("e24"));
        add("sheet", "number-fails", () -> marked(demonstration().type("7").press(Key.ENTER)));
        add("machine", "merged", Scenes::merged);
        add("machine", "meter-replaced", () -> page("tarnshaw heeler"));
        add("machine", "took-home", () -> page("tarnshaw muster"));
        add(
                "machine",
                "wash-down-first-and-lent",
                () -> washedFirst().type("mharrowick burr").press(Key.ENTER));
        add("take-in", "year-asked", () -> numberTyped("1M8GDM9A1AP042788").press(Key.ENTER));
        add("take-in", "number-fails", () -> numberTyped("1M8GDM9A5KP042788"));
        add("take-in", "number-noted", () -> numberTyped("1M8GDM9A5KP042788").press(Key.ENTER, Key.ENTER));
        add(
                "machine",
                "from-the-sheet",
                () -> demonstration().type("7").press(Key.ENTER).type("m"));
        add("questions", "which-year", () -> numbered("1m8gdm9a1ap042788").type("e2"));
        add("questions", "what-is-otherwise", () -> page("quillgate trudge").type("e"));
        add(
                "questions",
                "which-record-stands",
                () -> page("quillgate trudge")
                        .type("mmarrowby burr")
                        .press(Key.ENTER)
                        .type("1"));
        add("questions", "forget", () -> page("marrowby burr").type("x"));
    }

    private static Rehearsal page(String typed) {
        return demonstration().type("m" + typed).press(Key.ENTER);
    }

    private static Rehearsal numbered(String number) {
        return page("marrowby burr")
                .type("e3")
                .press(Key.control('u'))
                .type(number)
                .press(Key.ENTER);
    }

    private static Rehearsal marked(Rehearsal sheet) {
        return sheet.type("me3")
                .press(Key.control('u'))
                .type("1M8GDM9A5KP042788")
                .press(Key.ENTER, Key.ESCAPE);
    }

    /** A new machine, as far as its number. */
    private static Rehearsal numberTyped(String number) {
        return demonstration()
                .type("tZeb")
                .press(Key.ENTER, Key.ENTER, Key.ENTER)
                .type("2")
                .press(Key.ENTER)
                .type("Drobbin Hauler")
                .press(Key.ENTER)
                .type(number);
    }

    private static Rehearsal merged() {
        return page("marrowby burr")
                .type("mquillgate burr")
                .press(Key.ENTER)
                .type("112468")
                .press(Key.ENTER);
    }

    private static void scorecard() {
        add("scorecard", "said", () -> demonstration().type("j"));
        add("scorecard", "said-moved-up", () -> down(demonstration().type("j"), 30));
        add("scorecard", "drawn", () -> demonstration().type("jp"));
        add("scorecard", "set-aside", () -> repairsRunAway().type("ja"));
        add("board", "repairs-run-away", Scenes::repairsRunAway);
        add("scorecard", "repairs-run-away", () -> repairsRunAway().type("j"));
        add("scorecard", "own-shop-empty", () -> ownShop().type("j"));
        add("scorecard", "own-shop-nothing-drawn", () -> ownShop().type("jp"));
        add("scorecard", "own-shop-nothing-aside", () -> ownShop().type("ja"));
    }

    /** Repairs that take half as long again for some days, and clocks forgotten or never begun. */
    private static Rehearsal repairsRunAway() {
        List<Lesson> more = new ArrayList<>();
        for (int number = 0; number < 20; number++) {
            more.add(lesson("X" + number, Sort.REPAIR, 17 + number / 5, 60, 90 + 4 * (number % 5)));
        }
        more.add(lesson("X21", Sort.WASH, 12, 40, 852));
        more.add(lesson("X22", Sort.TOPSIDE, 13, 25, 1030));
        more.add(lesson("X23", Sort.UNDERSIDE, 14, 35, 0));
        return demonstration().finished(more);
    }

    private static Lesson lesson(String visitId, Sort sort, int day, double catalogue, double actual) {
        Circumstances under = new Circumstances(
                "quad",
                Mud.MUDDY,
                Depth.STANDARD,
                OptionalInt.of(6),
                LocalDate.of(2026, 4, 20).plusDays(day),
                actual > 0 ? Map.of("P2", 1.0) : Map.of());
        return new Lesson(visitId, sort, under, catalogue, actual);
    }

    private static void ahead() {
        add("ahead", "places", () -> withBookings().type("v"));
        add("ahead", "skills", () -> withBookings().type("vs"));
        add("ahead", "full-day", () -> withBookings().type("v").press(Key.DOWN, Key.DOWN));
        add("ahead", "last-day", () -> down(withBookings().type("v"), 30));
        add("ahead", "not-open", () -> Rehearsal.beforeOpening().type("v"));
        add("ahead", "own-shop-empty", () -> ownShop().type("vs"));
    }

    /** A Thursday on which the wash pad is full, and a machine or two on other days. */
    private static Rehearsal withBookings() {
        List<Act.TakeIn> bookings = new ArrayList<>(
                Collections.nCopies(8, booking("tractor", "one of eight", "minor-tractor", "2026-05-14T08:00")));
        bookings.add(booking("quad", "ninth", "full-quad", "2026-05-20T08:00"));
        bookings.add(booking("ride-on", "tenth", "minor-mower", "2026-06-02T08:00"));
        return demonstration().booked(bookings);
    }

    private static Rehearsal ontoFullDay() {
        return withBookings()
                .type("tcorrowby burr")
                .press(Key.ENTER)
                .type("m")
                .press(Key.ENTER)
                .type("3");
    }

    /** A clean quad of a property that wants it washed down first; a machine of ours is out for it. */
    private static Rehearsal washedFirst() {
        Rehearsal rehearsal = demonstration()
                .done(new Act.TakeIn(
                        new Act.TakeIn.Whose(Optional.empty(), "", ""),
                        Act.TakeIn.Which.known("M29"),
                        Mud.CLEAN,
                        Optional.empty(),
                        Condition.SOUND,
                        List.of(new Act.Wanted("oil-quad", Payer.OWNER)),
                        OptionalInt.of(1),
                        OptionalInt.empty(),
                        Optional.empty(),
                        "",
                        Optional.empty()));
        String visit = rehearsal.day().findByTag(1).orElseThrow().id();
        return rehearsal.done(new Act.LendMachine(visit, Optional.empty(), "the yellow quad"));
    }

    private static Act.TakeIn booking(String classId, String label, String work, String expected) {
        return new Act.TakeIn(
                new Act.TakeIn.Whose(Optional.of("C12"), "", ""),
                new Act.TakeIn.Which(Optional.empty(), classId, label, OptionalInt.of(2020), ""),
                Mud.CAKED,
                Optional.empty(),
                Condition.SOUND,
                List.of(new Act.Wanted(work, Payer.OWNER)),
                OptionalInt.empty(),
                OptionalInt.empty(),
                Optional.of(LocalDateTime.parse(expected).toInstant(ZoneOffset.ofHours(10))),
                "",
                Optional.empty());
    }

    static List<Scene> all() {
        return List.copyOf(ALL);
    }

    private static void setUp() {
        add("set-up", "start", () -> Rehearsal.withoutShop().type("1"));
        add(
                "set-up",
                "no-foreman",
                () -> Rehearsal.withoutShop()
                        .type("1Cold Spring Repairs")
                        .press(Key.UP, Key.DOWN, Key.DOWN, Key.DOWN, Key.DOWN, Key.DOWN, Key.DOWN, Key.DOWN, Key.DOWN)
                        .press(Key.ENTER));
    }

    private static void board() {
        add("board", "morning", Scenes::demonstration);
        add("board", "not-open", Rehearsal::beforeOpening);
        add("board", "before-dawn", () -> Rehearsal.beforeOpening().later(-240));
        add(
                "board",
                "hoists-not-checked",
                () -> Rehearsal.beforeOpening().type("o").press(Key.ENTER, Key.ENTER));
        add("board", "hoist-locked-out", () -> halfOpened().press(Key.ENTER, Key.ENTER));
        add(
                "board",
                "backups-and-clock",
                () -> demonstration()
                        .warned(
                                "Today's backup could not be made: the disk is full; nothing can be saved until there is room.",
                                "No copy of a backup has come to /media/stick since Fri, 8 May; bring its disk, then: shedboard backup"));
        add("board", "closed", Scenes::closed);
        add("board", "own-shop-empty", Scenes::ownShop);
        add("board", "better-plan", () -> withBetterPlan(demonstration()));
        add("board", "tag-typed", () -> demonstration().type("12"));
        add(
                "board",
                "saving",
                () -> demonstration().withSlowRecords().type("12s").press(Key.ENTER));
        add("board", "refused", () -> demonstration().type("12r"));
        add("board", "overtaken", () -> elsewhereFirst("overtaken", true));
        add("board", "refused-after-another", () -> elsewhereFirst("is_held", false));
        add("board", "later-promise-missed", () -> demonstration().later(180));
        add("board", "awkward-names", Scenes::awkward);
    }

    private static void sheet() {
        add("sheet", "in-hand-not-to-be-ridden", () -> demonstration().type("7").press(Key.ENTER));
        add(
                "sheet",
                "owner-said-no",
                () -> demonstration().type("7").press(Key.ENTER).type("o1-").press(Key.PAGE_DOWN));
        add("sheet", "left-last-time", Scenes::backAgain);
        add(
                "sheet",
                "wear-since-past-visits",
                () -> down(takenIn(yearSaid()), 5).press(Key.PAGE_DOWN, Key.PAGE_DOWN, Key.PAGE_DOWN));
        add("sheet", "done", () -> demonstration().type("5").press(Key.ENTER));
        add("sheet", "held", () -> demonstration().type("11").press(Key.ENTER));
        add("sheet", "to-do", () -> demonstration().type("12").press(Key.ENTER));
        add("sheet", "booked", () -> onTheBooking().press(Key.ENTER));
        add("sheet", "wash-down-first-and-lent", () -> washedFirst().type("1").press(Key.ENTER));
        add("sheet", "makers-notice", () -> {
            Act taken = new Act.TakeIn(
                    new Act.TakeIn.Whose(Optional.empty(), "", ""),
                    Act.TakeIn.Which.known("M8"),
                    Mud.DUSTY,
                    Optional.empty(),
                    Condition.SOUND,
                    List.of(
                            new Act.Wanted("oil-quad", Payer.OWNER),
                            new Act.Wanted("brakes-front", Payer.MAKER, Optional.of("KB-22-4"))),
                    OptionalInt.of(1),
                    OptionalInt.empty(),
                    Optional.empty(),
                    "",
                    Optional.empty());
            return demonstration().done(taken).type("1").press(Key.ENTER);
        });
        add("sheet", "last-task", () -> down(demonstration().type("7").press(Key.ENTER), 40));
        add("sheet", "awkward-note", () -> down(awkward(), 4).press(Key.ENTER));
    }

    /** A side-by-side that is due for service; it went home with points to look at again, and its number allows two years. */
    private static Rehearsal knownFromPastVisits() {
        return demonstration().type("tquernby hauler").press(Key.ENTER);
    }

    private static Rehearsal yearSaid() {
        return knownFromPastVisits().type("2m").press(Key.ENTER).type("2");
    }

    /** The machine on the form is taken in; its sheet. */
    private static Rehearsal takenIn(Rehearsal form) {
        form.press(Key.ENTER);
        String tag = String.valueOf(form.day().visits().stream()
                .filter(visit -> visit.machineId().equals("M28"))
                .findFirst()
                .orElseThrow()
                .tag()
                .orElseThrow());
        return form.type(tag).press(Key.ENTER);
    }

    /** A quad that went home yesterday with tyres to watch is back. */
    private static Rehearsal backAgain() {
        Rehearsal rehearsal = demonstration();
        Act.TakeIn in = new Act.TakeIn(
                new Act.TakeIn.Whose(Optional.empty(), "", ""),
                Act.TakeIn.Which.known("M3"),
                Mud.CLEAN,
                Optional.of(Depth.ONCE_OVER),
                Condition.SOUND,
                List.of(new Act.Wanted("oil-quad", Payer.OWNER)),
                OptionalInt.of(31),
                OptionalInt.of(1935),
                Optional.empty(),
                "",
                Optional.empty());
        rehearsal.done(in).type("31").press(Key.ENTER);
        return down(rehearsal, 8);
    }

    /** The machine that is done turns out to have brakes that do not hold. */
    private static Rehearsal unridable() {
        Rehearsal rehearsal = demonstration();
        Visit done = rehearsal.day().findByTag(5).orElseThrow();
        return rehearsal.done(new Act.Tick("P1", done.id(), "brake-feel", Mark.FIX, OptionalDouble.empty(), ""));
    }

    private static void next() {
        add("next", "inspection-point", Scenes::tobin);
        add("next", "to-start", () -> demonstration().type("n1"));
        add("next", "running-over", () -> demonstration().type("n3"));
        add("next", "then-another-machine", () -> demonstration().type("n4"));
        add("next", "measured-point", () -> atMeasuredPoint(tobin()));
        add("next", "point-again", () -> tobin().type("17"));
        add("next", "all-points-done", () -> throughAllPoints(tobin()));
        add("next", "points-open-refused", () -> tobin().type("6"));
        add("next", "other-work", () -> demonstration().type("n192"));
        add("next", "nothing-planned", () -> ownShop().type("n1"));
    }

    private static void shelf() {
        add("shelf", "there", () -> demonstration().type("e"));
        add(
                "shelf",
                "short",
                () -> onThePlug()
                        .done(new Act.CountStock("washer-12", Amount.NOTHING, Optional.empty(), MARNIE_ID))
                        .type("e"));
        add("shelf", "far-down", () -> down(demonstration().type("e"), 40));
        add("shelf", "own-shop", () -> ownShop().type("e"));
        add("shelf", "which-part-on-the-sheet", () -> onThePlug().press(Key.ENTER));
        add("shelf", "which-part-on-next", () -> onThePlug().type("n1"));
        add("shelf", "which-part-asked", () -> onThePlug().type("n1*"));
        add(
                "shelf",
                "which-part-at-the-door",
                () -> demonstration()
                        .done(new Act.CountStock("washer-12", Amount.NOTHING, Optional.empty(), MARNIE_ID))
                        .type("tashenfold hauler")
                        .press(Key.ENTER)
                        .type("o")
                        .press(Key.ENTER)
                        .type("0"));
        add("shelf", "dirty-filter", Scenes::dirtyFilter);
    }

    /** Marnie is on the plug of a machine of 2014, the last year of one washer. */
    private static Rehearsal onThePlug() {
        Rehearsal rehearsal = demonstration()
                .type("tashenfold hauler")
                .press(Key.ENTER)
                .type("o")
                .press(Key.ENTER)
                .type("0")
                .press(Key.ENTER);
        String visit = idOf(rehearsal, "M54");
        for (String task : List.of("in-underside", "raise", "inspect-underside", "drain-oil")) {
            rehearsal.done(new Act.Start(MARNIE_ID, visit, task, Optional.empty()));
            rehearsal.done(new Act.Finish(MARNIE_ID, visit, task, Optional.of(Mark.GOOD)));
        }
        return rehearsal.done(new Act.Start(MARNIE_ID, visit, "oil-plug", Optional.empty()));
    }

    private static String idOf(Rehearsal rehearsal, String machineId) {
        return rehearsal.day().visits().stream()
                .filter(visit -> visit.machineId().equals(machineId))
                .map(Visit::id)
                .findFirst()
                .orElseThrow();
    }

    /** The air filter of tag 9 was found dirty; its sheet. */
    private static Rehearsal dirtyFilter() {
        Rehearsal rehearsal = demonstration();
        String visit = idOf(rehearsal, "M2");
        return rehearsal
                .done(new Act.Tick("P4", visit, "air-filter", Mark.WATCH, OptionalDouble.empty(), ""))
                .type("9")
                .press(Key.ENTER);
    }

    private static void takeIn() {
        add("take-in", "finding", () -> demonstration().type("tq"));
        add(
                "take-in",
                "makers-notice",
                () -> demonstration().type("tcorrowby burr").press(Key.ENTER).type("1"));
        add(
                "take-in",
                "wash-down-first",
                () -> demonstration()
                        .type("tharrowick burr")
                        .press(Key.ENTER)
                        .type("m")
                        .press(Key.ENTER)
                        .type("0"));
        add(
                "take-in",
                "booked-on-a-full-day",
                () -> ontoFullDay()
                        .press(Key.TAB, Key.TAB, Key.TAB, Key.TAB, Key.TAB, Key.TAB)
                        .type("thu 8"));
        add("take-in", "left-last-time", Scenes::knownFromPastVisits);
        add("take-in", "left-last-time-year-said", Scenes::yearSaid);
        add("take-in", "nothing-typed", () -> demonstration().type("t"));
        add("take-in", "choosing-work", () -> found().type("mb"));
        add("take-in", "quoted", () -> found().type("m").press(Key.ENTER).type("2"));
        add(
                "take-in",
                "quote-on-its-way",
                () -> found().withSlowRecords().type("m").press(Key.ENTER).type("2"));
        add(
                "take-in",
                "quoted-as-posted-only",
                () -> found().withSlowSearch().type("m").press(Key.ENTER).type("2"));
        add(
                "take-in",
                "another-promise",
                () -> found().type("m")
                        .press(Key.ENTER)
                        .type("2")
                        .press(Key.BACKSPACE, Key.BACKSPACE, Key.BACKSPACE, Key.BACKSPACE, Key.BACKSPACE)
                        .type("1145"));
        add(
                "take-in",
                "does-not-run",
                () -> found().type("m")
                        .press(Key.ENTER)
                        .type("3")
                        .press(Key.TAB, Key.TAB, Key.TAB)
                        .type("13"));
        add("take-in", "new-machine", () -> demonstration().type("tZeb").press(Key.ENTER));
        add("take-in", "new-class", () -> demonstration().type("tZeb").press(Key.ENTER, Key.ENTER, Key.ENTER));
        add(
                "take-in",
                "year-not-known",
                () -> demonstration()
                        .type("tZeb")
                        .press(Key.ENTER, Key.ENTER, Key.ENTER)
                        .type("2")
                        .press(Key.ENTER)
                        .type("Drobbin Hauler")
                        .press(Key.ENTER, Key.ENTER, Key.ENTER));
        add(
                "take-in",
                "here-already",
                () -> demonstration().type("tquillgate trudge").press(Key.DOWN, Key.ENTER));
    }

    private static void suggested() {
        add("suggest", "figures", () -> contradicted().type("js"));
        add("suggest", "none", () -> demonstration().type("js"));
        add("suggest", "accept", () -> contradicted().type("js").press(Key.ENTER));
        add(
                "suggest",
                "accepted",
                () -> contradicted()
                        .type("js")
                        .press(Key.ENTER)
                        .type("12468")
                        .press(Key.ENTER)
                        .measuredBy(catalogue -> catalogue));
    }

    /** By a catalogue that has much less for two things than they take. */
    private static Rehearsal contradicted() {
        return demonstration()
                .measuredBy(
                        catalogue -> figure(figure(catalogue, "inspect:quad:underside", 22), "wash:tractor:caked", 22));
    }

    private static Catalogue figure(Catalogue catalogue, String id, int minutes) {
        return Figure.find(catalogue, id).orElseThrow().in(catalogue, minutes);
    }

    private static void ring() {
        add("ring", "this-week", () -> demonstration().type("d"));
        add("ring", "four-weeks", () -> down(demonstration().type("d+++"), 30));
        add("ring", "today-found", () -> demonstration().type("d").press(Key.DOWN));
        add("ring", "today-what-they-said", () -> demonstration().type("d").press(Key.ENTER));
        add("ring", "today-late", () -> demonstration().later(300).type("d"));
        add("ring", "nobody", () -> ownShop().type("d"));
        add("ring", "what-they-said", () -> services().press(Key.DOWN, Key.ENTER));
        add("ring", "when-again", () -> services().press(Key.ENTER).type("2+0").press(Key.ENTER));
        add("ring", "rung", () -> services().press(Key.ENTER).type("1"));
        add(
                "take-in",
                "service-due",
                () -> demonstration().type("tfallowmere heeler").press(Key.ENTER));
        add("take-in", "meter", Scenes::atMeter);
        add("take-in", "meter-goes-back", () -> atMeter().type("12").press(Key.control('s')));
    }

    /** On the first of the services that are due. */
    private static Rehearsal services() {
        Rehearsal rehearsal = demonstration().type("d");
        return down(
                rehearsal,
                ((Screen.Ring) rehearsal.board().screen()).round().calls().size());
    }

    private static Rehearsal atMeter() {
        return found().type("m").press(Key.ENTER).type("2").press(Key.TAB, Key.TAB, Key.TAB, Key.TAB);
    }

    private static void questions() {
        add("questions", "whose-next", () -> demonstration().type("n"));
        add("questions", "who-starts", () -> demonstration().type("12s"));
        add(
                "questions",
                "which-of-ours",
                () -> demonstration().type("12").press(Key.ENTER).type("l"));
        add("questions", "why-held", () -> demonstration().type("9h"));
        add("questions", "hold-note", () -> demonstration().type("9h1").type("a seal, from the city"));
        add("questions", "promise", () -> demonstration().type("12p"));
        add(
                "questions",
                "time-unread",
                () -> demonstration().type("12p").type("x").press(Key.ENTER));
        add("questions", "which-work", () -> demonstration().type("9a"));
        add("questions", "who-checked", () -> demonstration().type("k1"));
        add("questions", "measured", () -> atMeasuredPoint(tobin()).type("1"));
        add(
                "questions",
                "outside-limits",
                () -> atMeasuredPoint(tobin()).type("10.8").press(Key.ENTER));
        add("questions", "not-reached", () -> tobin().type("4"));
        add(
                "questions",
                "fix-offered",
                () -> demonstration().type("7").press(Key.ENTER).type("o1"));
        add(
                "questions",
                "which-fix",
                () -> demonstration().type("7").press(Key.ENTER).type("o"));
        add("questions", "who-hands-over", () -> unridable().type("5c"));
        add("questions", "handed-told", () -> unridable().type("5c1").press(Key.ENTER));
        add("board", "left-open", () -> demonstration().nextMorning());
        add("opening", "left-open", () -> demonstration().nextMorning().type("o"));
        add("closing", "morning", () -> demonstration().type("lc"));
        add("closing", "evening", () -> demonstration().later(415).type("lc"));
        add(
                "closing",
                "left-open",
                () -> demonstration().nextMorning().type("lc").press(Key.ENTER));
        add("questions", "when-off", () -> demonstration().later(415).type("lc").press(Key.ENTER));
        add("questions", "right-times", () -> closed().type("lr").press(Key.DOWN, Key.ENTER));
        add("questions", "pin", () -> gone().type("lcc124"));
    }

    private static void add(String screen, String name, Supplier<Rehearsal> rehearsal) {
        ALL.add(new Scene(screen, name, rehearsal));
    }

    private static Rehearsal demonstration() {
        return Rehearsal.atTheDemonstration();
    }

    private static Rehearsal tobin() {
        return demonstration().type("n" + TOBIN);
    }

    private static Rehearsal found() {
        return demonstration().type("tmarrowby burr").press(Key.ENTER);
    }

    /** Being opened: the last person is away, the first hoist is checked, the second locked out. */
    private static Rehearsal halfOpened() {
        return Rehearsal.beforeOpening()
                .type("o")
                .press(Key.DOWN, Key.DOWN, Key.DOWN)
                .type(" ")
                .press(Key.DOWN)
                .type(" 2")
                .press(Key.DOWN)
                .type(" 0weeps at the ram")
                .press(Key.ENTER);
    }

    private static Rehearsal closed() {
        return gone().done(new Act.CloseDay(MARNIE_ID));
    }

    private static Rehearsal gone() {
        Rehearsal rehearsal = demonstration().later(415);
        for (String person : List.of("P2", "P3", "P4", "P1")) {
            rehearsal.done(new Act.Stop(person, true));
        }
        return rehearsal;
    }

    private static Rehearsal ownShop() {
        Rehearsal rehearsal = Rehearsal.withoutShop().type("1Cold Spring Repairs");
        rehearsal.press(Key.DOWN).type("Abelin").press(Key.DOWN, Key.DOWN).type("Fenn");
        return down(rehearsal, 9).press(Key.ENTER);
    }

    private static Rehearsal withBetterPlan(Rehearsal rehearsal) {
        Posted plan = new Posted(rehearsal.outlook().plan(), rehearsal.day().origin());
        List<String> visits =
                rehearsal.outlook().queue().stream().map(Visit::id).limit(3).toList();
        return rehearsal.told(new Msg.BetterFound(plan, Differences.of(visits.get(0), visits.get(1), visits.get(2))));
    }

    private static Rehearsal down(Rehearsal rehearsal, int rows) {
        for (int row = 0; row < rows; row++) {
            rehearsal.press(Key.DOWN);
        }
        return rehearsal;
    }

    /** Back from the last point to one at which a value is read off. */
    private static Rehearsal atMeasuredPoint(Rehearsal rehearsal) {
        throughAllPoints(rehearsal).type("7");
        while (point(rehearsal).orElseThrow().point().measure().isEmpty()) {
            rehearsal.type("7");
        }
        return rehearsal;
    }

    private static Rehearsal throughAllPoints(Rehearsal rehearsal) {
        while (point(rehearsal).isPresent()) {
            rehearsal.type("1");
            if (rehearsal.board().overlay().isPresent()) {
                rehearsal.press(Key.ENTER);
            }
        }
        return rehearsal;
    }

    private static Optional<NextPoint> point(Rehearsal rehearsal) {
        return NextPoint.of(rehearsal.board(), (Screen.Next) rehearsal.board().screen());
    }

    private static Rehearsal awkward() {
        Rehearsal rehearsal = demonstration();
        for (String name : AWKWARD_NAMES) {
            rehearsal.done(new Act.TakeIn(
                    new Act.TakeIn.Whose(Optional.empty(), name, name),
                    new Act.TakeIn.Which(Optional.empty(), "quad", name, OptionalInt.of(2020), name),
                    Mud.MUDDY,
                    Optional.empty(),
                    Condition.SOUND,
                    List.of(new Act.Wanted("oil-quad", Payer.OWNER)),
                    OptionalInt.empty(),
                    OptionalInt.of(99_999),
                    Optional.empty(),
                    name,
                    Optional.empty()));
        }
        return rehearsal;
    }

    /** An act about the first machine of the board has not come about, for another terminal was first. */
    private static Rehearsal elsewhereFirst(String refusal, boolean isOvertaken) {
        Rehearsal board = demonstration();
        Visit visit = board.day().findByTag(7).orElseThrow();
        Earlier theirs = new Earlier(
                "P2",
                board.day().origin().plusSeconds(34_680),
                "HoldVisit",
                Optional.of(visit.id()),
                Optional.of("washpad"));
        return board.told(new Msg.NotDone(
                new Act.Release(visit.id()),
                Optional.empty(),
                new Refusal(refusal, List.of("7 (Quillgate, Nettle Flat)")),
                Optional.of(theirs),
                isOvertaken));
    }
}
