package org.shedboard.testing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.net.httpserver.HttpServer;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicInteger;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Whether a page's scripts, its print and its looks can be seen by a test. */
@Timeout(120)
class BrowserTest {
    private static final String PAGE = """
            <!doctype html>
            <html lang="en">
            <meta charset="utf-8">
            <title>Hours</title>
            <style>
            @page { size: A4 landscape }
            body { margin: 0; background: #fff }
            i { position: fixed; right: 0; bottom: 0; width: 9px; height: 9px; background: #0072b2 }
            </style>
            <p id="sum">not yet</p>
            <i></i>
            <script>document.getElementById("sum").textContent = "größer: " + (3.5 + 4)</script>
            </html>
            """;

    /** A4 is 297 mm wide when it lies, and a point is 1/72 inch. */
    private static final double A4_LENGTH_POINTS = 297 / 25.4 * 72;

    @TempDir
    Path folder;

    @BeforeEach
    void open() throws InterruptedException {
        Browser.demand();
    }

    private Path page(String html) throws IOException {
        return Files.writeString(folder.resolve("a page.html"), html);
    }

    @Test
    void what_a_script_wrote_is_read_back() throws Exception {
        String dom = Browser.dom(page(PAGE));
        assertTrue(dom.contains("<p id=\"sum\">größer: 7.5</p>"), dom);
    }

    @Test
    void a_page_is_printed_with_its_text_on_the_paper_it_asks_for() throws Exception {
        try (PDDocument printed = Loader.loadPDF(Browser.pdf(page(PAGE)))) {
            assertEquals(1, printed.getNumberOfPages());
            assertEquals("größer: 7.5", new PDFTextStripper().getText(printed).strip());
            assertEquals(A4_LENGTH_POINTS, printed.getPage(0).getMediaBox().getWidth(), 1);
        }
    }

    @Test
    void a_picture_has_the_size_asked_for_and_shows_the_page_to_its_corner() throws Exception {
        byte[] picture = Browser.picture(page(PAGE), 640, 400);
        assertEquals("\u0089PNG", new String(picture, 0, 4, StandardCharsets.ISO_8859_1));
        BufferedImage seen = ImageIO.read(new ByteArrayInputStream(picture));
        assertEquals("640 x 400", seen.getWidth() + " x " + seen.getHeight());
        assertEquals(0xff0072b2, seen.getRGB(639, 399));
        assertEquals(0xffffffff, seen.getRGB(620, 380));
    }

    @Test
    void a_page_reaches_no_network() throws Exception {
        AtomicInteger requests = new AtomicInteger();
        HttpServer server = HttpServer.create(new InetSocketAddress("127.0.0.1", 0), 0);
        server.createContext("/", exchange -> {
            requests.incrementAndGet();
            exchange.sendResponseHeaders(404, -1);
        });
        server.start();
        try {
            String image = "http://127.0.0.1:" + server.getAddress().getPort() + "/x.png";
            String dom =
                    Browser.dom(page("<p id=a></p><img src='" + image + "' onerror='a.textContent = \"nothing\"'>"));
            assertTrue(dom.contains("<p id=\"a\">nothing</p>"), dom);
            assertEquals(0, requests.get());
        } finally {
            server.stop(0);
        }
    }
}
