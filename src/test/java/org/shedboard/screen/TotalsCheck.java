package org.shedboard.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToIntFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.shedboard.ahead.DayAhead;
import org.shedboard.board.Board;
import org.shedboard.board.Screen;
import org.shedboard.board.Yard;
import org.shedboard.board.YardKeys;
import org.shedboard.day.Clocks;
import org.shedboard.day.Concerns;
import org.shedboard.day.Figures;
import org.shedboard.grid.Glyphs;
import org.shedboard.grid.Grid;
import org.shedboard.grid.TextWidth;
import org.shedboard.hours.DecimalHours;
import org.shedboard.hours.PersonDay;
import org.shedboard.hours.Tally.PersonHours;
import org.shedboard.shop.PlaceKind;
import org.shedboard.shop.Skill;
import org.shedboard.shop.Visit;
import org.shedboard.tally.LineTally;
import org.shedboard.tally.SpanTally;
import org.shedboard.tally.VisitTally;
import org.shedboard.words.Words;

/**
 * The numbers on a screen: a total is the sum of its parts, and a number that there is no room for ends in the sign of a cut text instead
 * of looking like a smaller one. Read from the drawn glyphs alone; what they ought to be is added up anew.
 */
final class TotalsCheck {
    private static final Pattern NUMBER = Pattern.compile("\\d+");

    /** Columns of the date before the hours of a day ahead. */
    private static final int AHEAD_DATE = 13;

    private final Board board;
    private final Grid grid;
    private final List<String> rows = new ArrayList<>();

    TotalsCheck(Board board, Grid grid) {
        this.board = board;
        this.grid = grid;
        for (int row = 0; row < grid.size().rows(); row++) {
            StringBuilder text = new StringBuilder();
            for (int column = 0; column < grid.size().columns(); column++) {
                text.append(grid.glyph(column, row));
            }
            rows.add(text.toString());
        }
    }

    void all() {
        Screen screen = board.screen();
        boolean isWhole = grid.size().columns() >= 80 && grid.size().rows() >= 24;
        if (!isWhole || board.overlay().isPresent()) {
            return;
        }
        if (screen instanceof Screen.Places places) {
            List<Visit> listed = Yard.of(board.expectOutlook());
            int cursor = Math.max(0, indexOf(listed, places.selected()));
            machines(listed, cursor);
            more();
        } else if (screen instanceof Screen.YardPage yard) {
            List<Visit> listed = YardKeys.listed(board.expectOutlook(), yard);
            machines(
                    listed,
                    YardKeys.chosen(board.expectOutlook(), yard)
                            .map(listed::indexOf)
                            .orElse(0));
            count(listed.size());
        } else if (screen instanceof Screen.Ring ring) {
            ring(ring);
        } else if (screen instanceof Screen.Hours hours) {
            board.hoursOf(hours).ifPresent(tally -> hours(hours, tally));
        } else if (screen instanceof Screen.Ahead ahead) {
            ahead.weeks().days().forEach(day -> ahead(ahead.page(), day));
        }
    }

    private static int indexOf(List<Visit> visits, Optional<String> id) {
        return visits.stream().map(Visit::id).toList().indexOf(id.orElse(""));
    }

    /** One row of the table for each machine in order, the chosen one among them, and no number but its own in it. */
    private void machines(List<Visit> listed, int cursor) {
        int heading = rowWith(Words.say("board.tag") + " " + Words.say("board.owner"));
        if (listed.isEmpty()) {
            return;
        }
        assertTrue(heading >= 0, "no heading");
        int pointer = heading + 1;
        while (pointer < rows.size() && grid.glyph(0, pointer) != Glyphs.POINTER) {
            pointer++;
        }
        assertTrue(pointer < rows.size(), "the chosen machine is not shown");
        int last = pointer;
        for (int row = heading + 1; row <= last; row++) {
            machine(heading, row, listed.get(cursor - pointer + row));
        }
    }

