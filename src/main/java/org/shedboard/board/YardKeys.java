package org.shedboard.board;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.shedboard.day.Day;
import org.shedboard.day.Outlook;
import org.shedboard.register.Spelling;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Visit;
import org.shedboard.words.Words;

/** What keys do where everything is listed that is here or due. */
public final class YardKeys {
    /** As far as one press of a page key leads. */
    private static final int PAGE = 10;

    private final Board board;
    private final Screen.YardPage screen;

    YardKeys(Board board, Screen.YardPage screen) {
        this.board = board;
        this.screen = screen;
    }

    /** The machines whose words have all that is typed, in the order that was chosen. */
    public static List<Visit> listed(Outlook outlook, Screen.YardPage screen) {
        List<String> typed = words(screen.filter().text());
        return Yard.of(outlook).stream()
                .filter(visit -> isMeant(words(outlook.day(), visit), typed))
                .sorted(screen.order().comparator(outlook))
                .toList();
    }

    private static List<String> words(String text) {
        return Arrays.stream(Spelling.folded(text).split("[\\s,]+"))
                .filter(word -> !word.isEmpty())
                .toList();
    }

    private static boolean isMeant(List<String> words, List<String> typed) {
        return typed.stream().allMatch(part -> words.stream().anyMatch(word -> word.startsWith(part)));
    }

    /** What a visit is found by: its owner, its machine, what state it is in and where, its tag. */
    private static List<String> words(Day day, Visit visit) {
        Machine machine = day.machineOf(visit);
        String tag = visit.tag().stream().mapToObj(String::valueOf).collect(Collectors.joining());
        return words(Stream.of(
                        day.ownerOf(visit).name(),
                        machine.label(),
                        day.books().catalogue().expectClass(machine.classId()).name(),
                        Words.say(visit.state()),
                        Words.say(visit.intake().mud()),
                        visit.standsIn().orElse(""),
                        tag)
                .collect(Collectors.joining(" ")));
    }

    /** The machine that the keys are about; the first that is listed while none is chosen. */
    public static Optional<Visit> chosen(Outlook outlook, Screen.YardPage screen) {
        List<Visit> listed = listed(outlook, screen);
        return screen.selected()
                .flatMap(id ->
                        listed.stream().filter(visit -> visit.id().equals(id)).findFirst())
                .or(() -> listed.stream().findFirst());
    }

    /** From the board, with the machine chosen that is chosen there. */
    static Board open(Board board) {
        Screen.YardPage yard = board.screen() instanceof Screen.Places places
                ? Screen.YardPage.START.select(
                        Subject.selected(board.expectOutlook(), places).map(Visit::id))
                : Screen.YardPage.START;
        return board.screen() instanceof Screen.Crew ? board.with(yard) : board.on(yard);
    }

    static List<Binding> of(Board board, Screen.YardPage screen, List<Binding> aboutTheVisit) {
        boolean any = chosen(board.expectOutlook(), screen).isPresent();
        List<Binding> keys = new ArrayList<>();
        keys.add(Binding.when(any, Key.ENTER, Deed.SHEET, "off.nothing_selected"));
        keys.add(Binding.on('/', Deed.FILTER_YARD));
        keys.add(Binding.on('o', Deed.ORDER_YARD));
        keys.add(Binding.on(Key.TAB, Deed.CREW_DAY));
        keys.add(Binding.on('t', Deed.TAKE_IN));
        keys.addAll(aboutTheVisit);
        keys.add(Binding.on('n', Deed.NEXT));
        keys.add(Binding.on(Key.UP, Deed.UP));
        keys.add(Binding.on(Key.DOWN, Deed.DOWN));
        keys.add(Binding.on('?', Deed.HELP));
        keys.add(Binding.on(Key.BACK_TAB, Deed.BACK));
        keys.add(Binding.on(Key.ESCAPE, screen.filter().isBlank() ? Deed.BACK : Deed.SHOW_WHOLE_YARD));
        return keys;
    }

    Turn perform(Deed deed) {
        return switch (deed) {
            case FILTER_YARD -> Turn.to(board.with(screen.typing(true)));
            case ORDER_YARD -> Turn.to(board.with(screen.in(screen.order().next())));
            case SHOW_WHOLE_YARD -> Turn.to(board.with(screen.filtered(Typing.EMPTY)));
            default -> throw new IllegalStateException(deed + " is no key of this screen");
        };
    }

    /** While a filter is typed: Enter keeps it, Escape drops it, the arrows choose. */
    Turn press(Key key) {
        Board heard = board.withoutNote();
        return Turn.to(
                switch (key.kind()) {
                    case ENTER, TAB -> heard.with(screen.typing(false));
                    case ESCAPE -> heard.with(screen.filtered(Typing.EMPTY).typing(false));
                    case UP -> moved(-1);
                    case DOWN -> moved(1);
                    case PAGE_UP -> moved(-PAGE);
                    case PAGE_DOWN -> moved(PAGE);
                    default -> heard.with(screen.filtered(screen.filter().with(key)));
                });
    }

    Board moved(int by) {
        List<Visit> listed = listed(board.expectOutlook(), screen);
        if (listed.isEmpty()) {
            return board;
        }
        int index = chosen(board.expectOutlook(), screen).map(listed::indexOf).orElse(0);
        int next = Math.max(0, Math.min(listed.size() - 1, index + by));
        return board.with(screen.select(Optional.of(listed.get(next).id())));
    }
}
