package org.shedboard.screen;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.shedboard.board.Board;
import org.shedboard.board.DoorWords;
import org.shedboard.board.Key;
import org.shedboard.board.MinuteWords;
import org.shedboard.board.NumberWords;
import org.shedboard.board.TakeInForm;
import org.shedboard.board.TakeInForm.Field;
import org.shedboard.board.TakeInReading;
import org.shedboard.day.Clocks;
import org.shedboard.day.Day;
import org.shedboard.day.DoorNote;
import org.shedboard.day.Quote;
import org.shedboard.day.WhySoLong;
import org.shedboard.estimate.Estimate;
import org.shedboard.estimate.MachineClass;
import org.shedboard.estimate.Work;
import org.shedboard.forecast.Explanation;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Glyphs;
import org.shedboard.grid.Region;
import org.shedboard.grid.Style;
import org.shedboard.grid.TextWidth;
import org.shedboard.register.IdNumber;
import org.shedboard.register.Notice;
import org.shedboard.register.NumberKind;
import org.shedboard.shop.Condition;
import org.shedboard.shop.Machine;
import org.shedboard.words.Words;

/** Taking a machine in: the fields at the left; at the right what there is to choose, what it takes and what can be promised. */
final class TakeInView {
    private static final int LABEL = 13;

    /** Columns of the fields while the machines found need the rest. */
    private static final int FINDING = 28;

    private final Canvas canvas;
    private final Board board;
    private final TakeInForm form;
    private final Day day;
    private final TakeInReading reading;

    TakeInView(Canvas canvas, Board board, TakeInForm form) {
        this.canvas = canvas;
        this.board = board;
        this.form = form;
        this.day = board.expectDay();
        this.reading = TakeInReading.of(board, form);
    }

    void draw(Region page) {
        Header.draw(canvas, page.row(0), board, Words.say("form.take_in"));
        Region body = page.below(2);
        int left = form.field() == Field.FIND ? FINDING : Math.min(56, body.width() / 2);
        fields(body.left(left).inside(1, 0));
        Region side = body.rightOf(left + 1);
        if (form.field() == Field.FIND) {
            matches(side);
        } else if (form.field() == Field.CLASS) {
            classes(side);
        } else if (form.field() == Field.WORK) {
            works(doorNotes(side));
        } else {
            estimate(doorNotes(side));
        }
    }

    /** What is to be known before a time is said, in no more than a third of the room. */
    private Region doorNotes(Region region) {
        Region rest = region;
        int room = region.height() / 3;
        List<DoorNote> notes = reading.doorNotes();
        for (int i = 0; i < notes.size(); i++) {
            int lines =
                    TextWidth.wrap(DoorWords.of(notes.get(i)), region.width()).size();
            boolean isLast = i == notes.size() - 1;
            if (region.height() - rest.height() + lines + (isLast ? 0 : 1) > room) {
                return line(rest, Words.say("door.more", notes.size() - i), Style.DANGER);
            }
            rest = canvas.paragraph(rest, DoorWords.of(notes.get(i)), Style.DANGER);
        }
        return rest;
    }

    private void fields(Region region) {
        int row = 0;
        for (Field field : Field.values()) {
            if (form.shows(field)) {
                field(region.row(row), field);
                pointAt(region.row(row), row);
                row++;
            }
        }
        canvas.paragraph(region.below(row + 1), hint(), Style.QUIET);
    }

    /** While the machine is not found, the other fields have to wait. */
    private void pointAt(Region at, int row) {
        if (form.field() != Field.FIND) {
            long cursor = Stream.of(Field.values())
                    .limit(form.field().ordinal())
                    .filter(form::shows)
                    .count();
            Press.field(canvas, at, row, (int) cursor);
        }
    }

    private void field(Region row, Field field) {
        boolean active = field == form.field();
        if (active) {
            canvas.fill(new Region(row.left() - 1, row.top(), 1, 1), Glyphs.POINTER, Style.STRONG);
        }
        canvas.text(row.left(LABEL), Words.say("form.field." + field), active ? Style.STRONG : Style.NORMAL);
        if (form.field() == Field.FIND && !active) {
            return;
        }
        Region value = row.rightOf(LABEL);
        Optional<String> chosen = chosen(field);
        if (chosen.isPresent()) {
            Style style = active ? Style.SELECTED : Style.FIELD;
            canvas.fill(value, style);
            canvas.text(value, chosen.get(), style);
        } else {
            OverlayView.field(canvas, value, form.typing(field), active);
        }
    }

    /** What stands in a field that is chosen, not typed. */
    private Optional<String> chosen(Field field) {
        return switch (field) {
            case FIND ->
                form.field() == Field.FIND
                        ? Optional.empty()
                        : reading.machine().map(this::machine);
            case CLASS -> Optional.of(reading.classId().map(id -> className(id)).orElse(""));
            case WORK -> Optional.of(wanted());
            case MUD ->
                Optional.of(form.mud()
                        .map(mud -> mud.grade() + " " + Words.say(mud))
                        .orElse(""));
            case DEPTH -> Optional.of(form.depth().map(Words::say).orElse(Words.say("form.depth_usual")));
            case CONDITION -> Optional.of(condition());
            default -> Optional.empty();
        };
    }