    private void machine(int heading, int row, Visit visit) {
        YardEntry entry = new YardEntry(board.expectOutlook(), visit);
        number(heading, row, "board.tag", entry.markedTag());
        number(heading, row, "board.minutes", entry.minutes());
        number(heading, row, "board.likely", entry.minutes());
        number(heading, row, "board.promise", entry.promise());
        number(heading, row, "board.chance", entry.chance());
        number(heading, row, "board.ready", entry.ready());
    }

    /** What stands under a heading of a column of numbers is this, or ends in the sign of a cut. */
    private void number(int heading, int row, String word, String expected) {
        int at = rows.get(heading).indexOf(Words.say(word));
        if (at < 0) {
            return;
        }
        int end = at + Words.say(word).length();
        String shown = rows.get(row).substring(0, end);
        boolean isWhole = shown.endsWith(" " + expected);
        assertTrue(isWhole || shown.charAt(end - 1) == TextWidth.CUT, word + " is not " + expected + " in " + shown);
    }

    private void count(int listed) {
        Matcher number =
                NUMBER.matcher(rows.get(0).substring(Words.say("yard.title").length()));
        boolean isSaid = rows.get(0).contains("here or due") || rows.get(0).matches(".* \\d+ of \\d+, .*");
        if (isSaid) {
            assertTrue(number.find());
            assertEquals(listed, Integer.parseInt(number.group()), rows.get(0));
        }
    }

    /** Where not all that needs the foreman fits, what is left is counted. */
    private void more() {
        Pattern pattern = Pattern.compile(Words.say("board.more", "(\\d+)") + " *");
        for (int row = 1; row < rows.size(); row++) {
            Matcher more = pattern.matcher(rows.get(row).substring(rows.get(row).length() / 2));
            if (rows.get(row).contains(Words.say("board.places"))) {
                return;
            }
            if (more.find()) {
                int all = Concerns.of(board.expectOutlook()).size()
                        + (board.better().isPresent() ? 2 : 0)
                        + board.read().drifts().size();
                assertEquals(all, row + Integer.parseInt(more.group(1)), rows.get(row));
            }
        }
    }

    private void ring(Screen.Ring ring) {
        int calls = ring.round().calls().size();
        Matcher number = NUMBER.matcher(rows.get(1));
        if (number.find()) {
            assertEquals(calls, Integer.parseInt(number.group()), rows.get(1));
        } else {
            assertTrue(calls < 2, rows.get(1));
        }
        if (ring.row() < calls + ring.list().calls().size()) {
            assertTrue(rows.stream().anyMatch(row -> row.indexOf(Glyphs.POINTER) >= 0), "nobody chosen is shown");
        }
    }

    /** The hours of a day ahead are whole: there is room for those of a dozen people. */
    private void ahead(Screen.Ahead.Page page, DayAhead day) {
        int row = rowWith(Clocks.sayDate(day.date()) + " ");
        if (row < 1) {
            return;
        }
        Set<String> own = new HashSet<>();
        if (page == Screen.Ahead.Page.SKILLS) {
            Stream.of(Skill.values()).forEach(skill -> add(own, day.people().booked(skill), day.open(skill)));
        } else {
            Stream.of(PlaceKind.values()).forEach(kind -> add(own, day.byKind().get(kind), day.open(kind)));
            add(own, day.people().booked(), day.people().open());
        }
        String hours = rows.get(row).substring(AHEAD_DATE).replaceAll("[^0-9./…-]", " ");
        for (String number : hours.strip().split(" +")) {
            assertTrue(own.contains(number), () -> number + " is none of " + own + " in " + rows.get(row));
        }
    }

    private static void add(Set<String> own, int booked, int open) {
        String said = booked == 0 ? "-" : Figures.hours(booked);
        own.add(said);
        own.add(said + "/" + Figures.hours(open));
    }

