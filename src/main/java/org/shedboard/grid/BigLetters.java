package org.shedboard.grid;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Block letters that can be read from across the shop: digits, A to Z, the dash and the colon. */
public final class BigLetters {
    /** How tall they are. */
    public static final int ROWS = 7;

    /** Columns from one drawn letter to the next, in the drawing only. */
    private static final int SLOT = 9;

    /** Columns of a blank, or of a character that we have no letter for. */
    private static final int BLANK = 4;

    private static final Map<Character, List<String>> LETTERS = new HashMap<>();

    private BigLetters() {}

    static {
        draw("01234567", """
             ####      ##      ####     ####       ###   ######     ###    ######
            ##  ##   ####     ##  ##   ##  ##     ####   ##        ##          ##
            ## ###     ##         ##       ##    ## ##   #####    ##          ##
            ######     ##        ##      ###    ##  ##       ##   #####       ##
            ### ##     ##       ##         ##   #######      ##   ##  ##     ##
            ##  ##     ##      ##      ##  ##       ##   ##  ##   ##  ##     ##
             ####    ######   ######    ####        ##    ####     ####      ##
            """);
        draw("89-ABCDE", """
             ####     ####               ##     #####     #####   #####    ######
            ##  ##   ##  ##             ####    ##  ##   ##   ##  ##  ##   ##
            ##  ##   ##  ##            ##  ##   ##  ##   ##       ##   ##  ##
             ####     #####   #####    ##  ##   #####    ##       ##   ##  #####
            ##  ##       ##            ######   ##  ##   ##       ##   ##  ##
            ##  ##      ##             ##  ##   ##  ##   ##   ##  ##  ##   ##
             ####     ###              ##  ##   #####     #####   #####    ######
            """);
        draw("FGHIJKLM", """
            ######    #####   ##   ##  ####        ####  ##  ##   ##       ##    ##
            ##       ##   ##  ##   ##   ##          ##   ## ##    ##       ###  ###
            ##       ##       ##   ##   ##          ##   ####     ##       ########
            #####    ##  ###  #######   ##          ##   ###      ##       ## ## ##
            ##       ##   ##  ##   ##   ##          ##   ####     ##       ##    ##
            ##       ##   ##  ##   ##   ##      ##  ##   ## ##    ##       ##    ##
            ##        ######  ##   ##  ####      ####    ##  ##   ######   ##    ##
            """);
        draw("NOPQRSTU", """
            ##   ##   #####   #####     #####   #####     #####   ######   ##   ##
            ###  ##  ##   ##  ##  ##   ##   ##  ##  ##   ##   ##    ##     ##   ##
            #### ##  ##   ##  ##  ##   ##   ##  ##  ##   ##         ##     ##   ##
            #######  ##   ##  #####    ##   ##  #####     #####     ##     ##   ##
            ## ####  ##   ##  ##       ## # ##  ####          ##    ##     ##   ##
            ##  ###  ##   ##  ##       ##  ##   ## ##    ##   ##    ##     ##   ##
            ##   ##   #####   ##        ### ##  ##  ##    #####     ##      #####
            """);
        draw("VWXYZ:", """
            ##   ##  ##    ## ##  ##   ##  ##   ######
            ##   ##  ##    ## ##  ##   ##  ##       ##   ##
            ##   ##  ##    ##  ####    ##  ##      ##    ##
             ## ##   ## ## ##   ##      ####      ##
             ## ##   ########  ####      ##      ##      ##
              ###    ###  ### ##  ##     ##     ##       ##
               #     ##    ## ##  ##     ##     ######
            """);
    }

    /** Columns that a text takes in big letters. */
    public static int width(String text) {
        return rows(text).get(0).length();
    }

    /** The text in big letters, row by row, all rows equally long. */
    static List<String> rows(String text) {
        List<String> rows = new ArrayList<>();
        for (int row = 0; row < ROWS; row++) rows.add(row(text.toUpperCase(Locale.ROOT), row));
        return List.copyOf(rows);
    }

    private static String row(String text, int row) {
        StringBuilder line = new StringBuilder();
        for (char letter : text.toCharArray()) {
            List<String> drawn = LETTERS.get(letter);
            line.append(drawn == null ? " ".repeat(BLANK) : drawn.get(row)).append(' ');
        }
        if (!line.isEmpty()) line.setLength(line.length() - 1);
        return line.toString();
    }

    private static void draw(String letters, String drawing) {
        List<String> rows =
                drawing.lines().map(row -> row.replace('#', Glyphs.FULL)).toList();
        for (int i = 0; i < letters.length(); i++) LETTERS.put(letters.charAt(i), cutOut(rows, i * SLOT));
    }

    private static List<String> cutOut(List<String> rows, int from) {
        List<String> slot = rows.stream().map(row -> slot(row, from)).toList();
        int width = slot.stream()
                .mapToInt(row -> row.stripTrailing().length())
                .max()
                .orElse(0);
        return slot.stream().map(row -> row.substring(0, width)).toList();
    }

    private static String slot(String row, int from) {
        String padded = row + " ".repeat(from + SLOT);
        return padded.substring(from, from + SLOT);
    }
}
