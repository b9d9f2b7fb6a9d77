package org.shedboard.files;

import java.util.Random;

/** Texts of pieces that have a meaning in some file format, that are long in UTF-8, or that are nothing at all. */
final class StrangeText {
    private static final String[] PIECES = {
        "",
        "",
        "a",
        "tag 14",
        " ",
        "  ",
        "\"",
        "\"\"",
        ",",
        ";",
        ":",
        "\\",
        "\\n",
        "\r\n",
        "\n",
        "\r",
        "\t",
        "=",
        "+",
        "-",
        "@",
        "'",
        "#",
        "BEGIN:VEVENT",
        "\r\nEND:VCALENDAR\r\n",
        "größer",
        "Ünder",
        "œuvre",
        "木",
        "☃",
        "🚜",
        "👩‍🔧",
        "e\u0301",
        "\u00A0",
        "\u2028",
        "%",
        "${x}",
        "<b>",
        "=HYPERLINK(\"x\",\"y\")",
        "a rather long piece of text, so that lines grow; and grow",
    };

    private StrangeText() {}

    static String of(Random chance) {
        StringBuilder text = new StringBuilder();
        for (int pieces = chance.nextInt(6); pieces > 0; pieces--) {
            text.append(PIECES[chance.nextInt(PIECES.length)]);
        }
        return text.toString();
    }
}
