package org.shedboard.day;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.shedboard.estimate.Catalogue;
import org.shedboard.estimate.Item;
import org.shedboard.estimate.MachineClass;
import org.shedboard.estimate.Point;
import org.shedboard.estimate.Variant;
import org.shedboard.estimate.Work;
import org.shedboard.estimate.WorkPart;
import org.shedboard.register.Order;
import org.shedboard.register.Shelf;
import org.shedboard.register.Stock;
import org.shedboard.shop.Amount;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Unit;

/**
 * The shed with a shelf: an oil change takes 2 L of oil to fill and a washer for the plug, 12 mm to 2014 and 14 mm from 2015; a dirty
 * pads point is renewed. The first quad is of 2014, the second of 2020, of the third nobody knows the year.
 */
final class Parts {
    static final Item WASHER_12 = new Item("w12", "Washer 12", Unit.EACH, 2, false);
    static final Item WASHER_14 = new Item("w14", "Washer 14", Unit.EACH, 3, false);
    static final Item OIL = new Item("oil", "Oil", Unit.LITRES, 1, false);
    static final Item ELEMENT = new Item("element", "Element", Unit.EACH, 1, true);

    private static final String[] YEARS = {"quad-1 2014", "quad-2 2020"};

    private Parts() {}

    /** The open shed with this on its shelf. */
    static Shed shed(Stock... stock) {
        return shed(Shed.open(), List.of(stock), List.of());
    }

    static Shed shed(Shed shed, List<Stock> stock, List<Order> orders) {
        Books books = shed.day().books();
        return shed.with(new Books(
                books.shop(),
                catalogue(books.catalogue()),
                books.owners(),
                machines(books.machines()),
                books.hoursRules(),
                books.signers(),
                books.register(),
                new Shelf(stock, orders),
                books.foresight()));
    }

    /** Plenty of everything. */
    static Stock[] plenty() {
        return new Stock[] {some(WASHER_12, 9), some(WASHER_14, 9), some(OIL, 40), some(ELEMENT, 9)};
    }

    static Stock some(Item item, int amount) {
        return new Stock(item.id(), "bin of " + item.id(), Amount.of(amount));
    }

    static Order order(Item item, int amount, Instant due) {
        return new Order("R-" + item.id(), item.id(), Amount.of(amount), Shed.time("07:00"), due, Optional.empty());
    }

    private static Catalogue catalogue(Catalogue plain) {
        return new Catalogue(
                plain.classes().stream().map(Parts::withRenewal).toList(),
                plain.works().stream().map(Parts::withParts).toList(),
                plain.usual(),
                plain.spreads(),
                plain.testDriveMinutes(),
                plain.signOffMinutes(),
                List.of(WASHER_12, WASHER_14, OIL, ELEMENT));
    }

    private static Work withParts(Work work) {
        List<WorkPart> parts = work.id().equals("oil")
                ? List.of(
                        new WorkPart(
                                "Washer", "1", "plug", List.of(years(WASHER_12, 0, 2014), years(WASHER_14, 2015, 0))),
                        new WorkPart("Oil", "2 L", "fill", List.of(Variant.everywhere(OIL.id()))))
                : List.of(new WorkPart("Element", "1", "pads-change", List.of(Variant.everywhere(ELEMENT.id()))));
        return new Work(work.id(), work.name(), work.key(), work.classes(), work.depth(), work.tasks(), parts);
    }

    private static Variant years(Item item, int from, int to) {
        return new Variant(item.id(), Set.of(), new Variant.Years(limit(from), limit(to)));
    }

    private static OptionalInt limit(int year) {
        return year == 0 ? OptionalInt.empty() : OptionalInt.of(year);
    }

    private static MachineClass withRenewal(MachineClass plain) {
        return new MachineClass(
                plain.id(),
                plain.name(),
                plain.massKg(),
                plain.washMinutes(),
                plain.moving(),
                plain.points().stream().map(Parts::withRenewal).toList());
    }

    private static Point withRenewal(Point point) {
        return new Point(
                point.id(),
                point.name(),
                point.where(),
                point.step(),
                point.due(),
                point.inspectMinutes(),
                point.uncoverMinutes(),
                point.caution(),
                point.stopsRiding(),
                point.measure(),
                point.fixedBy(),
                point.id().equals("pads") ? Optional.of(ELEMENT.id()) : Optional.empty());
    }

    private static List<Machine> machines(List<Machine> plain) {
        List<Machine> machines = new ArrayList<>(plain);
        for (String year : YEARS) {
            String[] words = year.split(" ");
            machines.replaceAll(
                    machine -> machine.id().equals(words[0]) ? of(machine, Integer.parseInt(words[1])) : machine);
        }
        return machines;
    }

    private static Machine of(Machine machine, int year) {
        return new Machine(
                machine.id(),
                machine.ownerId(),
                machine.classId(),
                machine.label(),
                OptionalInt.of(year),
                machine.number(),
                machine.massKg(),
                machine.meterHours());
    }
}
