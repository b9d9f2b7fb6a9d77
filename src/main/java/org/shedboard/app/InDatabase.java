package org.shedboard.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shedboard.app.command.AllShopsAnswer;
import org.shedboard.app.command.AllShopsCommand;
import org.shedboard.app.command.Answer;
import org.shedboard.app.command.CannotDo;
import org.shedboard.app.command.MoveCommand;
import org.shedboard.app.command.MoveCommand.Arrived;
import org.shedboard.app.command.Seen;
import org.shedboard.store.Address;
import org.shedboard.store.Store;
import org.shedboard.store.StoreFailure;

/** What is done with the shops of a database rather than in one of them. */
final class InDatabase {
    private static final String TERMINAL = "all shops";

    private final Shedboard program;

    InDatabase(Shedboard program) {
        this.program = program;
    }

    /** Takes the shop that is meant over into a database that has none by that name. */
    Answer move(MoveCommand asked) {
        Address from = program.workshops().place();
        if (!Store.exists(from)) {
            throw new CannotDo("command.no_shop", from.said());
        }
        List<Arrived> tables = Store.move(from, new Address.AtDatabase(program.home(), asked.to())).stream()
                .map(moved -> new Arrived(moved.table(), moved.rows(), moved.digest()))
                .toList();
        return asked.answer(tables);
    }

    /** One shop that cannot be read keeps nobody from the others. */
    Answer allShops(AllShopsCommand asked) {
        List<AllShopsAnswer.Line> lines = new ArrayList<>();
        Store.shops(new Address.AtDatabase(program.home(), asked.database()))
                .forEach((key, shop) -> lines.add(line(asked, key, shop)));
        return AllShopsAnswer.of(lines);
    }

    private AllShopsAnswer.Line line(AllShopsCommand asked, String key, Address shop) {
        try (Workshop workshop = Workshop.open(shop, TERMINAL, Optional.empty())) {
            Seen seen = program.see(workshop, Optional.empty());
            return AllShopsAnswer.Line.of(key, seen.day().shop().name(), asked.figures(seen));
        } catch (StoreFailure | CannotDo unread) {
            return AllShopsAnswer.Line.unread(key, unread.getMessage());
        }
    }
}
