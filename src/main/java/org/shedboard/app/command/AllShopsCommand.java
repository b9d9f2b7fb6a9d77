package org.shedboard.app.command;

import java.time.LocalDate;
import java.util.List;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.ParentCommand;

/** All shops of one database side by side. */
@Command(name = "all-shops")
public final class AllShopsCommand implements Wish {
    @ArgGroup
    private WhichDays span;

    @ParentCommand
    private Root root;

    /** Where the shops are. */
    public String database() {
        return root.globals().db().orElseThrow(() -> new WrongUse("command.all_shops.no_db"));
    }

    /** What one shop comes to; its today decides what is meant where no days are named. */
    public ShopFigures figures(Seen seen) {
        List<LocalDate> days = WhichDays.of(span, seen.day().date());
        return ShopFigures.of(seen, days.get(0), days.get(1));
    }
}