    /** The work and the makers' notices, and what is typed of a key. */
    private String wanted() {
        List<String> wanted = new ArrayList<>();
        form.workIds()
                .forEach(id -> wanted.add(day.books().catalogue().expectWork(id).name()));
        form.noticeIds().forEach(id -> wanted.add(Words.say("form.notice_wanted", id)));
        String typed = form.text(Field.WORK);
        return String.join(" + ", wanted) + (typed.isEmpty() ? "" : " " + typed + "_");
    }

    private String className(String id) {
        return day.books().catalogue().findClass(id).map(MachineClass::name).orElse(id);
    }

    private String machine(Machine machine) {
        return day.books().expectOwner(machine.ownerId()).name() + ", " + machine.label();
    }

    /** Tells two machines of one owner and model apart. */
    private static String year(Machine machine) {
        return machine.modelYear().isPresent() ? ", " + machine.modelYear().getAsInt() : "";
    }

    private String condition() {
        Condition is = form.condition();
        if (is.drives()) {
            return Words.say("form.condition.good");
        }
        List<String> wrong = new ArrayList<>();
        add(wrong, is.runs(), "form.condition.runs");
        add(wrong, is.rolls(), "form.condition.rolls");
        add(wrong, is.steers(), "form.condition.steers");
        add(wrong, is.stops(), "form.condition.stops");
        return Words.say("form.condition.not", String.join("/", wrong));
    }

    private static void add(List<String> wrong, boolean is, String name) {
        if (!is) {
            wrong.add(Words.say(name));
        }
    }

    private String hint() {
        return switch (form.field()) {
            case FIND -> Words.say("form.find_hint");
            case CLASS ->
                Words.say("form.class_hint", day.books().catalogue().classes().size());
            case WORK -> Words.say("form.work_hint");
            case MUD -> Words.say("form.mud_hint");
            case METER -> Words.say("form.meter_hint");
            case DEPTH -> Words.say("form.depth_hint");
            case NUMBER -> numberHint();
            case YEAR -> yearHint();
            case CONDITION -> Words.say("form.condition_hint");
            case PROMISE -> promiseHint();
            case EXPECTED ->
                reading.time(Field.EXPECTED)
                        .map(at -> Words.say("form.time_hint", Clocks.sayTime(day, at)))
                        .orElse(Words.say("form.expected_hint"));
            default -> "";
        };
    }

    /** What is made of the number while it is typed; of a few characters there is nothing to make yet. */
    private String numberHint() {
        IdNumber number = IdNumber.of(form.text(Field.NUMBER));
        return number.kind() == NumberKind.NONE
                ? Words.say("form.number_hint")
                : NumberWords.mark(number.typed()).orElseGet(() -> NumberWords.about(number));
    }

    private String yearHint() {
        List<Integer> years =
                IdNumber.of(form.text(Field.NUMBER)).years(day.date().getYear());
        return years.isEmpty() ? Words.say("form.year_hint") : Words.say("machine.years", NumberWords.years(years));
    }

    private String promiseHint() {
        Optional<Instant> at = reading.time(Field.PROMISE);
        if (at.isEmpty()) {
            return Words.say("form.promise_hint");
        }
        OptionalInt chance = reading.chanceBy(at.get());
        String time = Clocks.sayTime(day, at.get());
        String read = chance.isPresent()
                ? Words.say("form.chance_hint", time, chance.getAsInt())
                : Words.say("form.time_hint", time);
        return read + ". " + Words.say("form.promise_hint");
    }

    private void matches(Region region) {
        canvas.text(region.row(0), Words.say("form.matches"), Style.STRONG);
        List<String> lines = new ArrayList<>();
        reading.matches().forEach(machine -> lines.add(machine(machine) + year(machine)));
        String typed = form.text(Field.FIND).isBlank() ? "" : ": " + form.text(Field.FIND);
        lines.add(Words.say("form.new_machine", typed));
        int rows = region.height() - 1;
        int first = Math.max(0, form.picked() - rows + 1);
        for (int row = 0; row < rows && first + row < lines.size(); row++) {
            boolean picked = first + row == form.picked();
            Style style = picked ? Style.SELECTED : Style.NORMAL;
            Press.row(canvas, region.row(row + 1), first + row, form.picked());
            canvas.fill(region.row(row + 1), picked ? Glyphs.POINTER : ' ', style);
            canvas.fill(region.row(row + 1).rightOf(1), style);
            canvas.text(region.row(row + 1).rightOf(2), lines.get(first + row), style);
        }
    }

    private void classes(Region region) {
        int row = 0;
        for (MachineClass each : day.books().catalogue().classes()) {
            canvas.text(canvas.text(region.row(row), row + 1 + " ", Style.KEY), each.name(), Style.NORMAL);
            Press.key(canvas, region.row(row), Key.of((char) ('1' + row)));
            row++;
        }
    }

