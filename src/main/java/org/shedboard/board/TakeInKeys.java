package org.shedboard.board;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.shedboard.board.TakeInForm.Field;
import org.shedboard.day.Refusal;
import org.shedboard.estimate.MachineClass;
import org.shedboard.estimate.Work;
import org.shedboard.register.IdNumber;
import org.shedboard.register.Notice;
import org.shedboard.register.Reading;
import org.shedboard.shop.Condition;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Mud;
import org.shedboard.words.Words;

/**
 * What keys do on the take-in form.
 *
 * <p>The usual way through is find, Enter, the key of the work, Enter, the mud grade, Enter: the grade leads straight to the
 * promise, which is filled in from the quote, and Enter there takes the machine in. All other fields are below it.
 */
final class TakeInKeys {
    private final Board board;
    private final TakeInForm form;
    private final TakeInReading reading;

    TakeInKeys(Board board, TakeInForm form) {
        this.board = board;
        this.form = form;
        this.reading = TakeInReading.of(board, form);
    }

    Turn press(Key key) {
        if (key.kind() == Key.Kind.ESCAPE) {
            return Turn.to(board.keeping(Optional.of(form).filter(TakeInForm::isTouched))
                    .back());
        }
        if (key.isControl('s')) {
            return save();
        }
        return switch (key.kind()) {
            case TAB -> onward();
            case BACK_TAB -> show(form.backward());
            case UP ->
                form.field() == Field.FIND ? show(form.pick(Math.max(0, form.picked() - 1))) : show(form.backward());
            case DOWN -> form.field() == Field.FIND ? show(form.pick(form.picked() + 1)) : onward();
            case ENTER -> enter();
            default -> type(key);
        };
    }

    private Turn enter() {
        return switch (form.field()) {
            case FIND -> found();
            case WORK -> enterWork();
            case MUD -> form.mud().isEmpty() ? refuse("form.which_mud") : show(form.onward());
            case PROMISE -> isQuoting() ? refuse("form.quoting") : save();
            case NOTE -> save();
            default -> onward();
        };
    }

    /** Who leaves the number is asked for the year, where the number says anything about it and nobody else has. */
    private Turn onward() {
        return form.field() == Field.NUMBER && form.typing(Field.YEAR).isBlank()
                ? askingYear(form.onward(), form.text(Field.NUMBER))
                : show(form.onward());
    }

    /**
     * Shows the form, and over it the years that a number allows. Enter takes the year only where there is no other: between two of
     * them nobody guesses.
     */
    private Turn askingYear(TakeInForm next, String number) {
        List<Integer> years = IdNumber.of(number).years(board.expectDay().date().getYear());
        Turn shown = show(next);
        if (years.isEmpty()) {
            return shown;
        }
        ChoiceList choices = new ChoiceList();
        TakeInForm chosen = next.at(Field.WORK);
        years.forEach(year -> choices.add(
                String.valueOf(year),
                Optional.empty(),
                screen(chosen.withText(Field.YEAR, Typing.of(String.valueOf(year))))));
        choices.add(Words.say("ask.another_year"), Optional.empty(), screen(next.at(Field.YEAR)));
        choices.add(Words.say("machine.not_known"), Optional.empty(), screen(chosen));
        Overlay.Choose ask = (Overlay.Choose) choices.titled(Words.say("ask.year_of_number", NumberWords.years(years)));
        return Turn.to(shown.board().asking(years.size() == 1 ? ask : ask.select(-1)));
    }

    private static Overlay.Reply screen(TakeInForm next) {
        return new Overlay.Reply.Show(new Screen.TakeIn(next));
    }

    /** Enter takes a key that is typed in full although it might become a longer one; otherwise it leads on. */
    private Turn enterWork() {
        Optional<Work> typed = reading.works().stream()
                .filter(work -> work.key().equals(form.text(Field.WORK)))
                .findFirst();
        if (typed.isPresent()) {
            return quoted(form.toggle(typed.get().id()).withText(Field.WORK, Typing.EMPTY));
        }
        return form.isWanted() ? show(form.onward()) : refuse("form.which_work");
    }

