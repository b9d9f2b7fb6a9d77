package org.shedboard.register;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Owner;

/**
 * Finds machines, and owners who have none, by any part of what is written of them. Every different word is kept once, with the machines
 * it is written of, so that what is typed is compared with each word only once however many machines have it. Made once for the books
 * as they are, and asked at every key.
 */
public final class Finder {
    private final List<Owner> owners;
    private final List<Machine> machines;
    private final List<Merged> merged;

    private final List<Entry> entries = new ArrayList<>();
    private final Map<String, Integer> indexOfMachine = new HashMap<>();
    private final List<Word> words = new ArrayList<>();

    /** An owner with one of their machines; without one where they have none. */
    private record Entry(Owner owner, Optional<Machine> machine, String text) {}

    /** A word, and the indices of the entries it is written of. */
    private record Word(Spelling spelling, int[] entries) {}

    /**
     * Somebody or something found.
     *
     * @param machine empty for an owner who has none
     * @param grade how well the word that suits worst does
     */
    public record Hit(Owner owner, Optional<Machine> machine, Grade grade) {}

    private Finder(List<Owner> owners, List<Machine> machines, List<Merged> merged) {
        this.owners = owners;
        this.machines = machines;
        this.merged = merged;
    }

    /** @param merged records that were merged into machines, which are still found by what they said */
    public static Finder of(List<Owner> owners, List<Machine> machines, List<Merged> merged) {
        Finder finder = new Finder(owners, machines, merged);
        finder.list();
        finder.collectWords();
        return finder;
    }

    /** Whether it was made of these very lists, so that there is no need for another. */
    public boolean isOf(List<Owner> theirs, List<Machine> those, List<Merged> records) {
        return owners == theirs && machines == those && merged == records;
    }

    private void list() {
        Map<String, Owner> byId = new HashMap<>();
        owners.forEach(owner -> byId.put(owner.id(), owner));
        Set<String> without = new LinkedHashSet<>(byId.keySet());
        for (Machine machine : machines) {
            Owner owner = byId.get(machine.ownerId());
            entries.add(new Entry(owner, Optional.of(machine), textOf(owner, machine)));
            without.remove(owner.id());
        }
        without.forEach(id -> entries.add(new Entry(
                byId.get(id), Optional.empty(), Spelling.folded(byId.get(id).name()))));
        entries.sort(Comparator.comparing(Entry::text)
                .thenComparing(entry ->
                        entry.machine().map(Machine::id).orElse(entry.owner().id())));
        for (int i = 0; i < entries.size(); i++) {
            int index = i;
            entries.get(i).machine().ifPresent(machine -> indexOfMachine.put(machine.id(), index));
        }
    }

    private static String textOf(Owner owner, Machine machine) {
        return Spelling.folded(owner.name() + " " + machine.label() + " " + machine.number());
    }

    private void collectWords() {
        Map<String, Places> places = new LinkedHashMap<>();
        for (int i = 0; i < entries.size(); i++) {
            for (String word : wordsOf(entries.get(i))) {
                places.computeIfAbsent(word, each -> new Places()).add(i);
            }
        }
        for (Merged record : merged) {
            int index = indexOfMachine.getOrDefault(record.into(), -1);
            if (index >= 0) {
                wordsOf(record.machine())
                        .forEach(word -> places.computeIfAbsent(word, each -> new Places())
                                .add(index));
            }
        }
        places.forEach((word, of) -> words.add(new Word(Spelling.of(word), of.toArray())));
    }

    private static Set<String> wordsOf(Entry entry) {
        Set<String> all = new LinkedHashSet<>();
        Stream.concat(
                        Spelling.wordsOf(entry.owner().name()),
                        Spelling.piecesOf(entry.owner().name()))
                .forEach(all::add);
        entry.machine().ifPresent(machine -> wordsOf(machine).forEach(all::add));
        return all;
    }

    /** Of a number also the whole of it as one word, however it is spaced. */
    private static Stream<String> wordsOf(Machine machine) {
        String number = machine.number();
        Stream<String> label = Stream.concat(Spelling.wordsOf(machine.label()), Spelling.piecesOf(machine.label()));
        Stream<String> whole = Spelling.wordsOf(number.replaceAll("\\s", ""));
        return Stream.of(label, whole, Spelling.piecesOf(number)).flatMap(each -> each);
    }

    /** Indices that only grow. */
    private static final class Places {
        private int[] indices = new int[2];
        private int size;

        void add(int index) {
            if (size == indices.length) {
                indices = Arrays.copyOf(indices, 2 * size);
            }
            indices[size] = index;
            size++;
        }

        int[] toArray() {
            return Arrays.copyOf(indices, size);
        }
    }

    /**
     * What has every word typed in it somewhere, the best first: a whole word before the beginning of one, that before a piece of one,
     * that before one with mistakes; then those whose owner's name begins with the first word; then by owner and label. Nothing
     * typed finds nothing.
     *
     * @param tags id of the machine that carries each key tag now
     */
    public List<Hit> find(String typed, Map<Integer, String> tags) {
        List<TypedWord> wanted = Spelling.wordsOf(typed).map(TypedWord::new).toList();
        if (wanted.isEmpty()) {
            return List.of();
        }
        Ranking ranking = new Ranking(entries.size());
        wanted.forEach(word -> ranking.add(gradesOf(word, tags)));
        String first = wanted.get(0).text();
        return ranking.order(index -> entries.get(index).text().startsWith(first)).stream()
                .map(index ->
                        new Hit(entries.get(index).owner(), entries.get(index).machine(), ranking.worstOf(index)))
                .toList();
    }

    /** Everybody and everything, by owner and label. */
    public List<Hit> all() {
        return entries.stream()
                .map(entry -> new Hit(entry.owner(), entry.machine(), Grade.EXACT))
                .toList();
    }

    /** How well a typed word suits each entry. */
    private Grade[] gradesOf(TypedWord typed, Map<Integer, String> tags) {
        Grade[] grades = new Grade[entries.size()];
        Arrays.fill(grades, Grade.NONE);
        for (Word word : words) {
            Grade grade = typed.in(word.spelling());
            if (grade != Grade.NONE) {
                IntStream.of(word.entries()).forEach(index -> improve(grades, index, grade));
            }
        }
        tags.forEach((tag, machineId) -> {
            Grade grade = typed.in(Spelling.of(String.valueOf(tag)));
            Optional.ofNullable(indexOfMachine.get(machineId)).ifPresent(index -> improve(grades, index, grade));
        });
        return grades;
    }

    private static void improve(Grade[] grades, int index, Grade grade) {
        if (grade.isBetterThan(grades[index])) {
            grades[index] = grade;
        }
    }
}
