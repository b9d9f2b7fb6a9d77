package org.shedboard.board;

import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import org.shedboard.day.Clocks;
import org.shedboard.day.Cover;
import org.shedboard.day.Day;
import org.shedboard.day.Need;
import org.shedboard.estimate.Item;
import org.shedboard.estimate.Variant;
import org.shedboard.shop.Amount;
import org.shedboard.shop.Machine;
import org.shedboard.shop.NumberRange;
import org.shedboard.shop.Quantity;
import org.shedboard.words.Words;

/** What is said of parts: on the screens and by the commands alike. */
public final class PartWords {
    private PartWords() {}

    /** Which items a part can be, why that is open, and that somebody has to look. */
    public static String toCheck(Day day, Need need) {
        String items = need.resolution().candidates().stream()
                .map(variant -> item(day, variant))
                .collect(Collectors.joining(", "));
        return Words.say("part.check", need.part().name(), items, doubt(day, need));
    }

    private static String doubt(Day day, Need need) {
        Machine machine = day.machineOf(need.visit());
        return Words.say("doubt." + need.resolution().doubt().orElseThrow(), year(machine.modelYear()));
    }

    private static String year(OptionalInt year) {
        return year.isPresent() ? String.valueOf(year.getAsInt()) : "";
    }

    /** An item with the machines on which it is the one. */
    static String item(Day day, Variant variant) {
        String name = day.books().catalogue().nameOfItem(variant.itemId());
        if (variant.range() instanceof Variant.Serials serials) {
            NumberRange numbers = serials.numbers();
            String from = number(numbers.prefix(), numbers.from());
            String to = number(numbers.prefix(), numbers.to());
            return range(
                    name, from, to, numbers.from().isPresent(), numbers.to().isPresent());
        }
        Variant.Years years = (Variant.Years) variant.range();
        return range(
                name,
                year(years.from()),
                year(years.to()),
                years.from().isPresent(),
                years.to().isPresent());
    }

    private static String number(String prefix, OptionalLong number) {
        return number.isPresent() ? prefix + number.getAsLong() : "";
    }

    private static String range(String name, String from, String to, boolean begins, boolean ends) {
        if (begins && ends) {
            return Words.say("part.between", name, from, to);
        }
        if (begins) {
            return Words.say("part.from", name, from);
        }
        return ends ? Words.say("part.to", name, to) : name;
    }

    /** When what is not here can be. */
    public static String isShort(Day day, Cover cover) {
        String item = day.books().catalogue().nameOfItem(cover.itemId());
        String name = cover.state() == Cover.State.ON_ORDER ? "part.on_order" : "part.not_ordered";
        return Words.say(name, item, Clocks.sayTime(day, cover.from().orElseThrow()));
    }

    /** So much of an item, with what it is counted in. */
    public static String amount(Item item, Amount amount) {
        return new Quantity(amount, item.unit()).toString();
    }
}
