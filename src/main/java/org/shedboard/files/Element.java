package org.shedboard.files;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * An element of a page in HTML, or of a picture in it, being put together. Text and the values of attributes are escaped here and
 * nowhere else, so that nothing that somebody typed can become markup. A library would bring templates or a parser, of which a page
 * that is only written needs neither.
 */
final class Element {
    /** Has no inside and no end. */
    private static final Set<String> ALONE = Set.of("meta");

    /** Its text is not markup and cannot be escaped. */
    private static final String STYLE = "style";

    private static final Pattern NAME = Pattern.compile("(xml:)?[a-zA-Z][a-zA-Z0-9-]*");

    /** Control characters, halves of characters and what is no character at all; a page holds none of them. */
    private static final Pattern UNWRITABLE =
            Pattern.compile("[\\x00-\\x08\\x0B\\x0C\\x0E-\\x1F\\x7F-\\x9F\\p{Cs}\\uFDD0-\\uFDEF\\uFFFE\\uFFFF]");

    private final String name;
    private final Map<String, String> attributes = new LinkedHashMap<>();
    /** Elements and texts, in order. */
    private final List<Object> inside = new ArrayList<>();

    private Element(String name) {
        this.name = expectName(name);
    }

    static Element of(String name) {
        return new Element(name);
    }

    static Element of(String name, String text) {
        return of(name).text(text);
    }

    private static String expectName(String name) {
        if (!NAME.matcher(name).matches()) {
            throw new IllegalArgumentException("\"%s\" names no element and no attribute".formatted(name));
        }
        return name;
    }

    Element with(String attribute, String value) {
        attributes.put(expectName(attribute), value);
        return this;
    }

    Element with(String attribute, int value) {
        return with(attribute, String.valueOf(value));
    }

    /** To a hundredth, which in a picture measured in millimetres nobody sees. */
    Element with(String attribute, double value) {
        BigDecimal written = BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP);
        return with(attribute, written.stripTrailingZeros().toPlainString());
    }

    Element text(String text) {
        if (name.equals(STYLE) && text.contains("<")) {
            throw new IllegalArgumentException("a style sheet cannot hold \"<\"");
        }
        inside.add(text);
        return this;
    }

    Element add(Element... elements) {
        return addAll(List.of(elements));
    }

    Element addAll(List<Element> elements) {
        inside.addAll(elements);
        return this;
    }

    /** The whole page of which this is the root. */
    String page() {
        StringBuilder page = new StringBuilder("<!doctype html>\n");
        write(page);
        return page.append('\n').toString();
    }

    /** The whole picture, a file of its own, of which this is the root; as XML, which has no elements without an end. */
    String document() {
        StringBuilder document = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
        write(document);
        return document.append('\n').toString();
    }

    private void write(StringBuilder page) {
        page.append('<').append(name);
        attributes.forEach((attribute, value) -> page.append(' ')
                .append(attribute)
                .append("=\"")
                .append(escaped(value))
                .append('"'));
        page.append('>');
        if (ALONE.contains(name)) {
            return;
        }
        for (Object each : inside) {
            if (each instanceof Element element) {
                element.write(page);
            } else {
                page.append(name.equals(STYLE) ? each : escaped((String) each));
            }
        }
        page.append("</").append(name).append('>');
    }

    /** A carriage return that stood as it is would be read as a line feed. */
    private static String escaped(String text) {
        return UNWRITABLE
                .matcher(text)
                .replaceAll("\uFFFD")
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("\r", "&#13;");
    }
}
