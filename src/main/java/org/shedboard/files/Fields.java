package org.shedboard.files;

import java.time.DateTimeException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.shedboard.pack.fault.Fault;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;

/**
 * The fields of one JSON object, read strictly. It knows where in the file it stands ({@code jobs[3].stays[0]}), and what is wrong
 * goes into one list of faults that all parts of the file share; in its stead comes a harmless value, so that reading goes on
 * and finds the rest. {@link #end} reports the keys nobody asked for.
 */
public final class Fields {
    /** A value is recognised by so many characters; more would only hide what is wrong with it. */
    /** Of one text, in characters: a caution or a remark of the catalogue has a few hundred. */
    private static final int LONGEST_TEXT = 2_000;

    private static final int LONGEST_QUOTED = 80;

    private final JsonNode node;
    private final String where;
    private final List<Fault> faults;
    private final Set<String> asked = new HashSet<>();

    private Fields(JsonNode node, String where, List<Fault> faults) {
        this.node = node;
        this.where = where;
        this.faults = faults;
    }

    /** The object a file consists of; empty when the text is no JSON or no object. */
    public static Optional<Fields> parse(String text, List<Fault> faults) {
        Optional<JsonNode> tree = JsonText.parse(text, faults);
        if (tree.isPresent() && !tree.get().isObject()) {
            faults.add(new Fault("", "is %s, not an object".formatted(nameOf(tree.get()))));
            return Optional.empty();
        }
        return tree.map(node -> new Fields(node, "", faults));
    }

    /** Where this object stands in the file. */
    public String where() {
        return where;
    }

    /** Where a field of this object stands in the file. */
    public String where(String name) {
        return where.isEmpty() ? name : where + "." + name;
    }

    /** Adds a fault of one of the fields. */
    public void fault(String name, String what) {
        faults.add(new Fault(where(name), what));
    }

    /** To be called when all has been asked for. */
    public void end() {
        for (String name : node.propertyNames()) {
            if (!asked.contains(name)) {
                fault(name, "unknown key");
            }
        }
    }

    /** To be called when nothing more can be asked, for it is not known what should be here. */
    void leave() {
        asked.addAll(node.propertyNames());
    }

    /** How many faults the file has so far. */
    int faultCount() {
        return faults.size();
    }

    /** True when the field is there and not null. */
    public boolean has(String name) {
        return find(name).isPresent();
    }

    public String text(String name) {
        return findText(name).orElseGet(() -> missing(name, "?" + where));
    }

    public Optional<String> findText(String name) {
        return find(name).flatMap(value -> asText(value, where(name)));
    }

    public boolean flag(String name, boolean fallback) {
        Optional<JsonNode> value = find(name);
        if (value.isPresent() && !value.get().isBoolean()) {
            wrong(where(name), value.get(), "true or false");
            return fallback;
        }
        return value.map(JsonNode::booleanValue).orElse(fallback);
    }

    public int whole(String name, int least, int most) {
        int before = faults.size();
        OptionalInt number = findWhole(name, least, most);
        return number.isPresent() || faults.size() > before ? number.orElse(least) : missing(name, least);
    }

    public int wholeOr(String name, int fallback, int least, int most) {
        return findWhole(name, least, most).orElse(fallback);
    }

    public OptionalInt findWhole(String name, int least, int most) {
        OptionalLong number = find(name)
                .map(value -> asWhole(value, where(name), least, most))
                .orElse(OptionalLong.empty());
        return number.isPresent() ? OptionalInt.of((int) number.getAsLong()) : OptionalInt.empty();
    }

    public long longOr(String name, long fallback, long least, long most) {
        return find(name)
                .map(value -> asWhole(value, where(name), least, most))
                .orElse(OptionalLong.empty())
                .orElse(fallback);
    }

    public double decimalOr(String name, double fallback, double least, double most) {
        Optional<JsonNode> value = find(name);
        if (value.isEmpty()) {
            return fallback;
        }
        if (!value.get().isNumber()) {
            wrong(where(name), value.get(), "a number");
            return fallback;
        }
        double number = value.get().doubleValue();
        if (!(number >= least && number <= most)) {
            fault(name, "%s is not from %s to %s".formatted(value.get().asString(), trim(least), trim(most)));
            return fallback;
        }
        return number;
    }

    /** What is read from an object field; empty when it is left out. */
    public <T> Optional<T> findObject(String name, Function<Fields, T> read) {
        return find(name).flatMap(value -> asObject(value, where(name), read));
    }

    /** What is read from each object of a list that must be there. */
    public <T> List<T> objects(String name, Function<Fields, T> read) {
        return list(name, true, (value, place) -> asObject(value, place, read));
    }

    public <T> List<T> objectsOrNone(String name, Function<Fields, T> read) {
        return list(name, false, (value, place) -> asObject(value, place, read));
    }

