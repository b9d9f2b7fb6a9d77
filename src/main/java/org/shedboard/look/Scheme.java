package org.shedboard.look;

import org.shedboard.grid.Style;

/**
 * The colours of all styles: light on dark for a shed, dark on light for a bright office. Every pair can be read, as it stands and
 * in the nearest fixed colours. Orange and blue carry the meanings, never red against green, so that nothing hangs on telling those
 * two apart and no finding looks like a lamp. All values are our own choice.
 */
public enum Scheme {
    DARK(0x1B1D20) {
        @Override
        public Look of(Style style) {
            return switch (style) {
                case NORMAL -> onPage(style, 0xDCDAD5);
                case QUIET -> onPage(style, 0xA9A8A4);
                case TITLE -> on(0x0A5C86, style, 0xFFFFFF);
                case STRONG -> onPage(style, 0xFFFFFF);
                case SELECTED -> on(0xB1D8FA, style, 0x101214);
                case LATE -> onPage(style, 0xFFB35C);
                case DANGER -> on(0xFFB35C, style, 0x101214);
                case GOOD -> onPage(style, 0x86D6D8);
                case HANDS_ON -> on(0x5FB0DA, style, 0x101214);
                case UNATTENDED -> on(0x43464A, style, 0xB3D6F7);
                case HELD -> onPage(style, 0xD6B2FA);
                case FREE -> onPage(style, 0xB3B2AE);
                case CLOSED -> on(0x43464A, style, 0xBEBDB9);
                case NOW -> onPage(style, 0xFFFBB0);
                case FRAME -> onPage(style, 0x8C8F93);
                case KEY -> onPage(style, 0x87D3FF);
                case KEY_OFF -> onPage(style, 0x97999C);
                case CAUTION -> onPage(style, 0xFFD9AE);
                case FIELD -> on(0x43464A, style, 0xFFFFFF);
                case CURSOR -> on(0xFFFFFF, style, 0x101214);
                case BREAK -> on(0x303336, style, 0xBEBDB9);
                case PROMISE -> onPage(style, 0xFFD787);
            };
        }
    },
    LIGHT(0xFAF9F6) {
        @Override
        public Look of(Style style) {
            return switch (style) {
                case NORMAL -> onPage(style, 0x22252A);
                case QUIET -> onPage(style, 0x5C6066);
                case TITLE -> on(0x0A5C86, style, 0xFFFFFF);
                case STRONG -> onPage(style, 0x000000);
                case SELECTED -> on(0xA9D4F7, style, 0x101214);
                case LATE -> onPage(style, 0x8A4300);
                case DANGER -> on(0x8A4300, style, 0xFFFFFF);
                case GOOD -> onPage(style, 0x00606B);
                case HANDS_ON -> on(0x1F6FA8, style, 0xFFFFFF);
                case UNATTENDED -> on(0xD3E3F2, style, 0x0B3F66);
                case HELD -> onPage(style, 0x6A2C91);
                case FREE -> onPage(style, 0x5A5E63);
                case CLOSED -> on(0xDEDCD7, style, 0x4A4D52);
                case NOW -> onPage(style, 0x6B5200);
                case FRAME -> onPage(style, 0x686C71);
                case KEY -> onPage(style, 0x00558F);
                case KEY_OFF -> onPage(style, 0x66696E);
                case CAUTION -> onPage(style, 0x7A3E00);
                case FIELD -> on(0xE3E7EC, style, 0x000000);
                case CURSOR -> on(0x101214, style, 0xFFFFFF);
                case BREAK -> on(0xECEAE6, style, 0x4A4D52);
                case PROMISE -> onPage(style, 0x6B4E00);
            };
        }
    };

    private final int page;

    Scheme(int page) {
        this.page = page;
    }

    /** How a style looks. */
    public abstract Look of(Style style);

    Look onPage(Style style, int ink) {
        return on(page, style, ink);
    }

    static Look on(int paper, Style style, int ink) {
        return new Look(Colour.of(ink), Colour.of(paper), isBold(style));
    }

    /** What is urgent or leads the eye is bold besides, whatever its colour. */
    private static boolean isBold(Style style) {
        return switch (style) {
            case TITLE, STRONG, LATE, DANGER, NOW, KEY, CAUTION -> true;
            default -> false;
        };
    }
}