    private Turn found() {
        List<Machine> matches = reading.matches();
        if (form.picked() < matches.size()) {
            Machine machine = matches.get(form.picked());
            return Found.visitOf(board.expectDay(), machine)
                    .map(visit -> refuse("form.already_here"))
                    .orElseGet(() -> known(machine));
        }
        TakeInForm typed = form.isKnownMachine() ? form.withoutNumberAndYear() : form;
        TakeInForm fresh = typed.withMachine(Optional.empty()).at(Field.OWNER);
        return show(fresh.typing(Field.OWNER).isBlank() ? fresh.withText(Field.OWNER, form.typing(Field.FIND)) : fresh);
    }

    /** A machine of which we do not know the year is asked for it. */
    private Turn known(Machine machine) {
        TakeInForm next = form.withoutNumberAndYear()
                .withMachine(Optional.of(machine.id()))
                .at(Field.WORK);
        return machine.modelYear().isPresent()
                ? show(next)
                : askingYear(next.withText(Field.NUMBER, Typing.of(machine.number())), machine.number());
    }

    private Turn type(Key key) {
        return switch (form.field()) {
            case FIND ->
                show(form.withText(Field.FIND, form.typing(Field.FIND).with(key))
                        .pick(0));
            case CLASS -> chooseClass(key);
            case WORK -> chooseWork(key);
            case MUD -> chooseMud(key);
            case DEPTH -> chooseDepth(key);
            case CONDITION -> chooseCondition(key);
            case EXPECTED -> quoted(typed(key));
            case METER -> isMeterOrEditing(key) ? show(typed(key)) : Turn.to(board);
            case YEAR, TAG -> isDigitOrEditing(key) ? show(typed(key)) : Turn.to(board);
            default -> show(typed(key));
        };
    }

    /** A time that nobody has seen yet is not promised by an Enter too many. */
    private boolean isQuoting() {
        return form.round() > 0 && (form.answer().isEmpty() || reading.isOfferStillOpen());
    }

    private TakeInForm typed(Key key) {
        return form.withText(form.field(), form.typing(form.field()).with(key));
    }

    private static boolean isDigitOrEditing(Key key) {
        return !key.isCharacter() || Character.isDigit(key.character());
    }

    private static boolean isMeterOrEditing(Key key) {
        return !key.isCharacter() || MeterTyping.takes(key.character());
    }

    private Turn chooseClass(Key key) {
        List<MachineClass> classes = board.expectDay().books().catalogue().classes();
        int index = key.isCharacter() ? key.character() - '1' : -1;
        return index < 0 || index >= classes.size()
                ? Turn.to(board)
                : show(form.withClass(classes.get(index).id()));
    }

    /** Keys of one or two letters: a letter that can still become a longer key waits for the next one. */
    private Turn chooseWork(Key key) {
        if (key.kind() == Key.Kind.BACKSPACE) {
            List<String> fewer = new ArrayList<>(form.workIds());
            if (form.typing(Field.WORK).isBlank() && !fewer.isEmpty()) {
                fewer.remove(fewer.size() - 1);
            }
            return quoted(form.withText(Field.WORK, Typing.EMPTY).withWorks(fewer));
        }
        if (!key.isCharacter() || key.is(' ')) {
            return Turn.to(board);
        }
        if (Character.isDigit(key.character())) {
            return chooseNotice(key.character() - '1');
        }
        String typed = (form.text(Field.WORK) + key.character()).toLowerCase(Locale.ROOT);
        List<Work> begin = reading.works().stream()
                .filter(work -> work.key().startsWith(typed))
                .toList();
        Optional<Work> exact =
                begin.stream().filter(work -> work.key().equals(typed)).findFirst();
        if (begin.isEmpty()) {
            return show(form.withText(Field.WORK, Typing.EMPTY));
        }
        if (exact.isPresent() && begin.size() == 1) {
            return quoted(form.toggle(exact.get().id()).withText(Field.WORK, Typing.EMPTY));
        }
        return show(form.withText(Field.WORK, Typing.of(typed)));
    }

    /** A maker's notice by its digit. */
    private Turn chooseNotice(int index) {
        List<Notice> notices = reading.notices();
        return index < 0 || index >= notices.size()
                ? Turn.to(board)
                : quoted(form.toggleNotice(notices.get(index).id()));
    }

    private Turn chooseMud(Key key) {
        int grade = key.isCharacter() ? key.character() - '0' : -1;
        return grade < 0 || grade >= Mud.values().length
                ? Turn.to(board)
                : quoted(form.withMud(Mud.of(grade)).at(Field.PROMISE));
    }

