package org.shedboard.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** What the program is put together from: all of it named with its licence, none of it with a fault that is on the kept list. */
class PartsTest {
    private static final Path NOTICE = Path.of("src/main/resources/META-INF/third-party/NOTICE.txt");
    private static final Path KNOWN_FAULTS = Path.of("src/test/resources/known-faults.csv");

    private static List<Part> named() throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        Element project =
                factory.newDocumentBuilder().parse(Path.of("pom.xml").toFile()).getDocumentElement();
        List<Part> parts = new ArrayList<>();
        NodeList all = project.getElementsByTagName("dependency");
        for (int i = 0; i < all.getLength(); i++) {
            Element each = (Element) all.item(i);
            boolean isOfProgram = each.getParentNode().getParentNode() == project
                    && text(each, "scope").isEmpty();
            if (isOfProgram) {
                parts.add(new Part(text(each, "groupId"), text(each, "artifactId"), text(each, "version")));
            }
        }
        return parts;
    }

    private static String text(Element parent, String name) {
        NodeList found = parent.getElementsByTagName(name);
        return found.getLength() == 0 ? "" : found.item(0).getTextContent().strip();
    }

    /** The artifact, and versions before which it has a fault that is known. */
    private static List<String[]> knownFaults() throws Exception {
        return Files.readAllLines(KNOWN_FAULTS).stream()
                .skip(1)
                .map(line -> line.split(",", 4))
                .toList();
    }

    @Test
    void every_library_that_the_program_names_stands_in_the_notice_with_its_version() throws Exception {
        String notice = Files.readString(NOTICE);
        assertTrue(named().size() >= 6, "the libraries are read from pom.xml");
        for (Part part : named()) {
            String entry = notice.lines()
                    .filter(line -> line.contains(part.group()) && line.contains(part.artifact()))
                    .findFirst()
                    .orElse("");
            String version = part.version().substring(0, part.version().lastIndexOf('.'));
            assertTrue(entry.contains(" " + version), part + " in: " + entry);
        }
    }

    @Test
    void none_of_them_is_older_than_the_repair_of_a_fault_that_is_known() throws Exception {
        int compared = 0;
        for (Part part : named()) {
            for (String[] fault : knownFaults()) {
                // jackson-databind comes with the jackson-core of its own version
                boolean isMeant =
                        part.name().replace("jackson-databind", "jackson-core").equals(fault[0]);
                compared += isMeant ? 1 : 0;
                assertFalse(isMeant && part.isBefore(fault[1]), part + " has " + fault[2]);
            }
        }
        assertEquals(knownFaults().size(), compared, "every line of the list is of a library that is used");
    }

    @Test
    void versions_are_compared_number_by_number() {
        Part part = new Part("org.example", "part", "2.10.1");
        assertTrue(part.isBefore("2.10.2"));
        assertTrue(part.isBefore("2.11"));
        assertFalse(part.isBefore("2.9.9"));
        assertFalse(part.isBefore("2.10.1"));
    }
}
