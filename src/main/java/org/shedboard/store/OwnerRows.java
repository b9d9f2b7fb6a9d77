package org.shedboard.store;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.shedboard.register.Merged;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Owner;

/** Owners and their machines, in the tables owner and machine. */
final class OwnerRows {
    private static final Table OWNER =
            Table.named("owner").text("id", "name", "phone").keyed("id").scoped("id");
    private static final Table MACHINE = Table.named("machine")
            .text("id", "owner_id", "class_id", "label")
            .number("model_year")
            .text("number")
            .number("mass_kg", "meter_hours")
            .text("merged_into")
            .instant("merged_at")
            .keyed("id")
            .scoped("id");

    private OwnerRows() {}

    static List<Owner> owners(Sql sql) {
        return sql.select(OWNER, "ORDER BY id").stream()
                .map(row -> row.map(owner -> new Owner(owner.text("id"), owner.text("name"), owner.text("phone"))))
                .toList();
    }

    static List<Machine> machines(Sql sql) {
        return sql.select(MACHINE, "WHERE merged_into IS NULL ORDER BY id").stream()
                .map(row -> row.map(OwnerRows::toMachine))
                .toList();
    }

    /** Records that were merged into others, the oldest first. */
    static List<Merged> merged(Sql sql) {
        return sql.select(MACHINE, "WHERE merged_into IS NOT NULL ORDER BY merged_at, id").stream()
                .map(row -> row.map(OwnerRows::toMerged))
                .toList();
    }

    private static Merged toMerged(Cells row) {
        return new Merged(toMachine(row), row.text("merged_into"), row.instant("merged_at"));
    }

    private static Machine toMachine(Cells row) {
        return new Machine(
                row.text("id"),
                row.text("owner_id"),
                row.text("class_id"),
                row.text("label"),
                row.findNumber("model_year"),
                row.text("number"),
                row.number("mass_kg"),
                row.findNumber("meter_hours"));
    }

    static Share shareOfOwners(Collection<Owner> owners) {
        List<Cells> rows = owners.stream()
                .map(owner -> Cells.in(OWNER)
                        .set("id", owner.id())
                        .set("name", owner.name())
                        .set("phone", owner.phone()))
                .toList();
        return Share.of(OWNER, owners.stream().map(Owner::id).toList(), rows);
    }

    static Share shareOfMachines(Collection<Machine> machines) {
        return Share.of(
                MACHINE,
                machines.stream().map(Machine::id).toList(),
                machines.stream()
                        .map(machine -> cells(machine, Optional.empty()))
                        .toList());
    }

    static Share shareOfMerged(Collection<Merged> merged) {
        return Share.of(
                MACHINE,
                merged.stream().map(each -> each.machine().id()).toList(),
                merged.stream()
                        .map(each -> cells(each.machine(), Optional.of(each)))
                        .toList());
    }

    private static Cells cells(Machine machine, Optional<Merged> merged) {
        return Cells.in(MACHINE)
                .set("id", machine.id())
                .set("owner_id", machine.ownerId())
                .set("class_id", machine.classId())
                .set("label", machine.label())
                .set("model_year", machine.modelYear())
                .set("number", machine.number())
                .set("mass_kg", machine.massKg())
                .set("meter_hours", machine.meterHours())
                .set("merged_into", merged.map(Merged::into))
                .set("merged_at", merged.map(Merged::at));
    }
}
