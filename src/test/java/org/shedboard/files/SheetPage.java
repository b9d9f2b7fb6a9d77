package org.shedboard.files;

import java.io.IOException;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.shedboard.testing.Browser;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A sheet as a browser has it, told by a script that a test puts at its end. */
final class SheetPage {
    private static final Pattern TOLD = Pattern.compile("<body>([^<]*)</body>");

    private static final String SCRIPT = """
            <script>
            const all = selector => Array.from(document.querySelectorAll(selector));
            const texts = selector => all(selector).map(each => each.textContent);
            const row = cell => {
              const at = Object.assign({}, cell.closest("tbody")?.dataset, cell.parentNode.dataset);
              return Object.values(at).join("/") || "all";
            };
            const edge = document.body.getBoundingClientRect();
            const pages = all("body *").filter(each => !each.closest("svg") && each.tagName != "SCRIPT");
            const told = {
              title: document.title,
              language: document.documentElement.lang,
              figures: all("td.figure").map(cell =>
                [cell.closest("table").className, row(cell), cell.className.replace("figure ", ""), cell.dataset.minutes,
                 cell.textContent].join(" ")),
              owners: texts(".machines bdi.owner"),
              charged: texts(".charges tbody th"),
              closed: texts(".closed"),
              open: texts(".open li"),
              shop: texts(".shop li"),
              rules: texts(".rules"),
              corrections: all(".corrections tbody tr").map(each => Array.from(each.children).map(cell => cell.textContent)),
              bars: all(".days tbody th").map(each => each.textContent),
              pictures: all("svg[role=img]").map(each =>
                each.getAttribute("aria-labelledby").split(" ").map(id => document.getElementById(id).textContent)),
              hours: texts(".days thead text"),
              headings: all("th").map(each => each.scope),
              scripts: document.scripts.length,
              fetched: performance.getEntriesByType("resource").length,
              wide: pages.filter(each => each.scrollWidth > each.clientWidth + 1 && each.clientWidth > 0
                || each.getBoundingClientRect().right > edge.right + 1).map(each => each.outerHTML.slice(0, 99)),
            };
            document.body.textContent = encodeURIComponent(JSON.stringify(told));
            </script>
            """;

    private SheetPage() {}

    static JsonNode open(Path folder, String html) throws IOException, InterruptedException {
        Path page = folder.resolve("told.html");
        Files.writeString(page, html.replace("</body>", SCRIPT + "</body>"));
        Matcher told = TOLD.matcher(Browser.dom(page));
        if (!told.find()) {
            throw new AssertionError("the script told nothing of\n" + html);
        }
        String json = URLDecoder.decode(told.group(1).strip(), StandardCharsets.UTF_8);
        return JsonMapper.builder().build().readTree(json);
    }
}
