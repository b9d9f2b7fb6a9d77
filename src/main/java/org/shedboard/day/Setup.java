package org.shedboard.day;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shedboard.estimate.PastVisit;
import org.shedboard.register.Stock;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Owner;
import org.shedboard.shop.Pin;
import org.shedboard.shop.Shop;

/**
 * What a shop starts with: itself, whom and what it knows, what it did before.
 *
 * @param past finished visits to learn from, oldest first
 * @param morning how its first day begins; only a demonstration has one
 * @param stock what lies on the shelf
 * @param pins the PINs that people have from the start, by the ids of the people; wiped when the shop is made
 */
public record Setup(
        Shop shop,
        List<Owner> owners,
        List<Machine> machines,
        List<PastVisit> past,
        Optional<Morning> morning,
        Map<String, Pin> pins,
        List<Stock> stock) {
    public Setup {
        owners = List.copyOf(owners);
        machines = List.copyOf(machines);
        past = List.copyOf(past);
        pins = Map.copyOf(pins);
        stock = List.copyOf(stock);
    }

    /** A start with a shelf that nobody has counted. */
    public Setup(
            Shop shop,
            List<Owner> owners,
            List<Machine> machines,
            List<PastVisit> past,
            Optional<Morning> morning,
            Map<String, Pin> pins) {
        this(shop, owners, machines, past, morning, pins, List.of());
    }

    /** A start at which nobody has a PIN. */
    public Setup(
            Shop shop, List<Owner> owners, List<Machine> machines, List<PastVisit> past, Optional<Morning> morning) {
        this(shop, owners, machines, past, morning, Map.of());
    }

    public Setup withPast(List<PastVisit> visits) {
        return new Setup(shop, owners, machines, visits, morning, pins, stock);
    }

    public Setup withStock(List<Stock> counted) {
        return new Setup(shop, owners, machines, past, morning, pins, counted);
    }
}