    public List<String> texts(String name) {
        return list(name, true, this::asText);
    }

    public List<String> textsOrNone(String name) {
        return list(name, false, this::asText);
    }

    /** Texts or, where the list is left out, empty: for lists whose absence means something. */
    public Optional<List<String>> findTexts(String name) {
        return has(name) ? Optional.of(texts(name)) : Optional.empty();
    }

    /** A list of pairs of whole numbers, each made into a value; {@code make} answers with what is wrong, or null. */
    public <T> List<T> pairs(String name, boolean needed, int least, int most, PairReader<T> make) {
        return list(name, needed, (value, place) -> asPair(value, place, least, most, make));
    }

    /** An object whose keys are names and whose values are whole numbers. */
    public Map<String, Integer> wholes(String name, int least, int most) {
        Map<String, Integer> numbers = new LinkedHashMap<>();
        Optional<JsonNode> value = find(name);
        if (value.isPresent() && !value.get().isObject()) {
            wrong(where(name), value.get(), "an object");
            return numbers;
        }
        value.ifPresent(object -> object.properties().forEach(entry -> {
            String place = where(name) + "." + entry.getKey();
            asWhole(entry.getValue(), place, least, most)
                    .ifPresent(number -> numbers.put(entry.getKey(), (int) number));
        }));
        return numbers;
    }

    /** A text with something in it. */
    String filled(String name) {
        String text = text(name);
        if (text.isBlank()) {
            fault(name, "is empty");
        }
        return text;
    }

    double decimal(String name, double least, double most) {
        return has(name) ? decimalOr(name, least, least, most) : missing(name, least);
    }

    /** Exactly so many whole numbers; the least so many times when any of them is wrong. */
    List<Integer> wholeList(String name, int count, int least, int most) {
        int before = faults.size();
        List<Integer> numbers = list(name, true, (value, place) -> {
            OptionalLong number = asWhole(value, place, least, most);
            return Optional.of((int) number.orElse(least));
        });
        if (numbers.size() == count && faults.size() == before) {
            return numbers;
        }
        if (faults.size() == before) {
            fault(name, "has " + numbers.size() + " numbers, not " + count);
        }
        return Collections.nCopies(count, least);
    }

    /** The constant of this name, written small and with hyphens. */
    <E extends Enum<E>> E oneOf(String name, Class<E> type) {
        E first = type.getEnumConstants()[0];
        return has(name)
                ? find(name).flatMap(value -> asOneOf(value, where(name), type)).orElse(first)
                : missing(name, first);
    }

    <E extends Enum<E>> List<E> someOf(String name, Class<E> type) {
        return list(name, false, (value, place) -> asOneOf(value, place, type));
    }

    /** What a text stands for; {@code wanted} says what kind of text that is. */
    <T> Optional<T> findParsed(String name, String wanted, Function<String, T> parse) {
        return find(name).flatMap(value -> asParsed(value, where(name), wanted, parse));
    }

    /** As {@link #findParsed}, but no fault tells what the text is. */
    <T> Optional<T> findUntold(String name, String wanted, Function<String, Optional<T>> parse) {
        Optional<JsonNode> value = find(name);
        Optional<T> parsed = value.filter(JsonNode::isString).flatMap(text -> parse.apply(text.stringValue()));
        if (value.isPresent() && parsed.isEmpty()) {
            fault(name, "is not " + wanted);
        }
        return parsed;
    }

    <T> T parsed(String name, String wanted, T instead, Function<String, T> parse) {
        return has(name) ? findParsed(name, wanted, parse).orElse(instead) : missing(name, instead);
    }

    <T> List<T> allParsed(String name, String wanted, Function<String, T> parse) {
        return list(name, false, (value, place) -> asParsed(value, place, wanted, parse));
    }

    /** What is read from an object that must be there; of an object without any field where it is not. */
    <T> T object(String name, Function<Fields, T> read) {
        if (!has(name)) {
            fault(name, "is missing");
        }
        return findObject(name, read)
                .orElseGet(() ->
                        read.apply(new Fields(JsonNodeFactory.instance.objectNode(), where(name), new ArrayList<>())));
    }

    /** What is read from each object of a list that must hold one at least. */
    <T> List<T> someObjects(String name, Function<Fields, T> read) {
        int before = faults.size();
        List<T> all = objects(name, read);
        if (all.isEmpty() && faults.size() == before) {
            fault(name, "is empty");
        }
        return all;
    }

    /** Finds a second use of what must be unique; {@code seen} remembers where each was used first. */
    void unique(String name, String value, Map<String, String> seen) {
        String first = seen.putIfAbsent(value, where(name));
        if (first != null) {
            fault(name, "\"%s\" is already at %s".formatted(value, first));
        }
    }

    /** Finds a reference to what does not exist; what could not be read is no such reference. */
    void known(String name, String value, Collection<String> all, String what) {
        if (!all.contains(value) && !isUnread(value)) {
            fault(name, "no %s \"%s\"".formatted(what, value));
        }
    }

