package org.shedboard.look;

import java.util.Comparator;
import java.util.Locale;
import java.util.stream.IntStream;

/** A colour of a screen: three lights, each from 0 (out) to 255 (full), in the usual space of screens (sRGB). */
public record Colour(int red, int green, int blue) {
    /** The numbers of a terminal with 256 colours that nobody redefines; those below are what people make of them. */
    private static final int FIRST_FIXED = 16;

    private static final int LAST_FIXED = 255;
    private static final int FIRST_GREY = 232;

    /** The lights that each side of the cube of fixed colours has; their numbers are those of xterm. */
    private static final int[] CUBE = {0, 95, 135, 175, 215, 255};

    public Colour {
        for (int light : new int[] {red, green, blue}) {
            if (light < 0 || light > 255) throw new IllegalArgumentException(light + " is no light from 0 to 255");
        }
    }

    /** From six hexadecimal digits, two a light. */
    static Colour of(int hex) {
        return new Colour(hex >> 16, hex >> 8 & 255, hex & 255);
    }

    /** The fixed colour with a number from 16 to 255: a cube of six lights a side, then greys. */
    public static Colour fixed(int number) {
        if (number < FIRST_FIXED || number > LAST_FIXED) {
            throw new IllegalArgumentException(number + " is the number of no fixed colour");
        }
        if (number >= FIRST_GREY) {
            int grey = 8 + 10 * (number - FIRST_GREY);
            return new Colour(grey, grey, grey);
        }
        int place = number - FIRST_FIXED;
        return new Colour(CUBE[place / 36], CUBE[place / 6 % 6], CUBE[place % 6]);
    }

    /** The number of the fixed colour that is nearest, the lowest where several are. */
    public int nearestFixed() {
        return IntStream.rangeClosed(FIRST_FIXED, LAST_FIXED)
                .boxed()
                .min(Comparator.comparingInt(number -> distance(fixed(number))))
                .orElseThrow();
    }

    private int distance(Colour other) {
        int reds = red - other.red;
        int greens = green - other.green;
        int blues = blue - other.blue;
        return reds * reds + greens * greens + blues * blues;
    }

    /** How well text in one of two colours can be read on the other, from 1 to 21; 4.5 is enough (WCAG 2.2, AA). */
    public double contrastTo(Colour other) {
        double one = luminance() + 0.05;
        double two = other.luminance() + 0.05;
        return Math.max(one, two) / Math.min(one, two);
    }

    /** Relative luminance as WCAG 2.2 defines it, from 0 for black to 1 for white. */
    double luminance() {
        return 0.2126 * linear(red) + 0.7152 * linear(green) + 0.0722 * linear(blue);
    }

    private static double linear(int light) {
        double share = light / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }

    /** As style sheets write it. */
    public String hex() {
        return String.format(Locale.ROOT, "#%02x%02x%02x", red, green, blue);
    }
}