    private void works(Region region) {
        canvas.text(region.row(0), Words.say("form.works"), Style.STRONG);
        int row = 1;
        for (Work work : reading.works()) {
            boolean wanted = form.workIds().contains(work.id());
            Region rest = canvas.text(region.row(row), "%-3s".formatted(work.key()), Style.KEY);
            Region name = canvas.text(rest, wanted ? Glyphs.TICK + " " : "  ", Style.GOOD);
            canvas.text(name, work.name(), wanted ? Style.SELECTED : Style.NORMAL);
            canvas.spot(region.row(row), new Press(typing(work)));
            row++;
        }
        notices(region.below(row));
    }

    /** A half typed key goes first; a key that can become a longer one is meant as it is. */
    private List<Key> typing(Work work) {
        List<Key> keys = new ArrayList<>(form.text(Field.WORK).isEmpty() ? List.of() : List.of(Key.BACKSPACE));
        work.key().chars().forEach(letter -> keys.add(Key.of((char) letter)));
        boolean canGrow = reading.works().stream()
                .anyMatch(
                        other -> !other.key().equals(work.key()) && other.key().startsWith(work.key()));
        if (canGrow) {
            keys.add(Key.ENTER);
        }
        return keys;
    }

    private void notices(Region region) {
        List<Notice> notices = reading.notices();
        for (int i = 0; i < notices.size(); i++) {
            boolean wanted = form.noticeIds().contains(notices.get(i).id());
            Region rest = canvas.text(region.row(i), "%-3s".formatted(i + 1), Style.KEY);
            Region name = canvas.text(rest, wanted ? Glyphs.TICK + " " : "  ", Style.GOOD);
            Press.key(canvas, region.row(i), Key.of((char) ('1' + i)));
            String text = Words.say("form.notice", notices.get(i).title());
            canvas.text(name, text, wanted ? Style.SELECTED : Style.NORMAL);
        }
    }

    private void estimate(Region region) {
        if (form.answer().isEmpty()) {
            if (form.round() > 0) {
                canvas.text(region.row(0), Words.say("form.quoting"), Style.QUIET);
            }
            return;
        }
        if (form.answer().get() instanceof Quote.Answer.NotGiven not) {
            canvas.paragraph(
                    region, Words.say(not.refusal().name(), not.refusal().values()), Style.DANGER);
            return;
        }
        Quote quote = ((Quote.Answer.Given) form.answer().get()).quote();
        Region rest = offers(region, quote);
        breakdown(rest, quote.estimate());
    }

    private Region offers(Region region, Quote quote) {
        Region rest = region;
        if (quote.asPosted().isEmpty() && quote.repacked().isEmpty() && !quote.isRepacking()) {
            rest = line(rest, Words.say("form.not_in_time"), Style.DANGER);
        }
        if (quote.asPosted().isPresent()) {
            rest = line(rest, offer("form.as_posted", quote.asPosted().get()), Style.STRONG);
        }
        if (quote.isRepacking()) {
            rest = line(rest, Words.say("form.repacking"), Style.QUIET);
        }
        if (quote.repacked().isPresent()) {
            rest = line(rest, offer("form.repacked", quote.repacked().get()), Style.NORMAL);
        }
        for (Quote.Endangered other : quote.endangered()) {
            rest = line(rest, Words.say("form.endangers", other.name(), other.chance()), Style.DANGER);
        }
        rest = line(
                rest,
                Words.say("form.total", quote.range().likely(), quote.range().safe()),
                Style.STRONG);
        return parts(canvas.paragraph(rest, MinuteWords.toOwner(quote.why()), Style.NORMAL), quote.why());
    }

    /** Where the likely minutes come from. */
    private Region parts(Region region, WhySoLong why) {
        Region rest = region;
        for (Explanation.Part part : MinuteWords.parts(why)) {
            rest = item(rest, Words.say(part.source()), MinuteWords.minutes(part), Style.NORMAL);
        }
        return rest;
    }

    private Region item(Region region, String name, String minutes, Style style) {
        canvas.text(canvas.textRight(region.row(0), minutes, style).leftOf(1), name, style);
        return region.below(1);
    }

    private String offer(String name, Quote.Offer offer) {
        return Words.say(name, Clocks.sayTime(day, offer.promise()), offer.chance());
    }

    private void breakdown(Region region, Estimate estimate) {
        Region rest = region;
        int left = estimate.items().size();
        for (Estimate.Item item : estimate.items()) {
            if (rest.height() == 1 && left > 1) {
                canvas.text(rest, Words.say("form.more", left), Style.QUIET);
                return;
            }
            left--;
            String name = item.points() > 0 ? Words.say("form.item_points", item.name(), item.points()) : item.name();
            rest = item(rest, name, String.valueOf(item.minutes()), Style.QUIET);
        }
    }

    private Region line(Region region, String text, Style style) {
        canvas.text(region.row(0), text, style);
        return region.below(1);
    }
}
