package org.shedboard.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.shedboard.app.command.CheckUp;
import org.shedboard.board.Deed;
import org.shedboard.board.NamedScreen;
import org.shedboard.board.Overlay;
import org.shedboard.board.SetupForm;
import org.shedboard.board.TakeInForm;
import org.shedboard.board.UsualReason;
import org.shedboard.board.YardOrder;
import org.shedboard.board.Zoom;
import org.shedboard.day.Act;
import org.shedboard.day.Concern;
import org.shedboard.day.DoorNote;
import org.shedboard.day.Lasting;
import org.shedboard.day.Notices;
import org.shedboard.day.Round;
import org.shedboard.day.Snag;
import org.shedboard.estimate.Resolution;
import org.shedboard.forecast.Explanation;
import org.shedboard.hours.Activity;
import org.shedboard.hours.ClockCheck;
import org.shedboard.hours.HoursRules;
import org.shedboard.hours.Rounding;
import org.shedboard.learn.Aim;
import org.shedboard.learn.Lesson;
import org.shedboard.learn.Sort;
import org.shedboard.register.NumberCheck;
import org.shedboard.register.NumberKind;
import org.shedboard.register.NumberRemark;
import org.shedboard.register.Rung;
import org.shedboard.report.Report;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Hold;
import org.shedboard.shop.Mark;
import org.shedboard.shop.Mud;
import org.shedboard.shop.OwnersWord;
import org.shedboard.shop.Payer;
import org.shedboard.shop.PlaceKind;
import org.shedboard.shop.Skill;
import org.shedboard.shop.Step;
import org.shedboard.shop.VisitState;
import org.shedboard.shop.WorkKind;
import org.shedboard.store.Audit;
import org.shedboard.tally.ClosingItem;
import org.shedboard.tally.Overrun;
import org.shedboard.term.Colours;

/** Whether the program's sources and the text bundle agree: every name said is there, and nothing is there that is never said. */
class WordsTest {
    private static final Path SOURCES = Path.of("src/main/java");
    private static final String BUNDLE_FILE = "src/main/resources/org/shedboard/words/words.properties";
    private static final Pattern SAID = Pattern.compile("Words\\.say\\(\\s*\"([\\w.]+)\"\\s*([,)+])");
    private static final Pattern REFUSED = Pattern.compile("Refusal\\.of\\(\\s*\"(\\w+)\"");
    private static final Pattern LITERAL = Pattern.compile("\"([\\w.]+)\"");
    private static final Pattern PLACEHOLDER = Pattern.compile("\\{(\\d)}");

    private static final String ALL_SOURCES = read();
    private static final Set<String> NAMES = new TreeSet<>(
            ResourceBundle.getBundle("org.shedboard.words.words", Locale.ROOT).keySet());

    private static String read() {
        try (Stream<Path> files = Files.walk(SOURCES)) {
            StringBuilder all = new StringBuilder();
            for (Path file : files.filter(path -> path.toString().endsWith(".java"))
                    .sorted()
                    .toList()) {
                all.append(Files.readString(file));
            }
            return all.toString();
        } catch (IOException unread) {
            throw new UncheckedIOException(unread);
        }
    }

    @Test
    void every_name_that_the_sources_say_has_a_text() {
        List<String> said =
                found(SAID).stream().filter(name -> !name.endsWith(".")).toList();
        assertTrue(said.size() > 150, "only " + said.size() + " names were found in the sources");
        assertEquals(List.of(), said.stream().filter(name -> !Words.has(name)).toList());
    }

    @Test
    void every_refusal_has_a_sentence() {
        Set<String> refusals = found(REFUSED);
        assertTrue(refusals.size() > 40, "only " + refusals.size() + " refusals were found in the sources");
        assertEquals(
                List.of(), refusals.stream().filter(name -> !Words.has(name)).toList());
    }

    /** The enums whose constants are said, with what stands before the constant's name in the bundle. */
    static Stream<Said> enums() {
        return Stream.of(
                new Said("mud", Mud.values()),
                new Said("depth", Depth.values()),
                new Said("step", Step.values()),
                new Said("placeKind", PlaceKind.values()),
                new Said("skill", Skill.values()),
                new Said("roundWhy", Round.Why.values()),
                new Said("yardOrder", YardOrder.values()),
                new Said("zoom", Zoom.values()),
                new Said("when", When.values()),
                new Said("payer", Payer.values()),
                new Said("mark", Mark.values()),
                new Said("visitState", VisitState.values()),
                new Said("reason", Hold.Reason.values()),
                new Said("workKind", WorkKind.values()),
                new Said("otherWork", Activity.OtherWork.Kind.values()),
                new Said("break", Activity.Break.Kind.values()),
                new Said("basis", HoursRules.Basis.values()),
                new Said("cause", Overrun.Cause.Kind.values()),
                new Said("source", Explanation.Source.values()),
                new Said("closing", ClosingItem.Kind.values()),
                new Said("deed", Deed.values()),
                new Said("concern", Concern.Kind.values()),
                new Said("snag", Snag.Kind.values()),
                new Said("door", DoorNote.Kind.values()),
                new Said("scorecard.sort", Sort.values()),
                new Said("scorecard.of_sort", Sort.values()),
                new Said("scorecard.aim", Aim.values()),
                new Said("scorecard.why", Lesson.Fault.values()),
                new Said("rungSaid", Rung.Said.values()),
                new Said("doubt", Resolution.Doubt.values()),
                new Said("machine.notice", Notices.State.values()),
                new Said("ask.machine", Overlay.Purpose.MachinesField.What.values()),
                new Said("usualReason", UsualReason.values()),
                new Said("ask.owner_said", OwnersWord.Answer.values()),
                new Said("finding.word", OwnersWord.Answer.values()),
                new Said("report.word", OwnersWord.Answer.values()),
                new Said("report.section", Report.Kind.values()),
                new Said("number", NumberRemark.Kind.values()),
                new Said("numberKind", NumberKind.values()),
                new Said("numberCheck", NumberCheck.values()),
                new Said("form.field", TakeInForm.Field.values()),
                new Said("setup.field", SetupForm.Field.values()),
                new Said("setup.hint", SetupForm.Field.values()),
                new Said("lasting", Lasting.values()),
                new Said("auditKind", Audit.Kind.values()),
                new Said("clockFault", ClockCheck.Kind.values()),
                new Said("part", CheckUp.Part.values()),
                new Said("state", CheckUp.State.values()),
                new Said("doctor.colours", Colours.values()),
                new Said("picture", NamedScreen.values()));
    }