    void allKnown(String name, List<String> values, Collection<String> all, String what) {
        for (int i = 0; i < values.size(); i++) {
            known(name + "[" + i + "]", values.get(i), all, what);
        }
    }

    /** Whether this stands for a text that could not be read. */
    static boolean isUnread(String value) {
        return value.startsWith("?");
    }

    public static String nameOf(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Makes a value of two whole numbers. */
    public interface PairReader<T> {
        T make(int first, int second);
    }

    private interface Reader<T> {
        Optional<T> read(JsonNode value, String place);
    }

    private Optional<JsonNode> find(String name) {
        asked.add(name);
        JsonNode value = node.get(name);
        return value == null || value.isNull() ? Optional.empty() : Optional.of(value);
    }

    private <T> T missing(String name, T instead) {
        if (!has(name)) {
            fault(name, "is missing");
        }
        return instead;
    }

    private <T> List<T> list(String name, boolean needed, Reader<T> reader) {
        List<T> found = new ArrayList<>();
        Optional<JsonNode> value = find(name);
        if (value.isEmpty()) {
            return needed ? missing(name, found) : found;
        }
        if (!value.get().isArray()) {
            wrong(where(name), value.get(), "a list");
            return found;
        }
        for (int index = 0; index < value.get().size(); index++) {
            String place = where(name) + "[" + index + "]";
            reader.read(value.get().get(index), place).ifPresent(found::add);
        }
        return found;
    }

    private <T> Optional<T> asObject(JsonNode value, String place, Function<Fields, T> read) {
        if (!value.isObject()) {
            wrong(place, value, "an object");
            return Optional.empty();
        }
        Fields fields = new Fields(value, place, faults);
        T result = read.apply(fields);
        fields.end();
        return Optional.of(result);
    }

    private Optional<String> asText(JsonNode value, String place) {
        if (!value.isString()) {
            wrong(place, value, "a text");
            return Optional.empty();
        }
        int length = value.stringValue().length();
        if (length > LONGEST_TEXT) {
            faults.add(
                    new Fault(place, "is %s characters long, and at most %s are read".formatted(length, LONGEST_TEXT)));
            return Optional.empty();
        }
        return Optional.of(value.stringValue());
    }

    private OptionalLong asWhole(JsonNode value, String place, long least, long most) {
        if (!value.isIntegralNumber()) {
            wrong(place, value, "a whole number");
            return OptionalLong.empty();
        }
        if (!value.canConvertToLong() || value.longValue() < least || value.longValue() > most) {
            faults.add(new Fault(place, brief(value.asString()) + " is not from " + least + " to " + most));
            return OptionalLong.empty();
        }
        return OptionalLong.of(value.longValue());
    }

    private <T> Optional<T> asPair(JsonNode value, String place, int least, int most, PairReader<T> make) {
        if (!value.isArray() || value.size() != 2) {
            wrong(place, value, "a pair of whole numbers");
            return Optional.empty();
        }
        OptionalLong first = asWhole(value.get(0), place + "[0]", least, most);
        OptionalLong second = asWhole(value.get(1), place + "[1]", least, most);
        if (first.isEmpty() || second.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(make.make((int) first.getAsLong(), (int) second.getAsLong()));
        } catch (IllegalArgumentException refused) {
            faults.add(new Fault(place, refused.getMessage()));
            return Optional.empty();
        }
    }

    private <E extends Enum<E>> Optional<E> asOneOf(JsonNode value, String place, Class<E> type) {
        List<E> all = List.of(type.getEnumConstants());
        Optional<E> found = all.stream()
                .filter(each -> value.isString() && nameOf(each).equals(value.stringValue()))
                .findFirst();
        if (found.isEmpty()) {
            wrong(place, value, all.stream().map(Fields::nameOf).collect(Collectors.joining(", ", "one of ", "")));
        }
        return found;
    }

    private <T> Optional<T> asParsed(JsonNode value, String place, String wanted, Function<String, T> parse) {
        try {
            return asText(value, place).map(parse);
        } catch (IllegalArgumentException | DateTimeException cannot) {
            wrong(place, value, wanted);
            return Optional.empty();
        }
    }

    private void wrong(String place, JsonNode value, String wanted) {
        faults.add(new Fault(place, "is %s, not %s".formatted(nameOf(value), wanted)));
    }

    private static String nameOf(JsonNode value) {
        if (value.isObject()) {
            return "an object";
        }
        return value.isArray() ? "a list" : brief(value.toString());
    }

    static String brief(String value) {
        return value.length() <= LONGEST_QUOTED ? value : value.substring(0, LONGEST_QUOTED) + "…";
    }

    private static String trim(double number) {
        return number == Math.rint(number) ? String.valueOf((long) number) : String.valueOf(number);
    }
}
