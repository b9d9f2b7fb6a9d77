package org.shedboard.app;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.shedboard.app.command.AllShopsCommand;
import org.shedboard.app.command.Answer;
import org.shedboard.app.command.BackupCommand;
import org.shedboard.app.command.BenchCommand;
import org.shedboard.app.command.CannotDo;
import org.shedboard.app.command.CheckUp;
import org.shedboard.app.command.CommandLines;
import org.shedboard.app.command.DemoCommand;
import org.shedboard.app.command.DoctorCommand;
import org.shedboard.app.command.ExportCommand;
import org.shedboard.app.command.JoinCommand;
import org.shedboard.app.command.LoadCommand;
import org.shedboard.app.command.MoveCommand;
import org.shedboard.app.command.NoticesCommand;
import org.shedboard.app.command.NumberCommand;
import org.shedboard.app.command.PackCommand;
import org.shedboard.app.command.PackTerms;
import org.shedboard.app.command.PinCommand;
import org.shedboard.app.command.PlanText;
import org.shedboard.app.command.Reply;
import org.shedboard.app.command.RestoreCommand;
import org.shedboard.app.command.Seen;
import org.shedboard.app.command.ServeCommand;
import org.shedboard.app.command.Told;
import org.shedboard.app.command.Wish;
import org.shedboard.day.Acts;
import org.shedboard.day.Day;
import org.shedboard.day.Outcome;
import org.shedboard.day.Signer;
import org.shedboard.day.Signing;
import org.shedboard.files.DayFile;
import org.shedboard.files.NoticesFile;
import org.shedboard.files.PlanFile;
import org.shedboard.files.Reading;
import org.shedboard.pack.Plan;
import org.shedboard.pack.Problem;
import org.shedboard.register.Notice;
import org.shedboard.store.Store;

/** Does what a command line asks for. */
final class Commands {
    private final Shedboard program;

    Commands(Shedboard program) {
        this.program = program;
    }

    int run(List<String> arguments) {
        CommandLines.Read read = CommandLines.read(arguments);
        if (read instanceof CommandLines.Read.Show show) {
            program.voice().say(show.lines());
            return Shedboard.DONE;
        }
        if (read instanceof CommandLines.Read.Wrong wrong) {
            program.voice().complain(wrong.lines());
            return Shedboard.WRONG;
        }
        CommandLines.Read.Asked asked = (CommandLines.Read.Asked) read;
        program.with(asked.globals());
        program.globals().atServer().ifPresent(server -> Joining.whereNeeded(program, server));
        return asked.wish().isPresent() ? perform(asked.wish().get()) : program.start();
    }

    private int perform(Wish wish) {
        if (wish instanceof Wish.OnTheDay onTheDay) {
            return onTheDay(onTheDay);
        }
        if (wish instanceof PackCommand pack) {
            return pack(pack);
        }
        if (wish instanceof BenchCommand bench) {
            boolean json = program.globals().json();
            return new Benching(program.voice(), program.around(), json).run(bench);
        }
        if (wish instanceof LoadCommand load) {
            return load(load);
        }
        if (wish instanceof BackupCommand backup) {
            return program.answer(new Safeguarding(program.workshops()).backUp(backup));
        }
        if (wish instanceof RestoreCommand restore) {
            return program.answer(new Safeguarding(program.workshops()).restore(restore));
        }
        if (wish instanceof ExportCommand export) {
            return export(export);
        }
        if (wish instanceof DemoCommand demo) {
            return demo(demo);
        }
        if (wish instanceof PinCommand pin) {
            return pin(pin);
        }
        if (wish instanceof DoctorCommand) {
            CheckUp found = new Doctor(program.around(), program.workshops()).look();
            program.answer(found.answer());
            return found.isSound() ? Shedboard.DONE : Shedboard.COULD_NOT;
        }
        if (wish instanceof NumberCommand number) {
            return program.answer(number.answer(thisYear()));
        }
        if (wish instanceof MoveCommand move) {
            return program.answer(new InDatabase(program).move(move));
        }
        if (wish instanceof AllShopsCommand all) {
            return program.answer(new InDatabase(program).allShops(all));
        }
        if (wish instanceof ServeCommand serve) {
            program.workshops().expectToWork();
            return new ServeRun(program).run(serve);
        }
        if (wish instanceof JoinCommand join) {
            return program.answer(new Joining(program, join.server()).join(join));
        }
        throw new IllegalArgumentException("nothing performs " + wish);
    }

