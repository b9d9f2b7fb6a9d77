package org.shedboard.app.command;

import java.util.Optional;
import org.shedboard.day.Act;
import org.shedboard.estimate.Item;
import org.shedboard.shop.Amount;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The shelf looked at, counted, ordered for, and filled. */
@Command(name = "stock")
final class StockCommand implements Wish.OnTheDay {
    /** What is done at the shelf. */
    enum Deed {
        COUNT,
        ORDER,
        COME
    }

    @Parameters(index = "0", arity = "0..1", paramLabel = "DEED", descriptionKey = "option.stockDeed")
    private Optional<Deed> deed;

    @Parameters(index = "1", arity = "0..1", paramLabel = "ITEM", descriptionKey = "option.item")
    private Optional<String> what;

    @Parameters(index = "2", arity = "0..1", paramLabel = "N", descriptionKey = "option.amount")
    private Optional<String> amount;

    @Option(names = "--bin", paramLabel = "BIN")
    private Optional<String> bin;

    @Option(names = "--due", paramLabel = "DATE")
    private Optional<String> due;

    @Option(names = "--by", paramLabel = "NAME", descriptionKey = "option.by")
    private Optional<String> by;

    @Override
    public Reply reply(Seen seen) {
        if (deed.isEmpty()) {
            return new Reply.Tell(StockAnswer.of(seen));
        }
        String named = what.orElseThrow(() -> new WrongUse("command.stock.which"));
        String who = new Asked(seen).personIdOr(by);
        return new Reply.Carry(act(new Asked(seen), named, who), Optional.of(who));
    }

    private Act act(Asked asked, String named, String who) {
        return switch (deed.orElseThrow()) {
            case COUNT -> new Act.CountStock(asked.item(named).id(), howMuch(asked.item(named)), bin, who);
            case ORDER ->
                new Act.OrderStock(asked.item(named).id(), howMuch(asked.item(named)), due.map(asked::dateOrTime), who);
            case COME -> new Act.OrderCame(named, who);
        };
    }

    private Amount howMuch(Item item) {
        String text = amount.orElseThrow(() -> new WrongUse("command.stock.amount", item.name()));
        return Amount.find(text).orElseThrow(() -> new WrongUse("form.number_unread", text));
    }
}