    record Said(String before, Enum<?>[] constants) {}

    @ParameterizedTest
    @MethodSource("enums")
    void every_constant_that_is_said_has_a_text_and_no_text_has_lost_its_constant(Said said) {
        Set<String> wanted = new TreeSet<>();
        for (Enum<?> constant : said.constants()) {
            wanted.add(said.before() + "." + constant.name());
        }
        Set<String> there = new TreeSet<>();
        NAMES.stream()
                .filter(name -> name.matches(Pattern.quote(said.before() + ".") + "[A-Z_]+"))
                .forEach(there::add);
        assertEquals(wanted, there);
    }

    /** One to whoever did it, and one to whoever was about to do the same at another terminal. */
    @ParameterizedTest
    @ValueSource(strings = {"done.", "did."})
    void every_act_has_a_sentence_for_when_it_is_done(String prefix) {
        Set<String> acts = new TreeSet<>();
        for (Class<?> act : Act.class.getPermittedSubclasses()) {
            acts.add(prefix + act.getSimpleName());
        }
        Set<String> there = new TreeSet<>();
        NAMES.stream().filter(name -> name.startsWith(prefix)).forEach(there::add);
        assertEquals(acts, there);
    }

    @Test
    void every_deed_says_what_it_does() {
        for (Deed deed : Deed.values()) {
            assertTrue(Words.has("deed." + deed + ".help"), deed.toString());
        }
    }

    @Test
    void every_text_of_the_bundle_is_said_somewhere() {
        Set<String> said = found(LITERAL);
        List<String> constants = enums().map(each -> each.before() + ".").toList();
        List<String> unused = NAMES.stream()
                .filter(name -> !said.contains(name))
                .filter(name -> constants.stream().noneMatch(name::startsWith))
                .filter(name -> !isOfRounding(name))
                .filter(name -> !name.startsWith("done.") && !name.startsWith("did.") && !name.startsWith("key."))
                .filter(name -> !name.startsWith("shedboard.") && !name.startsWith("mixinStandardHelpOptions."))
                .toList();
        assertEquals(List.of(), unused);
    }

    private static boolean isOfRounding(String name) {
        return Stream.<Enum<?>[]>of(Rounding.Unit.values(), Rounding.Direction.values())
                .flatMap(Arrays::stream)
                .anyMatch(constant -> name.equals("rounding." + constant));
    }

    @Test
    void no_name_stands_in_the_bundle_twice() throws IOException {
        List<String> names = new ArrayList<>();
        for (String line : Files.readAllLines(Path.of(BUNDLE_FILE))) {
            if (!line.isBlank() && !line.startsWith("#")) {
                names.add(line.substring(0, line.indexOf('=')).strip());
            }
        }
        assertEquals(NAMES.size(), names.size(), "names that stand twice: " + twice(names));
    }

    private static List<String> twice(List<String> names) {
        return names.stream()
                .filter(name -> names.indexOf(name) != names.lastIndexOf(name))
                .distinct()
                .toList();
    }

    @Test
    void values_are_put_in_from_the_first_on_and_none_is_left_out() throws IOException {
        Properties texts = new Properties();
        try (var in = Files.newBufferedReader(Path.of(BUNDLE_FILE))) {
            texts.load(in);
        }
        for (String name : texts.stringPropertyNames()) {
            Set<Integer> numbers = new TreeSet<>();
            Matcher placeholder = PLACEHOLDER.matcher(texts.getProperty(name));
            while (placeholder.find()) {
                numbers.add(Integer.parseInt(placeholder.group(1)));
            }
            int expected = 0;
            for (int number : numbers) {
                assertEquals(expected++, number, name + " leaves out a value: " + texts.getProperty(name));
            }
        }
    }

    @Test
    void a_value_that_looks_like_a_place_for_another_is_said_as_it_is() {
        assertEquals("There is no task \"{1}\" on tag 7.", Words.say("task_unknown", "{1}", "tag 7"));
    }

    private static Set<String> found(Pattern pattern) {
        Set<String> names = new TreeSet<>();
        Matcher matcher = pattern.matcher(ALL_SOURCES);
        while (matcher.find()) {
            names.add(matcher.group(1));
        }
        return names;
    }
}