    private int load(LoadCommand load) {
        Loading loading = new Loading(program.workshops(), PinReader.of(program.around()));
        try (InputStream in = Input.open(load.file(), program.around().in())) {
            Answer answer = Store.isRecords(Input.beginning(in))
                    ? loading.records(in)
                    : loading.load(Input.text(load.file(), in), load.by());
            return program.answer(answer);
        } catch (IOException unreadable) {
            throw new CannotDo("command.file_unreadable", load.file(), unreadable.getMessage());
        }
    }

    private int export(ExportCommand export) {
        try (Workshop workshop = program.workshops().open()) {
            return program.answer(export.answer(Output.write(export.file(), workshop.safekeeping()::export)));
        }
    }

    /** Of the demonstration where it is seen from another moment; a number is told about without any shop. */
    private int thisYear() {
        return program.globals().at().orElseGet(LocalDateTime::now).getYear();
    }

    private int onTheDay(Wish.OnTheDay wish) {
        try (Workshop workshop = program.workshops().open()) {
            Seen seen = program.see(workshop, wish.date());
            if (wish instanceof NoticesCommand notices && notices.file().isPresent()) {
                notices.give(read(notices.file().get(), seen));
            }
            Reply reply = wish.reply(seen);
            if (reply instanceof Reply.Tell tell) {
                return program.answer(tell.answer());
            }
            if (reply instanceof Reply.Print print) {
                program.voice().sayFile(print.text());
                return Shedboard.DONE;
            }
            if (reply instanceof Reply.Write write) {
                Output.write(write.file(), write.text());
                return program.answer(write.answer());
            }
            return carryOut(workshop, seen, (Reply.Carry) reply, wish.date());
        }
    }

    private List<Notice> read(Path file, Seen seen) {
        Reading<List<Notice>> reading = NoticesFile.read(
                Input.text(file, program.around().in()), seen.day().books().catalogue());
        return reading.value().orElseThrow(() -> new BadFile(reading.faults()));
    }

    private int carryOut(Workshop workshop, Seen before, Reply.Carry carry, Optional<LocalDate> date) {
        workshop.expectToWork();
        Day day = before.day();
        String who = Actor.of(carry.act(), carry.by().orElse(day.inCharge()));
        Outcome outcome = Signing.signerOf(day, carry.act())
                .map(signer -> carryOutSigned(workshop, day, carry, date, signer))
                .orElseGet(() -> workshop.carryOut(carry.act(), who, date, Optional.empty()));
        if (outcome instanceof Outcome.Refused refused) {
            throw new CannotDo(refused.refusal());
        }
        Seen after = program.see(workshop, date);
        return program.answer(Told.of(carry.act(), ((Outcome.Done) outcome).subject(), before, after));
    }

    /** Nobody is asked for their PIN for something that cannot be done anyway. */
    private Outcome carryOutSigned(
            Workshop workshop, Day day, Reply.Carry carry, Optional<LocalDate> date, Signer signer) {
        Outcome tried = Acts.apply(day, carry.act(), workshop.now());
        if (tried instanceof Outcome.Refused) {
            return tried;
        }
        SignatureReader reader = new SignatureReader(day, PinReader.of(program.around()));
        return reader.signed(
                signer,
                carry.by(),
                signature -> workshop.carryOut(carry.act(), signature.person().id(), date, Optional.of(signature)));
    }

    private int pack(PackCommand asked) {
        boolean text = asked.isText(program.globals().json());
        PackTerms terms = asked.terms(program.around().processors());
        Reading<Problem> reading =
                DayFile.read(Input.text(asked.file(), program.around().in()));
        Problem problem = reading.value().orElseThrow(() -> new BadFile(reading.faults()));
        Progress progress = new Progress(program.voice(), program.around().isWatched());
        PackRun run = new PackRun(problem, terms, progress, (plan, remark) -> print(problem, plan, remark, text));
        Thread hook = new Thread(run::interrupt, "interrupted");
        Runtime.getRuntime().addShutdownHook(hook);
        try {
            run.run();
        } finally {
            FullScreen.forget(hook);
        }
        return Shedboard.DONE;
    }

    private void print(Problem problem, Plan plan, Optional<String> remark, boolean text) {
        List<String> remarks = remark.stream().toList();
        if (text) {
            program.voice().say(remarks);
            program.voice().say(PlanText.of(problem, plan, program.around().columns()));
        } else {
            program.voice().complain(remarks);
            program.voice().sayJson(PlanFile.write(plan));
        }
    }

    private int pin(PinCommand asked) {
        try (Workshop workshop = program.workshops().open()) {
            workshop.expectToWork();
            return program.answer(new PinSetting(workshop, PinReader.of(program.around())).set(asked));
        }
    }

    private int demo(DemoCommand demo) {
        if (demo.isFresh()) {
            program.workshops().expectToWork();
            Demonstration.fresh(program.home());
        }
        program.with(program.globals().ofDemonstration());
        return program.start();
    }
}
