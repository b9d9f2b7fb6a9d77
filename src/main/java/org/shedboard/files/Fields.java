package org.shedboard.files;

import java.time.DateTimeException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;

/**
 * One object of a file while it is read, key by key.
 *
 * <p>Whatever is wrong is noted with its place and read as something harmless (an empty text, the lowest number), so that
 * reading goes on and all the faults of a file come out at once. Who reads must therefore drop what was built as soon as any
 * fault was noted, and ask {@link #end()} at the end of each object, which finds the keys nobody asked for.
 */
final class Fields {
    private static final int SHOWN = 40;

    private final JsonNode node;
    private final String place;
    private final List<Fault> faults;
    private final Set<String> asked = new LinkedHashSet<>();

    Fields(JsonNode node, String place, List<Fault> faults) {
        this.node = node;
        this.place = place;
        this.faults = faults;
    }

    String place() {
        return place;
    }

    /** Notes that something is wrong with this key's value. */
    void fault(String key, String what) {
        faults.add(new Fault(at(key), what));
    }

    boolean has(String key) {
        asked.add(key);
        return node.has(key) && !node.get(key).isNull();
    }

    /** Notes every key that was never asked for. */
    void end() {
        for (String key : node.propertyNames()) {
            if (!asked.contains(key)) {
                fault(key, "is not known here; known are " + String.join(", ", asked));
            }
        }
    }

    /** A text with something in it. */
    String text(String key) {
        return find(key, JsonNode::isString, "a text")
                .map(JsonNode::stringValue)
                .filter(text -> !isBlank(key, text))
                .orElse("");
    }

    /** A text that may be empty or left out. */
    String textOrNone(String key) {
        return has(key)
                ? find(key, JsonNode::isString, "a text")
                        .map(JsonNode::stringValue)
                        .orElse("")
                : "";
    }

    boolean flag(String key) {
        return has(key)
                && find(key, JsonNode::isBoolean, "true or false")
                        .map(JsonNode::booleanValue)
                        .orElse(false);
    }

    int whole(String key, int low, int high) {
        return find(key).map(value -> wholeOf(at(key), value, low, high)).orElse(low);
    }

    int wholeOr(String key, int fallback, int low, int high) {
        return has(key) ? whole(key, low, high) : fallback;
    }

    double number(String key, double low, double high) {
        String wanted = "a number from " + plain(low) + " to " + plain(high);
        return find(key, value -> value.isNumber() && value.doubleValue() >= low && value.doubleValue() <= high, wanted)
                .map(JsonNode::doubleValue)
                .orElse(low);
    }

    /** Exactly so many whole numbers. */
    List<Integer> wholes(String key, int count, int low, int high) {
        List<JsonNode> values = elements(key);
        if (values.size() != count) {
            if (isList(key)) {
                fault(key, "must be " + count + " numbers, not " + values.size());
            }
            return IntStream.range(0, count).mapToObj(i -> low).toList();
        }
        return IntStream.range(0, count)
                .mapToObj(i -> wholeOf(at(key) + "[" + i + "]", values.get(i), low, high))
                .toList();
    }

    /** The constant of this name, said in small letters with hyphens. */
    <E extends Enum<E>> E oneOf(String key, Class<E> type) {
        E[] all = type.getEnumConstants();
        return find(key).flatMap(value -> named(at(key), value, type)).orElse(all[0]);
    }

    <E extends Enum<E>> List<E> allOf(String key, Class<E> type) {
        return each(key, (where, value) -> named(where, value, type));
    }

    /** Texts with something in them; none when the key is left out. */
    List<String> texts(String key) {
        // a faulty one stays in its place as an empty text, so that the others keep their numbers
        return each(key, (where, value) -> Optional.of(textOf(where, value).orElse("")));
    }

    /** A text that is put into a value; a sentence about the text is expected of whoever throws. */
    <T> T parsed(String key, Function<String, T> parse, T fallback, String wanted) {
        String text = text(key);
        return text.isEmpty() ? fallback : parsed(at(key), text, parse, wanted).orElse(fallback);
    }

    /** Each text of a list put into a value; none when the key is left out. */
    <T> List<T> parsedAll(String key, Function<String, T> parse, String wanted) {
        return each(key, (where, value) -> textOf(where, value).flatMap(text -> parsed(where, text, parse, wanted)));
    }

    Fields object(String key) {
        JsonNode value = find(key, JsonNode::isObject, "an object in braces").orElse(null);
        // what is missing is noted once, here, and not again for each of its keys
        return value == null
                ? new Fields(JsonNodeFactory.instance.objectNode(), at(key), new ArrayList<>())
                : new Fields(value, at(key), faults);
    }

