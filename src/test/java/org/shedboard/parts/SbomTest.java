package org.shedboard.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The list of parts inside the runnable file. */
@Tag("e2e")
class SbomTest {
    private static final String LIST = "META-INF/sbom/shedboard.cdx.json";

    /** Licences under which a part may be in the runnable file; their SPDX names. */
    private static final Set<String> ALLOWED = Set.of(
            "Apache-2.0",
            "MIT",
            "MPL-2.0",
            "EPL-1.0",
            "LGPL-3.0",
            "LGPL-3.0-only",
            "BSD-2-Clause",
            "BSD-2-Clause-Views");

    private static String inside(String name) throws Exception {
        try (ZipFile jar = new ZipFile(System.getProperty("shedboard.jar"));
                InputStream in = jar.getInputStream(jar.getEntry(name))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static List<JsonNode> components() throws Exception {
        JsonNode list = JsonMapper.builder().build().readTree(inside(LIST));
        assertEquals("CycloneDX", list.get("bomFormat").asString());
        List<JsonNode> components = new ArrayList<>();
        list.get("components").forEach(components::add);
        return components;
    }

    @Test
    void every_part_stands_in_the_notice() throws Exception {
        String notice = inside("META-INF/third-party/NOTICE.txt");
        List<JsonNode> components = components();
        assertTrue(components.size() >= 8, components.toString());
        for (JsonNode each : components) {
            String name = each.get("name").asString();
            assertTrue(
                    notice.contains(name) && notice.contains(each.get("group").asString()), each.toString());
        }
    }

    @Test
    void every_part_has_a_licence_under_which_it_may_be_here() throws Exception {
        for (JsonNode each : components()) {
            List<String> licences = new ArrayList<>();
            JsonNode all = each.path("licenses");
            all.forEach(entry -> licences.add(licence(entry)));
            assertTrue(licences.stream().anyMatch(ALLOWED::contains), each.get("name") + " " + licences + " " + all);
        }
    }

    /** One that the list has no SPDX name for is named as its maker does. */
    private static String licence(JsonNode entry) {
        JsonNode licence = entry.path("license");
        String id = licence.path("id").asString("");
        String name = licence.path("name").asString("");
        return !id.isEmpty()
                ? id
                : switch (name) {
                    case "FreeBSD License" -> "BSD-2-Clause";
                    case "GNU Lesser General Public License" -> "LGPL-3.0";
                    default -> name;
                };
    }
}
