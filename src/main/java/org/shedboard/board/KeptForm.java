package org.shedboard.board;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.shedboard.board.TakeInForm.Field;
import org.shedboard.day.Books;
import org.shedboard.shop.Condition;
import org.shedboard.shop.Depth;

/** A take-in form that is half filled in, as plain words to be kept until the program is started again. */
public final class KeptForm {
    private static final String TEXT = "text.";
    private static final String FIELD = "field";
    private static final String MACHINE = "machine";
    private static final String CLASS = "class";
    private static final String WORK = "work";
    private static final String NOTICES = "notices";
    private static final String DEPTH = "depth";
    private static final String FAULTS = "faults";

    private KeptForm() {}

    /** What would be lost if the program ended now: nothing but what somebody typed or chose. */
    public static Map<String, String> of(Board board) {
        return Stream.concat(Stream.of(board.screen()), board.behind().stream())
                .filter(Screen.TakeIn.class::isInstance)
                .map(screen -> ((Screen.TakeIn) screen).form())
                .filter(TakeInForm::isTouched)
                .findFirst()
                .or(board::draft)
                .map(KeptForm::words)
                .orElse(Map.of());
    }

    private static Map<String, String> words(TakeInForm form) {
        Map<String, String> words = new LinkedHashMap<>();
        words.put(FIELD, form.field().name());
        form.texts().forEach((field, typing) -> words.put(TEXT + field.name(), typing.text()));
        form.machineId().ifPresent(id -> words.put(MACHINE, id));
        form.classId().ifPresent(id -> words.put(CLASS, id));
        words.put(WORK, String.join(" ", form.workIds()));
        words.put(NOTICES, String.join(" ", form.noticeIds()));
        form.depth().ifPresent(depth -> words.put(DEPTH, depth.name()));
        words.put(FAULTS, faults(form.condition()));
        return words;
    }

    /**
     * The form as it was left, as far as the books still have what it names. Where they no longer have its machine or class, it
     * begins where that is asked for. The mud is asked for again in any case, because its answer works out what can be promised now;
     * what could be promised then is of no use. Words that mean nothing to this program are passed over.
     */
    static TakeInForm read(Map<String, String> words, Books books) {
        TakeInForm form = TakeInForm.EMPTY;
        for (Field field : Field.values()) {
            String text = field == Field.PROMISE ? null : words.get(TEXT + field.name());
            form = text == null ? form : form.withText(field, Typing.of(text));
        }
        Optional<String> machine =
                said(words, MACHINE).filter(id -> books.findMachine(id).isPresent());
        Optional<String> machineClass =
                said(words, CLASS).filter(id -> books.catalogue().findClass(id).isPresent());
        if (machine.isPresent()) {
            form = form.withMachine(machine);
        } else if (machineClass.isPresent()) {
            form = form.withClass(machineClass.get());
        }
        return chosen(form, words, books).at(field(words, machine.isPresent(), machineClass.isPresent()));
    }

    private static TakeInForm chosen(TakeInForm form, Map<String, String> words, Books books) {
        TakeInForm next = form.withCondition(condition(words.getOrDefault(FAULTS, "")))
                .withDepth(constant(words, DEPTH, Depth.values()))
                .withWorks(list(words, WORK).stream()
                        .filter(id -> books.catalogue().findWork(id).isPresent())
                        .toList());
        for (String notice : list(words, NOTICES)) {
            boolean isKnown = books.register().findNotice(notice).isPresent();
            next = isKnown ? next.toggleNotice(notice) : next;
        }
        return next;
    }

    private static Field field(Map<String, String> words, boolean hasMachine, boolean hasClass) {
        Field left = constant(words, FIELD, Field.values()).orElse(Field.FIND);
        Field from = left.ordinal() > Field.MUD.ordinal() ? Field.MUD : left;
        if (hasMachine || hasClass || from.ordinal() <= Field.CLASS.ordinal()) {
            return from;
        }
        return said(words, CLASS).isPresent() ? Field.CLASS : Field.FIND;
    }

    private static String faults(Condition is) {
        List<String> faults = new ArrayList<>();
        if (!is.runs()) faults.add("runs");
        if (!is.rolls()) faults.add("rolls");
        if (!is.steers()) faults.add("steers");
        if (!is.stops()) faults.add("stops");
        return String.join(" ", faults);
    }

    private static Condition condition(String faults) {
        List<String> not = List.of(faults.split(" "));
        return new Condition(
                !not.contains("runs"), !not.contains("rolls"), !not.contains("steers"), !not.contains("stops"));
    }

    private static List<String> list(Map<String, String> words, String name) {
        return Stream.of(words.getOrDefault(name, "").split(" "))
                .filter(id -> !id.isEmpty())
                .distinct()
                .collect(Collectors.toList());
    }

    private static Optional<String> said(Map<String, String> words, String name) {
        return Optional.ofNullable(words.get(name));
    }

    private static <T extends Enum<T>> Optional<T> constant(Map<String, String> words, String name, T[] values) {
        return Stream.of(values)
                .filter(value -> value.name().equals(words.get(name)))
                .findFirst();
    }
}
