package org.shedboard.board;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.shedboard.board.Overlay.Purpose;
import org.shedboard.day.Act;
import org.shedboard.day.Clocks;
import org.shedboard.day.Day;
import org.shedboard.day.Need;
import org.shedboard.day.Needs;
import org.shedboard.day.ShelfRow;
import org.shedboard.estimate.Variant;
import org.shedboard.register.Order;
import org.shedboard.shop.Amount;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;
import org.shedboard.words.Words;

/** What keys do at the shelf, and where it is asked which part was fitted. */
public final class ShelfKeys {
    /** An amount, and what else is typed behind it: a bin, or when it is due. */
    private static final Pattern TYPED = Pattern.compile("(\\S+)(?:\\s+(.+))?");

    private final Board board;
    private final Day day;

    ShelfKeys(Board board) {
        this.board = board;
        this.day = board.expectDay();
    }

    /** The items as they are listed. */
    public static List<ShelfRow> rows(Board board) {
        return ShelfRow.of(board.expectOutlook());
    }

    static Optional<ShelfRow> chosen(Board board, Screen.Shelf screen) {
        List<ShelfRow> rows = rows(board);
        return screen.row() < rows.size() ? Optional.of(rows.get(screen.row())) : Optional.empty();
    }

    Turn perform(Deed deed, ShelfRow row) {
        String name = row.item().name();
        return switch (deed) {
            case COUNT ->
                type(Words.say("ask.count", name), new Purpose.Count(row.item().id()));
            case ORDER ->
                type(Words.say("ask.order", name), new Purpose.Order(row.item().id()));
            case HAS_COME -> Turn.to(board.asking(whichCame(row)));
            default -> throw new IllegalStateException(deed + " is no key of the shelf");
        };
    }

    private Turn type(String title, Purpose purpose) {
        return Turn.to(board.asking(new Overlay.TypeIn(title, Typing.EMPTY, purpose)));
    }

    private Overlay whichCame(ShelfRow row) {
        ChoiceList choices = new ChoiceList();
        for (Order order : row.orders()) {
            String label = Words.say(
                    "ask.order_of", PartWords.amount(row.item(), order.amount()), Clocks.sayTime(day, order.due()));
            choices.carry(label, new Act.OrderCame(order.id(), board.who()));
        }
        return choices.titled(Words.say("ask.which_came", row.item().name()));
    }

    Turn counted(Purpose.Count count, String text) {
        Matcher typed = TYPED.matcher(text);
        Optional<Amount> amount = typed.matches() ? Amount.find(typed.group(1)) : Optional.empty();
        return amount.isEmpty()
                ? refuse("form.number_unread", text)
                : carry(new Act.CountStock(
                        count.itemId(), amount.get(), Optional.ofNullable(typed.group(2)), board.who()));
    }

    Turn ordered(Purpose.Order order, String text) {
        Matcher typed = TYPED.matcher(text);
        Optional<Amount> amount = typed.matches() ? Amount.find(typed.group(1)) : Optional.empty();
        if (amount.isEmpty()) {
            return refuse("form.number_unread", text);
        }
        Optional<String> when = Optional.ofNullable(typed.group(2));
        Optional<Instant> due =
                when.flatMap(each -> Times.parse(each, board.expectOutlook().at(), day.zone()));
        return when.isPresent() && due.isEmpty()
                ? refuse("form.time_unread", when.get())
                : carry(new Act.OrderStock(order.itemId(), amount.get(), due, board.who()));
    }

    private Turn refuse(String sentence, String typed) {
        return Turn.to(board.noting(Note.refused(Words.say(sentence, typed))));
    }

    private Turn carry(Act act) {
        return Turn.to(board.without().withoutNote().saving(1), new Effect.CarryOut(act));
    }

    /** What is open at a task; where there is none picked, at any task of the visit that is not done. */
    static Optional<Need> openNeed(Day day, Visit visit, Optional<Task> task) {
        List<Need> open = Needs.of(day, visit).stream()
                .filter(need -> need.isOpen() && !need.task().isDone())
                .toList();
        return open.stream()
                .filter(need -> task.filter(need.task()::equals).isPresent())
                .findFirst()
                .or(() -> task.isPresent() ? Optional.empty() : open.stream().findFirst());
    }

    /** Asks which of its items a part is. */
    Turn askFitted(Need need, String personId) {
        ChoiceList choices = new ChoiceList();
        for (Variant variant : need.resolution().candidates()) {
            choices.carry(
                    PartWords.item(day, variant),
                    new Act.FitPart(
                            need.visit().id(),
                            need.line().orElseThrow().id(),
                            need.part().name(),
                            variant.itemId(),
                            personId));
        }
        return Turn.to(board.asking(
                choices.titled(Words.say("ask.which_fitted", need.part().name()))));
    }
}
