package org.shedboard.term;

import static com.googlecode.lanterna.SGR.BOLD;
import static com.googlecode.lanterna.SGR.UNDERLINE;
import static com.googlecode.lanterna.TextColor.ANSI.BLACK;
import static com.googlecode.lanterna.TextColor.ANSI.BLUE;
import static com.googlecode.lanterna.TextColor.ANSI.CYAN;
import static com.googlecode.lanterna.TextColor.ANSI.CYAN_BRIGHT;
import static com.googlecode.lanterna.TextColor.ANSI.MAGENTA;
import static com.googlecode.lanterna.TextColor.ANSI.MAGENTA_BRIGHT;
import static com.googlecode.lanterna.TextColor.ANSI.WHITE;
import static com.googlecode.lanterna.TextColor.ANSI.WHITE_BRIGHT;
import static com.googlecode.lanterna.TextColor.ANSI.YELLOW_BRIGHT;

import org.shedboard.grid.Style;
import org.shedboard.look.Scheme;

/**
 * How styles look where a terminal has sixteen colours. People change them, so only pairs are used that can be read with the values
 * that terminals usually come with. Two habits of theirs are minded: bold text is shown in the brighter colour by some, so
 * that no dark ink is bold; and a background has no brighter colour.
 */
final class SixteenColours {
    private SixteenColours() {}

    static Paint of(Scheme scheme, Style style) {
        return switch (scheme) {
            case DARK -> dark(style);
            case LIGHT -> light(style);
        };
    }

    private static Paint dark(Style style) {
        return switch (style) {
            case NORMAL, QUIET, FREE, CLOSED, FRAME, KEY_OFF, BREAK -> Paint.of(WHITE, BLACK);
            case TITLE -> Paint.of(WHITE_BRIGHT, BLUE, BOLD);
            case STRONG -> Paint.of(WHITE_BRIGHT, BLACK, BOLD);
            case SELECTED, CURSOR -> Paint.of(BLACK, WHITE);
            case LATE, NOW, CAUTION -> Paint.of(YELLOW_BRIGHT, BLACK, BOLD);
            case DANGER -> Paint.of(WHITE_BRIGHT, MAGENTA, BOLD);
            case GOOD -> Paint.of(CYAN, BLACK);
            case HANDS_ON -> Paint.of(BLACK, CYAN);
            case UNATTENDED -> Paint.of(CYAN_BRIGHT, BLUE);
            case HELD -> Paint.of(MAGENTA_BRIGHT, BLACK);
            case KEY -> Paint.of(CYAN_BRIGHT, BLACK, BOLD);
            case FIELD -> Paint.of(WHITE_BRIGHT, BLUE);
            case PROMISE -> Paint.of(YELLOW_BRIGHT, BLACK);
        };
    }

    private static Paint light(Style style) {
        return switch (style) {
            case NORMAL, QUIET, HELD, FREE, CLOSED, FRAME, KEY_OFF, BREAK -> Paint.of(BLACK, WHITE);
            case TITLE -> Paint.of(WHITE_BRIGHT, BLUE, BOLD);
            case STRONG, GOOD, NOW, KEY, PROMISE -> Paint.of(BLUE, WHITE);
            case SELECTED, CURSOR -> Paint.of(WHITE_BRIGHT, BLACK);
            case LATE, CAUTION -> Paint.of(BLUE, WHITE, UNDERLINE);
            case DANGER -> Paint.of(WHITE_BRIGHT, MAGENTA, BOLD);
            case HANDS_ON -> Paint.of(WHITE_BRIGHT, BLUE);
            case UNATTENDED -> Paint.of(BLACK, CYAN);
            case FIELD -> Paint.of(BLACK, CYAN, UNDERLINE);
        };
    }
}
