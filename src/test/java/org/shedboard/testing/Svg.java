package org.shedboard.testing;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.shedboard.grid.Size;
import org.shedboard.grid.TextWidth;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/** A picture of a screen, read with a parser of XML that refuses whatever is not well formed. */
public final class Svg {
    public static final double CELL_WIDTH = 9.6;
    public static final double CELL_HEIGHT = 19;
    public static final double MARGIN = 12;

    private static final String NAMESPACE = "http://www.w3.org/2000/svg";

    private final Document document;

    private Svg(Document document) {
        this.document = document;
    }

    /** The parser's complaint is the failure where it is no XML. */
    public static Svg of(String text) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setNamespaceAware(true);
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            DocumentBuilder builder = factory.newDocumentBuilder();
            builder.setErrorHandler(new Strict());
            return new Svg(builder.parse(new InputSource(new StringReader(text))));
        } catch (ParserConfigurationException | SAXException | IOException bad) {
            throw new AssertionError(text, bad);
        }
    }

    public Element root() {
        return document.getDocumentElement();
    }

    /** All elements of SVG with that name, in order. */
    public List<Element> all(String name) {
        NodeList found = document.getElementsByTagNameNS(NAMESPACE, name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < found.getLength(); i++) {
            elements.add((Element) found.item(i));
        }
        return elements;
    }

    public Element only(String name) {
        List<Element> found = all(name);
        if (found.size() != 1) throw new AssertionError(found.size() + " times " + name);
        return found.get(0);
    }

    /** The rows of the screen, put together from where its texts stand; without blanks at the end. */
    public List<String> lines(Size size) {
        char[][] cells = new char[size.rows()][size.columns()];
        for (char[] row : cells) Arrays.fill(row, ' ');
        for (Element text : all("text")) {
            int column = (int) Math.round((number(text, "x") - MARGIN) / CELL_WIDTH);
            char[] row = cells[(int) ((number(text, "y") - MARGIN) / CELL_HEIGHT)];
            for (char glyph : text.getTextContent().toCharArray()) {
                row[column] = glyph;
                column += TextWidth.of(glyph);
                if (TextWidth.of(glyph) == 2) row[column - 1] = '\0';
            }
        }
        return Arrays.stream(cells)
                .map(row -> new String(row).replace("\0", "").stripTrailing())
                .toList();
    }

    private static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }

    private static final class Strict implements ErrorHandler {
        @Override
        public void warning(SAXParseException fault) throws SAXParseException {
            throw fault;
        }

        @Override
        public void error(SAXParseException fault) throws SAXParseException {
            throw fault;
        }

        @Override
        public void fatalError(SAXParseException fault) throws SAXParseException {
            throw fault;
        }
    }
}
