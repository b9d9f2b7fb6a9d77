package org.shedboard.files;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.shedboard.pack.fault.Fault;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.DatabindException;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** JSON text as a tree, and back. */
public final class JsonText {
    private JsonText() {}

    /** Our deepest file, a shop with its morning, has a tenth of it. */
    private static final int MOST_NESTED = 100;

    /** Characters of one text; a note that somebody typed has at most 200. */
    private static final int LONGEST_TEXT = 100_000;

    private static final int LONGEST_NAME = 1_000;
    /** Digits; more than a number of minutes or kilograms ever has. */
    private static final int LONGEST_NUMBER = 100;

    /** Made on first use only: it costs a fifth of a second. */
    private static final class Mapper {
        static final JsonMapper ONE = JsonMapper.builder(JsonFactory.builder()
                        .streamReadConstraints(StreamReadConstraints.builder()
                                .maxNestingDepth(MOST_NESTED)
                                .maxStringLength(LONGEST_TEXT)
                                .maxNameLength(LONGEST_NAME)
                                .maxNumberLength(LONGEST_NUMBER)
                                .build())
                        .build())
                .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                .enable(SerializationFeature.INDENT_OUTPUT)
                .build();
    }

    private static final char BYTE_ORDER_MARK = '\uFEFF';

    /** What the parser says to programmers: which of its settings would let the text pass. */
    private static final Pattern ADVICE =
            Pattern.compile(", from `[^`]*`|: enable `[^`]*` to allow| \\(not recognized as one since [^)]*\\)");

    /** The tree, or empty and one fault with line and column, or of the whole file where it is too large in some way. */
    static Optional<JsonNode> parse(String text, List<Fault> faults) {
        if (!text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK) {
            faults.add(new Fault("line 1 column 1", "a byte order mark; the file is to be UTF-8 without one"));
            return Optional.empty();
        }
        try {
            JsonNode tree = Mapper.ONE.readTree(text);
            if (tree.isMissingNode()) {
                faults.add(new Fault("line 1 column 1", "the file is empty"));
                return Optional.empty();
            }
            return Optional.of(tree);
        } catch (DatabindException more) {
            faults.add(new Fault(placeOf(more), "there is more after the end"));
            return Optional.empty();
        } catch (JacksonException wrong) {
            String what = ADVICE.matcher(wrong.getOriginalMessage()).replaceAll("");
            faults.add(new Fault(placeOf(wrong), what.replaceAll("\\s+", " ")));
            return Optional.empty();
        }
    }

    private static String placeOf(JacksonException wrong) {
        TokenStreamLocation at = wrong.getLocation();
        return at == null ? "the file" : "line " + at.getLineNr() + " column " + at.getColumnNr();
    }

    /** The text of a tree of maps, lists, texts and numbers, ending in a line break. */
    public static String write(Object tree) {
        return Mapper.ONE.writeValueAsString(tree) + "\n";
    }
}
