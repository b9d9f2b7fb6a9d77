package org.shedboard.app.command;

import java.time.LocalDate;
import java.util.Optional;

/** What one command line asks for. */
public sealed interface Wish
        permits Wish.OnTheDay,
                PackCommand,
                BenchCommand,
                LoadCommand,
                DemoCommand,
                PinCommand,
                NumberCommand,
                MoveCommand,
                AllShopsCommand,
                DoctorCommand,
                ExportCommand,
                BackupCommand,
                RestoreCommand,
                ServeCommand,
                JoinCommand {
    /** Something about a day of the shop. */
    non-sealed interface OnTheDay extends Wish {
        Reply reply(Seen seen);

        /** The date whose day it is about; today when empty. */
        default Optional<LocalDate> date() {
            return Optional.empty();
        }
    }
}
