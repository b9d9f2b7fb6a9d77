package org.shedboard.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.shedboard.app.command.Answer;
import org.shedboard.app.command.CannotDo;
import org.shedboard.app.command.DayAnswer;
import org.shedboard.app.command.Globals;
import org.shedboard.app.command.SearchLimit;
import org.shedboard.app.command.Seen;
import org.shedboard.app.command.WrongUse;
import org.shedboard.day.Day;
import org.shedboard.files.Reading;
import org.shedboard.files.WordsFile;
import org.shedboard.look.Scheme;
import org.shedboard.store.StoreFailure;
import org.shedboard.term.TerminalKind;
import org.shedboard.words.OwnWords;
import org.shedboard.words.Words;

/** The program, from its arguments to its exit status. Commands and what reads them are loaded only when there are arguments. */
final class Shedboard {
    static final int DONE = 0;
    static final int COULD_NOT = 1;
    static final int WRONG = 2;

    private final Surroundings around;
    private Globals globals = Globals.USUAL;

    private Shedboard(Surroundings around) {
        this.around = around;
    }

    static int run(List<String> arguments, Surroundings around) {
        return new Shedboard(around).run(arguments);
    }

    private int run(List<String> arguments) {
        try {
            speak();
            return arguments.isEmpty() ? start() : new Commands(this).run(arguments);
        } catch (CannotDo cannot) {
            return end(COULD_NOT, List.of(cannot.getMessage()));
        } catch (StoreFailure failure) {
            return end(isBadFile(failure) ? WRONG : COULD_NOT, List.of(Words.say("app.records", failure.getMessage())));
        } catch (WrongUse wrong) {
            return end(WRONG, List.of(wrong.getMessage(), Words.say("command.hint", "shedboard COMMAND")));
        } catch (BadFile bad) {
            return end(WRONG, bad.lines());
        } catch (RuntimeException | Error fault) {
            return end(COULD_NOT, List.of(logged(fault)));
        }
    }

    private static boolean isBadFile(StoreFailure failure) {
        return failure.kind() == StoreFailure.Kind.BAD_FILE;
    }

    private int end(int status, List<String> lines) {
        voice().complain(lines);
        return status;
    }

    private String logged(Throwable fault) {
        Log log = new Log(home());
        return log.append(fault) ? Words.say("command.fault", log.file()) : Words.say("command.fault_unlogged", fault);
    }

    void with(Globals read) {
        globals = read;
        speak();
    }

    /** Says from here on what the home has texts of its own for. */
    private void speak() {
        Path file = home().resolve(WordsFile.NAME);
        Words.speak(Files.exists(file) ? own(file) : OwnWords.none());
    }

    private OwnWords own(Path file) {
        Reading<OwnWords> reading = WordsFile.read(Input.text(file, around.in()));
        return reading.value().orElseThrow(() -> new BadFile(reading.faults()));
    }

    Globals globals() {
        return globals;
    }

    Surroundings around() {
        return around;
    }

    Path home() {
        return Homes.choose(globals.home(), around.environment(), around.userHome());
    }

    private TerminalKind terminal() {
        return new TerminalKind(around.environment());
    }

    /** Whether letters are plain: as asked for, and by itself on a terminal whose locale has no others. */
    private boolean isAscii() {
        return globals.ascii() || around.hasScreen() && !terminal().isUtf8();
    }

    private Scheme scheme() {
        return globals.scheme().orElseGet(() -> terminal().scheme());
    }

    Workshops workshops() {
        return new Workshops(home(), globals);
    }

    Voice voice() {
        return new Voice(around.out(), around.err(), isAscii());
    }

    int answer(Answer answer) {
        if (globals.json()) {
            voice().json(answer.tree());
        } else {
            voice().say(answer.lines());
        }
        return DONE;
    }

    /** The full screen where there is a terminal for it, else the day as plain lines. */
    int start() {
        if (!around.hasScreen() || globals.json()) {
            return plainDay();
        }
        if (globals.at().isPresent()) {
            workshops().open().close();
        }
        try {
            FullScreen.Manner manner = new FullScreen.Manner(isAscii(), scheme(), globals.mouse());
            new FullScreen(new Log(home()), manner).run(Homes.address(home(), globals), globals, around.processors());
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        return DONE;
    }

    /** @param date whose day; today when empty */
    Seen see(Workshop workshop, Optional<LocalDate> date) {
        Day day = date.map(workshop::day).orElseGet(workshop::day);
        int threads = Math.min(SearchLimit.USEFUL_THREADS, around.processors());
        return new Seen(day, workshop.now(), SearchRun.repacking(threads), workshop);
    }

    private int plainDay() {
        try (Workshop workshop = workshops().open()) {
            return answer(DayAnswer.of(see(workshop, Optional.empty())));
        }
    }
}
