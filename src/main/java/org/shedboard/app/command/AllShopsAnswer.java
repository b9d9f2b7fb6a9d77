package org.shedboard.app.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shedboard.day.Figures;
import org.shedboard.words.Words;

/** All shops of one database said: a line each, and what they come to together. */
public final class AllShopsAnswer {
    /**
     * A shop, or why nothing can be said of it.
     *
     * @param key its name in the database
     * @param name what it calls itself; empty where that cannot be read
     */
    public record Line(String key, String name, Optional<ShopFigures> figures, String problem) {
        public static Line of(String key, String name, ShopFigures figures) {
            return new Line(key, name, Optional.of(figures), "");
        }

        public static Line unread(String key, String problem) {
            return new Line(key, "", Optional.empty(), problem);
        }
    }

    private final List<Line> shops;
    private final ShopFigures together;

    private AllShopsAnswer(List<Line> shops) {
        this.shops = shops;
        this.together =
                shops.stream().flatMap(each -> each.figures().stream()).reduce(ShopFigures.NONE, ShopFigures::plus);
    }

    public static Answer of(List<Line> shops) {
        AllShopsAnswer answer = new AllShopsAnswer(shops);
        return new Answer(answer.lines(), answer.tree().fields());
    }

    private List<String> lines() {
        Table table = new Table("llrrrrrrr");
        table.row(
                Words.say("command.all_shops.key"),
                Words.say("command.all_shops.name"),
                Words.say("tally.attended"),
                Words.say("tally.on_machines"),
                Words.say("command.all_shops.promised"),
                Words.say("command.all_shops.kept"),
                Words.say("command.all_shops.booked"),
                Words.say("command.all_shops.open"),
                Words.say("command.all_shops.due"));
        shops.forEach(shop -> shop.figures().ifPresent(figures -> row(table, shop.key(), shop.name(), figures)));
        row(table, Words.say("command.all_shops.together"), "", together);
        List<String> lines = new ArrayList<>(table.lines());
        shops.stream()
                .filter(shop -> shop.figures().isEmpty())
                .forEach(shop -> lines.add(Words.say("command.all_shops.unread", shop.key(), shop.problem())));
        return lines;
    }

    private static void row(Table table, String key, String name, ShopFigures figures) {
        table.row(
                key,
                name,
                Figures.hours(figures.attended()),
                Figures.hours(figures.onMachines()),
                Integer.toString(figures.promises().due()),
                Integer.toString(figures.promises().kept()),
                Figures.hours(figures.booked()),
                Figures.hours(figures.open()),
                Figures.hours(figures.due()));
    }

    private Tree tree() {
        return new Tree()
                .put("shops", shops.stream().map(AllShopsAnswer::shop).toList())
                .put("together", figures(together));
    }

    private static Map<String, Object> shop(Line shop) {
        return new Tree()
                .put("key", shop.key())
                .put("name", shop.name())
                .put("figures", shop.figures().map(AllShopsAnswer::figures))
                .put("problem", shop.problem())
                .fields();
    }

    private static Map<String, Object> figures(ShopFigures figures) {
        return new Tree()
                .put("attendedMinutes", figures.attended())
                .put("onMachinesMinutes", figures.onMachines())
                .put("promisesDue", figures.promises().due())
                .put("promisesKept", figures.promises().kept())
                .put("bookedAheadMinutes", figures.booked())
                .put("openAheadMinutes", figures.open())
                .put("dueAheadMinutes", figures.due())
                .fields();
    }
}
