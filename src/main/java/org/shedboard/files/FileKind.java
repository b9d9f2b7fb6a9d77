package org.shedboard.files;

import java.util.ArrayList;
import tools.jackson.databind.JsonNode;

/** What a file is, told by its outermost keys. */
public enum FileKind {
    CATALOGUE,
    SHOP,
    OTHER;

    /** Text that is no JSON object is taken for a catalogue, whose reading says what is wrong with it. */
    public static FileKind of(String text) {
        return JsonText.parse(text, new ArrayList<>())
                .filter(JsonNode::isObject)
                .map(FileKind::of)
                .orElse(CATALOGUE);
    }

    private static FileKind of(JsonNode root) {
        if (root.has("classes") || root.has("works")) {
            return CATALOGUE;
        }
        return root.has("jobs") || !(root.has("places") || root.has("people")) ? OTHER : SHOP;
    }
}
