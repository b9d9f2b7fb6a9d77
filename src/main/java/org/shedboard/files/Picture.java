package org.shedboard.files;

/**
 * A drawing in a page, measured in millimetres from its upper left corner. It is black, grey and white and told by form and letters,
 * so that it prints on anything; what it shows is also said in words.
 */
final class Picture {
    /** Patterns that the drawings of a page share; the page has them once. */
    private static final String HATCHED = "hatched";

    private static final String DOTTED = "dotted";
    private static final double LINE = 0.14;

    private final Element svg;

    private Picture(double width, double height) {
        svg = Element.of("svg")
                .with("viewBox", "0 0 " + width + " " + height)
                .with("style", "width:%smm;height:%smm".formatted(width, height));
    }

    /**
     * A drawing that says something.
     *
     * @param id unlike that of any other drawing of the page
     */
    static Picture of(double width, double height, String id, String title, String words) {
        Picture picture = new Picture(width, height);
        picture.svg
                .with("role", "img")
                .with("aria-labelledby", id + "-title " + id + "-words")
                .add(
                        Element.of("title", title).with("id", id + "-title"),
                        Element.of("desc", words).with("id", id + "-words"));
        return picture;
    }

    /** One that only repeats what stands beside it. */
    static Picture mute(double width, double height) {
        Picture picture = new Picture(width, height);
        picture.svg.with("aria-hidden", "true");
        return picture;
    }

    /** What the patterns look like: slanting lines, and dots. */
    static Element patterns() {
        Element lines = pattern(HATCHED, 1.2)
                .with("patternTransform", "rotate(45)")
                .add(Element.of("rect").with("width", 0.3).with("height", 1.2).with("fill", "#555"));
        Element dots = pattern(DOTTED, 1)
                .add(Element.of("circle")
                        .with("cx", 0.5)
                        .with("cy", 0.5)
                        .with("r", 0.17)
                        .with("fill", "#777"));
        return Element.of("svg")
                .with("class", "patterns")
                .with("aria-hidden", "true")
                .add(Element.of("defs").add(lines, dots));
    }

    private static Element pattern(String id, double size) {
        return Element.of("pattern")
                .with("id", id)
                .with("width", size)
                .with("height", size)
                .with("patternUnits", "userSpaceOnUse");
    }

    Picture full(Box box) {
        return box(box, "#c4c4c4");
    }

    Picture empty(Box box) {
        return box(box, "#fff");
    }

    Picture hatched(Box box) {
        return box(box, "url(#" + HATCHED + ")");
    }

    Picture dotted(Box box) {
        return box(box, "url(#" + DOTTED + ")");
    }

    private Picture box(Box box, String fill) {
        svg.add(Element.of("rect")
                .with("x", box.left())
                .with("y", box.top())
                .with("width", box.width())
                .with("height", box.height())
                .with("fill", fill)
                .with("stroke", "#000")
                .with("stroke-width", LINE));
        return this;
    }

    /** A line through the middle of the box. */
    Picture through(Box box, double width, String dashes) {
        double middle = box.top() + box.height() / 2;
        return line(box.left(), middle, box.right(), middle, width, dashes);
    }

    Picture upright(double x, double top, double bottom, double width) {
        return line(x, top, x, bottom, width, "none");
    }

    private Picture line(double fromX, double fromY, double toX, double toY, double width, String dashes) {
        svg.add(Element.of("line")
                .with("x1", fromX)
                .with("y1", fromY)
                .with("x2", toX)
                .with("y2", toY)
                .with("stroke", "#000")
                .with("stroke-width", width)
                .with("stroke-dasharray", dashes));
        return this;
    }

    /** A word in the middle of the box, readable on any pattern. */
    Picture label(Box box, String text) {
        svg.add(Element.of("text", text)
                .with("x", box.left() + box.width() / 2)
                .with("y", box.top() + box.height() / 2 + 0.9));
        return this;
    }

    Element element() {
        return svg;
    }
}
