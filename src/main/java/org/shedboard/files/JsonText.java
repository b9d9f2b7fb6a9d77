package org.shedboard.files;

import java.util.List;
import java.util.Optional;
import org.shedboard.pack.Fault;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.exc.StreamReadException;
import tools.jackson.databind.DatabindException;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** JSON text as a tree, and back. */
public final class JsonText {
    private JsonText() {}

    /** Made on first use only: it costs a fifth of a second. */
    private static final class Mapper {
        static final JsonMapper ONE = JsonMapper.builder()
                .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                .enable(SerializationFeature.INDENT_OUTPUT)
                .build();
    }

    /** The tree, or empty and one fault with line and column. */
    static Optional<JsonNode> parse(String text, List<Fault> faults) {
        try {
            JsonNode tree = Mapper.ONE.readTree(text);
            if (tree.isMissingNode()) {
                faults.add(new Fault("line 1 column 1", "the file is empty"));
                return Optional.empty();
            }
            return Optional.of(tree);
        } catch (StreamReadException | DatabindException wrong) {
            faults.add(new Fault(placeOf(wrong), wrong.getOriginalMessage()));
            return Optional.empty();
        }
    }

    private static String placeOf(JacksonException wrong) {
        TokenStreamLocation at = wrong.getLocation();
        return at == null ? "" : "line " + at.getLineNr() + " column " + at.getColumnNr();
    }

    /** The text of a tree of maps, lists, texts and numbers, ending in a line break. */
    public static String write(Object tree) {
        return Mapper.ONE.writeValueAsString(tree) + "\n";
    }
}
