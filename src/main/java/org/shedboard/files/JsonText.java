package org.shedboard.files;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.shedboard.pack.Fault;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.exc.StreamConstraintsException;
import tools.jackson.core.exc.StreamReadException;
import tools.jackson.databind.DatabindException;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** JSON text as a tree, and back. */
public final class JsonText {
    /** Where the library says which of its settings was exceeded; nobody can set it here. */
    private static final Pattern LIMIT_NAME = Pattern.compile(", from `[^`]*`");

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
        } catch (StreamReadException wrong) {
            faults.add(new Fault(placeOf(wrong), wrong.getOriginalMessage()));
        } catch (StreamConstraintsException tooMuch) {
            faults.add(new Fault(
                    placeOf(tooMuch),
                    LIMIT_NAME.matcher(tooMuch.getOriginalMessage()).replaceAll("")));
        } catch (DatabindException more) {
            faults.add(new Fault(placeOf(more), "there is more after the end"));
        }
        return Optional.empty();
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