    private Turn chooseDepth(Key key) {
        int index = key.isCharacter() ? key.character() - '1' : -1;
        if (key.kind() == Key.Kind.BACKSPACE) {
            return quoted(form.withDepth(Optional.empty()));
        }
        return index < 0 || index >= Depth.values().length
                ? Turn.to(board)
                : quoted(form.withDepth(Optional.of(Depth.values()[index])));
    }

    private Turn chooseCondition(Key key) {
        Condition is = form.condition();
        Optional<Condition> next = switch (key.isCharacter() ? key.character() : ' ') {
            case '1' -> Optional.of(new Condition(!is.runs(), is.rolls(), is.steers(), is.stops()));
            case '2' -> Optional.of(new Condition(is.runs(), !is.rolls(), is.steers(), is.stops()));
            case '3' -> Optional.of(new Condition(is.runs(), is.rolls(), !is.steers(), is.stops()));
            case '4' -> Optional.of(new Condition(is.runs(), is.rolls(), is.steers(), !is.stops()));
            default -> Optional.empty();
        };
        return next.map(condition -> quoted(form.withCondition(condition))).orElse(Turn.to(board));
    }

    /** Shows the form and asks what it takes, once enough is known. */
    private Turn quoted(TakeInForm next) {
        TakeInReading read = TakeInReading.of(board, next);
        if (!read.isQuotable()) {
            return show(next.answered(Optional.empty()));
        }
        TakeInForm asked = next.nextRound();
        return show(asked).plus(new Effect.AskQuote(read.act(), asked.round()));
    }

    /** The quote has come: it fills in the promise while nothing is typed there, or what stands there is an earlier quote. */
    static Board answered(Board board, TakeInForm form, Msg.Quoted quoted) {
        if (quoted.round() != form.round()) {
            return board;
        }
        TakeInReading before = TakeInReading.of(board, form);
        boolean untouched = form.typing(Field.PROMISE).isBlank()
                || before.offer()
                        .map(offer -> Moments.typed(board.expectDay(), offer.promise()))
                        .filter(form.text(Field.PROMISE)::equals)
                        .isPresent();
        TakeInForm next = form.answered(Optional.of(quoted.answer()));
        Optional<String> suggested =
                TakeInReading.of(board, next).offer().map(offer -> Moments.typed(board.expectDay(), offer.promise()));
        if (untouched && suggested.isPresent()) {
            next = next.withText(Field.PROMISE, Typing.of(suggested.get()));
        }
        return board.with(new Screen.TakeIn(next));
    }

    private Turn save() {
        Optional<String> fault = reading.fault();
        if (fault.isPresent()) {
            return Turn.to(board.noting(Note.refused(fault.get())));
        }
        return reading.meterQuestion()
                .map(question -> Turn.to(board.asking(isItMisread(question))))
                .orElseGet(() -> Turn.to(board.saving(1), new Effect.CarryOut(reading.act())));
    }

    /** A meter that goes back or leaps: nothing is believed, nothing refused, before somebody has said what it is. */
    private Overlay isItMisread(Refusal question) {
        TakeInForm again = form.withText(Field.METER, Typing.EMPTY).at(Field.METER);
        return new ChoiceList()
                .add(Words.say("ask.meter_misread"), Optional.empty(), new Overlay.Reply.Show(new Screen.TakeIn(again)))
                .carry(Words.say("ask.meter_new"), reading.act().told(Reading.Told.NEW_METER))
                .carry(Words.say("ask.meter_right"), reading.act().told(Reading.Told.RIGHT_AS_TYPED))
                .titled(Words.say(asked(question), question.values()));
    }

    /** On the screen the answers stand below; the sentence of the refusal names the options of the command line. */
    private static String asked(Refusal question) {
        return switch (question.name()) {
            case "meter_backwards" -> "ask.meter_backwards";
            case "meter_impossible" -> "ask.meter_impossible";
            case "meter_leap" -> "ask.meter_leap";
            default -> "ask.meter_other_unit";
        };
    }

    private Turn show(TakeInForm next) {
        int last = TakeInReading.of(board, next).matches().size();
        TakeInForm shown = next.field() == Field.FIND && next.picked() > last ? next.pick(last) : next;
        return Turn.to(board.withoutNote().with(new Screen.TakeIn(shown)));
    }

    private Turn refuse(String name) {
        return Turn.to(board.noting(Note.refused(Words.say(name))));
    }
}
