package org.shedboard.estimate;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the shop services and what that takes.
 *
 * @param usual the words of the tasks every visit has, one entry for each of them
 * @param signOffMinutes minutes for the last look and the papers of any visit
 * @param items what lies on the shelf
 * @param testDriveMinutes minutes for a test drive, without its inspection points
 */
public record Catalogue(
        List<MachineClass> classes,
        List<Work> works,
        Map<Usual, Usual.Words> usual,
        Spreads spreads,
        int testDriveMinutes,
        int signOffMinutes,
        List<Item> items,
        WashDown washDown) {
    public Catalogue {
        classes = List.copyOf(classes);
        works = List.copyOf(works);
        items = List.copyOf(items);
        usual = Map.copyOf(new EnumMap<>(usual));
        for (Usual task : Usual.values()) {
            if (!usual.containsKey(task)) {
                throw new IllegalArgumentException("the catalogue has no words for %s".formatted(task));
            }
        }
    }

    /** One in which a wash-down takes what it usually takes. */
    public Catalogue(
            List<MachineClass> classes,
            List<Work> works,
            Map<Usual, Usual.Words> usual,
            Spreads spreads,
            int testDriveMinutes,
            int signOffMinutes,
            List<Item> items) {
        this(classes, works, usual, spreads, testDriveMinutes, signOffMinutes, items, WashDown.USUAL);
    }

    /** The catalogue of a shop that keeps no account of its shelf. */
    public Catalogue(
            List<MachineClass> classes,
            List<Work> works,
            Map<Usual, Usual.Words> usual,
            Spreads spreads,
            int testDriveMinutes,
            int signOffMinutes) {
        this(classes, works, usual, spreads, testDriveMinutes, signOffMinutes, List.of());
    }

    /** With this class in place of the one of the same id. */
    Catalogue with(MachineClass next) {
        List<MachineClass> all = classes.stream()
                .map(each -> each.id().equals(next.id()) ? next : each)
                .toList();
        return new Catalogue(all, works, usual, spreads, testDriveMinutes, signOffMinutes, items, washDown);
    }

    /** With this work in place of the one of the same id. */
    Catalogue with(Work next) {
        List<Work> all = works.stream()
                .map(each -> each.id().equals(next.id()) ? next : each)
                .toList();
        return new Catalogue(classes, all, usual, spreads, testDriveMinutes, signOffMinutes, items, washDown);
    }

    public Optional<Item> findItem(String id) {
        return items.stream().filter(item -> item.id().equals(id)).findFirst();
    }

    /** What an item is called; its id where the catalogue no longer has it. */
    public String nameOfItem(String id) {
        return findItem(id).map(Item::name).orElse(id);
    }

    public Optional<MachineClass> findClass(String id) {
        return classes.stream().filter(each -> each.id().equals(id)).findFirst();
    }

    public MachineClass expectClass(String id) {
        return findClass(id).orElseThrow(() -> new IllegalArgumentException("no machine class %s".formatted(id)));
    }

    public Optional<Work> findWork(String id) {
        return works.stream().filter(work -> work.id().equals(id)).findFirst();
    }

    public Work expectWork(String id) {
        return findWork(id)
                .orElseThrow(() -> new IllegalArgumentException("no work %s in the catalogue".formatted(id)));
    }

    /** The work on offer for one class, in catalogue order. */
    public List<Work> worksFor(String classId) {
        return works.stream().filter(work -> work.isFor(classId)).toList();
    }
}
