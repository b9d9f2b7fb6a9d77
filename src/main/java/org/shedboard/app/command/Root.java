package org.shedboard.app.command;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.shedboard.look.Scheme;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;

/** The program's own name on the command line, with what may be said before or after every command. */
@Command(
        name = "shedboard",
        scope = ScopeType.INHERIT,
        mixinStandardHelpOptions = true,
        resourceBundle = "org.shedboard.words.words",
        versionProvider = Version.class,
        usageHelpWidth = 100)
final class Root {
    /** All commands, in the order in which they are listed. */
    static final List<Class<?>> COMMANDS = List.of(
            DayCommand.class,
            NextCommand.class,
            OpeningCommands.Open.class,
            OpeningCommands.Check.class,
            OpeningCommands.Close.class,
            TakeInCommand.class,
            PromiseCommand.class,
            EstimateCommand.class,
            WhyCommand.class,
            WhatIfCommand.class,
            FloorCommands.Start.class,
            FloorCommands.Finish.class,
            FloorCommands.Pause.class,
            FloorCommands.Tick.class,
            FloorCommands.Other.class,
            FloorCommands.TakeBreak.class,
            FloorCommands.Lend.class,
            FloorCommands.Back.class,
            FloorCommands.Stop.class,
            FloorCommands.Leave.class,
            FloorCommands.StayUntil.class,
            MachineCommands.HoldVisit.class,
            MachineCommands.Release.class,
            MachineCommands.HandOver.class,
            MachineCommands.AddWork.class,
            MachineCommands.Arrive.class,
            MachineCommands.Collect.class,
            MachineCommands.CallOff.class,
            OwnerCommand.class,
            NoticesCommand.class,
            InsistCommands.Insist.class,
            InsistCommands.Lift.class,
            LoanCommands.Lend.class,
            LoanCommands.Back.class,
            LoanCommands.All.class,
            FixCommand.class,
            ReportCommand.class,
            WearCommand.class,
            HoursCommands.PlanErrand.class,
            HoursCommands.RunErrand.class,
            HoursCommands.DropErrand.class,
            HoursCommands.Agree.class,
            HoursCommands.Rules.class,
            UpkeepCommands.Ring.class,
            UpkeepCommands.NoteCall.class,
            UpkeepCommands.ReadMeter.class,
            CorrectCommand.class,
            TallyCommand.class,
            MonthCommand.class,
            StockCommand.class,
            PickCommand.class,
            FitCommand.class,
            WeeksCommand.class,
            CatalogueCommands.Suggest.class,
            CatalogueCommands.Margin.class,
            ScorecardCommand.class,
            CalendarCommand.class,
            PictureCommand.class,
            ShowCommand.class,
            RegisterCommands.Find.class,
            RegisterCommands.Page.class,
            RegisterCommands.CorrectMachine.class,
            RegisterCommands.CorrectOwner.class,
            RegisterCommands.Merge.class,
            RegisterCommands.Forget.class,
            NumberCommand.class,
            PinCommand.class,
            DoctorCommand.class,
            PackCommand.class,
            BenchCommand.class,
            LoadCommand.class,
            MoveCommand.class,
            AllShopsCommand.class,
            ServeCommand.class,
            JoinCommand.class,
            ExportCommand.class,
            BackupCommand.class,
            RestoreCommand.class,
            DemoCommand.class);

    @Option(names = "--home", paramLabel = "DIR", descriptionKey = "option.all.home", scope = ScopeType.INHERIT)
    private Optional<Path> home;

    @Option(names = "--demo", descriptionKey = "option.all.demo", scope = ScopeType.INHERIT)
    private boolean demo;

    @Option(names = "--at", paramLabel = "DATE-TIME", descriptionKey = "option.all.at", scope = ScopeType.INHERIT)
    private Optional<LocalDateTime> at;

    @Option(names = "--ascii", descriptionKey = "option.all.ascii", scope = ScopeType.INHERIT)
    private boolean ascii;

    @Option(names = "--json", descriptionKey = "option.all.json", scope = ScopeType.INHERIT)
    private boolean json;

    @Option(names = "--light", descriptionKey = "option.all.light", scope = ScopeType.INHERIT)
    private boolean light;

    @Option(names = "--dark", descriptionKey = "option.all.dark", scope = ScopeType.INHERIT)
    private boolean dark;

    @Option(names = "--no-mouse", descriptionKey = "option.all.no_mouse", scope = ScopeType.INHERIT)
    private boolean noMouse;

    @Option(names = "--look-only", descriptionKey = "option.all.look_only", scope = ScopeType.INHERIT)
    private boolean lookOnly;

    @Option(
            names = "--at-server",
            paramLabel = "HOST[:PORT]",
            descriptionKey = "option.all.at_server",
            scope = ScopeType.INHERIT)
    private Optional<ServerName> atServer;

    @Option(names = "--db", paramLabel = "URL", descriptionKey = "option.all.db", scope = ScopeType.INHERIT)
    private Optional<String> db;

    Globals globals() {
        if (Stream.of(demo, atServer.isPresent(), db.isPresent())
                        .filter(each -> each)
                        .count()
                > 1) {
            throw new WrongUse("command.two_places");
        }
        return new Globals(home, demo, at, ascii, json, scheme(), !noMouse, lookOnly, atServer, db);
    }

    private Optional<Scheme> scheme() {
        if (light && dark) {
            throw new WrongUse("command.two_schemes");
        }
        return light ? Optional.of(Scheme.LIGHT) : dark ? Optional.of(Scheme.DARK) : Optional.empty();
    }
}