    /** Objects in a list; none when the key is left out. */
    List<Fields> objects(String key) {
        return each(key, (where, value) -> {
            if (!value.isObject()) {
                faults.add(new Fault(where, "must be an object in braces, not %s".formatted(shown(value))));
                return Optional.empty();
            }
            return Optional.of(new Fields(value, where, faults));
        });
    }

    /** Objects in a list of at least one. */
    List<Fields> someObjects(String key) {
        List<Fields> all = objects(key);
        if (all.isEmpty() && (!has(key) || isList(key) && node.get(key).isEmpty())) {
            fault(key, has(key) ? "must not be empty" : "is missing");
        }
        return all;
    }

    /** Notes a second use of what must be unique; {@code seen} remembers where each was used first. */
    void unique(String key, String value, Map<String, String> seen) {
        if (value.isEmpty()) {
            return;
        }
        String first = seen.putIfAbsent(value, place);
        if (first != null) {
            fault(key, "\"%s\" is already used at %s".formatted(value, first));
        }
    }

    /** Notes a reference to something that does not exist. */
    void known(String key, String value, Set<String> all, String what) {
        if (!value.isEmpty() && !all.contains(value)) {
            fault(key, "no %s \"%s\"".formatted(what, value));
        }
    }

    /** The same for each reference of a list. */
    void allKnown(String key, List<String> values, Set<String> all, String what) {
        for (int i = 0; i < values.size(); i++) {
            known(key + "[" + i + "]", values.get(i), all, what);
        }
    }

    static String nameOf(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static String shown(JsonNode value) {
        String text = value.toString();
        return text.length() <= SHOWN ? text : text.substring(0, SHOWN) + "...";
    }

    /** Reads one element of a list at its place, or notes what is wrong and gives nothing. */
    private interface Element<T> {
        Optional<T> read(String where, JsonNode value);
    }

    private <T> List<T> each(String key, Element<T> element) {
        List<JsonNode> values = elements(key);
        return IntStream.range(0, values.size())
                .mapToObj(i -> element.read(at(key) + "[" + i + "]", values.get(i)))
                .flatMap(Optional::stream)
                .toList();
    }

    private List<JsonNode> elements(String key) {
        return has(key)
                ? find(key, JsonNode::isArray, "a list in brackets")
                        .map(list -> List.copyOf(list.values()))
                        .orElse(List.of())
                : List.of();
    }

    private boolean isList(String key) {
        return has(key) && node.get(key).isArray();
    }

    private Optional<JsonNode> find(String key) {
        if (has(key)) {
            return Optional.of(node.get(key));
        }
        fault(key, "is missing");
        return Optional.empty();
    }

    private Optional<JsonNode> find(String key, Predicate<JsonNode> fits, String wanted) {
        Optional<JsonNode> found = find(key);
        if (found.isPresent() && !fits.test(found.get())) {
            fault(key, "must be %s, not %s".formatted(wanted, shown(found.get())));
            return Optional.empty();
        }
        return found;
    }

    private int wholeOf(String where, JsonNode value, int low, int high) {
        boolean fits = value.isIntegralNumber()
                && value.canConvertToInt()
                && value.intValue() >= low
                && value.intValue() <= high;
        if (!fits) {
            String wanted = "must be a whole number from " + low + " to " + high;
            faults.add(new Fault(where, wanted + ", not " + shown(value)));
        }
        return fits ? value.intValue() : low;
    }

    private <E extends Enum<E>> Optional<E> named(String where, JsonNode value, Class<E> type) {
        E[] all = type.getEnumConstants();
        Optional<E> found = Arrays.stream(all)
                .filter(each -> value.isString() && nameOf(each).equals(value.stringValue()))
                .findFirst();
        if (found.isEmpty()) {
            String names = Arrays.stream(all).map(Fields::nameOf).collect(Collectors.joining(", "));
            faults.add(new Fault(where, "must be one of %s, not %s".formatted(names, shown(value))));
        }
        return found;
    }

    private Optional<String> textOf(String where, JsonNode value) {
        if (value.isString() && !value.stringValue().isBlank()) {
            return Optional.of(value.stringValue());
        }
        faults.add(new Fault(where, "must be a text, not " + shown(value)));
        return Optional.empty();
    }

    private <T> Optional<T> parsed(String where, String text, Function<String, T> parse, String wanted) {
        try {
            return Optional.of(parse.apply(text));
        } catch (IllegalArgumentException | DateTimeException cannot) {
            faults.add(new Fault(where, "must be %s, not \"%s\"".formatted(wanted, text)));
            return Optional.empty();
        }
    }

    private boolean isBlank(String key, String text) {
        if (text.isBlank()) {
            fault(key, "must not be empty");
        }
        return text.isBlank();
    }

    private String at(String key) {
        if (key.isEmpty()) {
            return place;
        }
        return place.isEmpty() ? key : place + "." + key;
    }

    private static String plain(double value) {
        return value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
    }
}
