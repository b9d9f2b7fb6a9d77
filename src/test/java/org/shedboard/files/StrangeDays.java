package org.shedboard.files;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.shedboard.pack.PackedPlans;
import org.shedboard.pack.Problem;
import org.shedboard.pack.RandomProblems;
import org.shedboard.pack.ReplanDays;
import org.shedboard.pack.TinyProblems;
import org.shedboard.pack.WorkshopDays;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Texts of day files, each from a seed: sound ones, ones with absurd values in them, and ones that are hardly JSON any more. */
final class StrangeDays {
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final int MANY = 5000;
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final List<String> BITS = List.of(
            "\u0000",
            "\uFEFF",
            "\uD800",
            "é",
            "日本",
            "\u202E",
            "\"",
            "\\",
            "\\u12",
            "{",
            "}",
            "[",
            "]",
            ",",
            ":",
            "//x\n",
            "'",
            "\n",
            "\t",
            "NaN",
            "-",
            "1e999",
            "-1",
            "0x10",
            "00",
            "99999999999999999999",
            "1.5",
            "null",
            "true",
            "\"\"",
            "{}",
            "[]");

    private final SplittableRandom random;

    private StrangeDays(long seed) {
        random = new SplittableRandom(seed);
    }

    static String of(long seed) {
        return new StrangeDays(seed).text();
    }

    private String text() {
        String text = DayFileText.write(problem());
        int strangeness = random.nextInt(10);
        for (int count = 0; strangeness > 1 && count < 1 + random.nextInt(3); count++) {
            text = strangeness < 7 ? withStrangeValue(text) : withStrangeText(text);
        }
        return text;
    }

    private Problem problem() {
        int seed = random.nextInt(1_000_000);
        int kind = random.nextInt(20);
        if (kind == 0) {
            return WorkshopDays.rich(8, WorkshopDays.FAIR, seed);
        }
        if (kind == 1) {
            Problem before = WorkshopDays.of(8, WorkshopDays.FAIR, seed);
            ReplanDays.Event event = ReplanDays.Event.values()[seed % 4];
            return ReplanDays.of(before, PackedPlans.pack(before, seed, 20), event, seed);
        }
        if (kind < 8) {
            return TinyProblems.of(seed);
        }
        Problem before = RandomProblems.of(seed);
        return kind < 15
                ? before
                : RandomProblems.later(before, PackedPlans.pack(before, seed, 20), random.nextInt(300), seed);
    }

    /** Where a value stands: in an object under a name, or in a list at an index. */
    private record Spot(JsonNode parent, String name, int index) {
        JsonNode value() {
            return parent.isObject() ? parent.get(name) : parent.get(index);
        }

        void set(JsonNode value) {
            if (parent instanceof ObjectNode object) {
                object.set(name, value);
            } else {
                ((ArrayNode) parent).set(index, value);
            }
        }

        void remove() {
            if (parent instanceof ObjectNode object) {
                object.remove(name);
            } else {
                ((ArrayNode) parent).remove(index);
            }
        }

        void repeat() {
            if (parent instanceof ObjectNode object) {
                object.set(name + "s", value());
            } else {
                ((ArrayNode) parent).insert(index, value().deepCopy());
            }
        }
    }

    private String withStrangeValue(String text) {
        JsonNode tree;
        try {
            tree = JSON.readTree(text);
        } catch (tools.jackson.core.JacksonException broken) {
            return text;
        }
        List<Spot> spots = new ArrayList<>();
        collect(tree, spots);
        if (spots.isEmpty()) {
            return text;
        }
        Spot spot = spots.get(random.nextInt(spots.size()));
        switch (random.nextInt(8)) {
            case 0 -> spot.remove();
            case 1 -> spot.repeat();
            case 2 -> spot.set(spots.get(random.nextInt(spots.size())).value().deepCopy());
            default -> spot.set(spot.value().isNumber() ? number() : any(spots));
        }
        return JSON.writeValueAsString(tree);
    }

    private static void collect(JsonNode node, List<Spot> spots) {
        if (node.isObject()) {
            for (String name : node.propertyNames()) {
                spots.add(new Spot(node, name, 0));
                collect(node.get(name), spots);
            }
        } else if (node.isArray()) {
            for (int index = 0; index < node.size(); index++) {
                spots.add(new Spot(node, "", index));
                collect(node.get(index), spots);
            }
        }
    }

    private JsonNode number() {
        return switch (random.nextInt(12)) {
            case 0 -> NODES.numberNode(10_000_000);
            case 1 -> NODES.numberNode(10_000_001);
            case 2 -> NODES.numberNode(Long.MAX_VALUE);
            case 3 -> NODES.numberNode(-1);
            case 4 -> NODES.numberNode(1.5);
            case 5 -> NODES.numberNode(9_999_999);
            case 6 -> NODES.numberNode(Double.MAX_VALUE);
            case 7, 8 -> NODES.numberNode(0);
            case 9 -> NODES.numberNode(1);
            default -> NODES.numberNode(random.nextInt(2000));
        };
    }

    private JsonNode any(List<Spot> spots) {
        return switch (random.nextInt(9)) {
            case 0 -> NODES.nullNode();
            case 1 -> NODES.booleanNode(true);
            case 2 -> NODES.arrayNode();
            case 3 -> NODES.objectNode();
            case 4 -> NODES.stringNode("");
            case 5 -> NODES.stringNode(BITS.get(random.nextInt(BITS.size())));
            case 6 -> NODES.stringNode("x".repeat(random.nextInt(3000)));
            case 7 -> number();
            default -> spots.get(random.nextInt(spots.size())).value().deepCopy();
        };
    }

    private String withStrangeText(String text) {
        int at = random.nextInt(text.length() + 1);
        int to = Math.min(text.length(), at + random.nextInt(60));
        return switch (random.nextInt(8)) {
            case 0 -> text.substring(0, at);
            case 1 -> text.substring(0, at) + text.substring(to);
            case 2 -> text.substring(0, to) + text.substring(at);
            case 3 -> text.substring(0, at) + nested() + text.substring(at);
            case 4 -> withStrangeDigits(text, at);
            case 5 -> text.substring(at) + text.substring(0, at);
            default -> text.substring(0, at) + BITS.get(random.nextInt(BITS.size())) + text.substring(at);
        };
    }

    private String nested() {
        int depth = 1 << random.nextInt(17);
        return (random.nextBoolean() ? "[" : "{\"a\":").repeat(depth);
    }

    /** The next digits become something else, now and then thousands of them. */
    private String withStrangeDigits(String text, int from) {
        int start = from;
        while (start < text.length() && !Character.isDigit(text.charAt(start))) {
            start++;
        }
        int end = start;
        while (end < text.length() && Character.isDigit(text.charAt(end))) {
            end++;
        }
        String digits = switch (random.nextInt(5)) {
            case 0 -> "9".repeat(1 + random.nextInt(MANY));
            case 1 -> "1e" + random.nextInt(400);
            case 2 -> "0." + "1".repeat(1 + random.nextInt(MANY));
            case 3 -> "-" + random.nextInt(100);
            default -> String.valueOf(random.nextLong());
        };
        return text.substring(0, start) + digits + text.substring(end);
    }
}