    private void machinesWorked(SpanTally tally) {
        int heading = rowWith(Words.say("tally.estimated"));
        int row = heading + 1;
        int charged = 0;
        for (VisitTally visit : tally.visits()) {
            assertEquals(visit.estimated(), sum(visit, LineTally::estimated));
            assertEquals(visit.worked(), sum(visit, LineTally::worked));
            assertEquals(visit.cleaning(), sum(visit, LineTally::cleaning));
            charged += sum(visit, line -> line.chargeable().orElse(0));
            machineWorked(heading, row, visit.estimated(), visit.worked(), visit.cleaning());
            for (LineTally line : visit.lines()) {
                row++;
                machineWorked(heading, row, line.estimated(), line.worked(), line.cleaning());
            }
            row += 2;
        }
        String total = Words.say("tally.charged_all", DecimalHours.of(charged).toPlainString());
        assertTrue(rowWith(total) > 0, total);
    }

    private static int sum(VisitTally visit, ToIntFunction<LineTally> minutes) {
        return visit.lines().stream().mapToInt(minutes).sum();
    }

    private void machineWorked(int heading, int row, int estimated, int worked, int cleaning) {
        if (row < rowWith(Words.say("tally.charged_all", "").substring(0, 10))) {
            number(heading, row, "tally.estimated", String.valueOf(estimated));
            number(heading, row, "tally.worked", String.valueOf(worked));
            number(heading, row, "tally.cleaning", String.valueOf(cleaning));
        }
    }

    private void hours(Screen.Hours screen, SpanTally tally) {
        Screen.Hours.Page page = screen.page();
        List<PersonHours> people = tally.hours().people();
        if (people.isEmpty()) {
            return;
        }
        if (page == Screen.Hours.Page.PEOPLE || page == Screen.Hours.Page.MONTH) {
            int heading = rowWith(Words.say("tally.on_machines"));
            column(heading, "tally.attended", people, PersonHours::attended);
            column(heading, "tally.on_machines", people, PersonHours::onMachines);
            column(heading, "tally.other", people, PersonHours::otherMinutes);
            column(heading, "tally.rests", people, PersonHours::rests);
            column(heading, "tally.unaccounted", people, PersonHours::unaccounted);
        } else if (page == Screen.Hours.Page.WEEK) {
            int heading = rowWith(Words.say("tally.rounding"));
            column(heading, "tally.all", people, person -> attended(tally, person.personId()));
        } else if (page == Screen.Hours.Page.MACHINES && screen.scroll() == 0) {
            machinesWorked(tally);
        }
    }

    private static int attended(SpanTally tally, String personId) {
        return tally.hours().days().stream()
                .filter(day -> day.personId().equals(personId))
                .mapToInt(PersonDay::attended)
                .sum();
    }

    /** Each row is what its person has, and the one below them all is their sum, in minutes added before they are said as hours. */
    private void column(int heading, String word, List<PersonHours> people, ToIntFunction<PersonHours> minutes) {
        int all = 0;
        BigDecimal drawn = BigDecimal.ZERO;
        for (int i = 0; i < people.size(); i++) {
            BigDecimal hours = DecimalHours.of(minutes.applyAsInt(people.get(i)));
            number(heading, heading + 1 + i, word, hours.toPlainString());
            all += minutes.applyAsInt(people.get(i));
            drawn = drawn.add(hours);
        }
        BigDecimal total = DecimalHours.of(all);
        number(heading, heading + 1 + people.size(), word, total.toPlainString());
        BigDecimal rounded = BigDecimal.valueOf(people.size() + 1).multiply(new BigDecimal("0.005"));
        assertTrue(drawn.subtract(total).abs().compareTo(rounded) <= 0, word + ": " + drawn + " are " + total);
    }

    private int rowWith(String text) {
        for (int row = 0; row < rows.size(); row++) {
            if (rows.get(row).contains(text)) {
                return row;
            }
        }
        return -1;
    }
}
