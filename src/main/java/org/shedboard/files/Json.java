package org.shedboard.files;

import java.util.List;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Holds the one reader of JSON; touched only when a file is read, for it takes a while to make. */
final class Json {
    private static final JsonMapper MAPPER = JsonMapper.builder(JsonFactory.builder()
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .build())
            .build();

    private Json() {}

    /** The file's outermost object; an empty one, with a fault noted, when the text is no JSON object. */
    static Fields parse(String text, List<Fault> faults) {
        JsonNode root = MAPPER.createObjectNode();
        try {
            JsonNode read = MAPPER.readTree(text);
            if (read.isObject()) {
                return new Fields(read, "", faults);
            }
            faults.add(new Fault("", "the file must hold one object in braces, not %s".formatted(Fields.shown(read))));
        } catch (JacksonException broken) {
            TokenStreamLocation at = broken.getLocation();
            String where = "line " + at.getLineNr() + ", column " + at.getColumnNr();
            String what = broken.getOriginalMessage().lines().findFirst().orElse("broken");
            faults.add(new Fault(where, "this is not JSON: " + what));
        }
        return new Fields(root, "", faults);
    }
}
