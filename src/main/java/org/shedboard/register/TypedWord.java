package org.shedboard.register;

/**
 * A word that somebody typed, and how many mistakes it is forgiven: one from four letters on, two from eight. A letter too many, one too
 * few, another letter and two neighbours that changed places count as one each. Not for several threads at once.
 */
final class TypedWord {
    private static final int ONE_MISTAKE_FROM = 4;
    private static final int TWO_MISTAKES_FROM = 8;
    /** A shorter piece of a number would, with a mistake, be found in too many numbers. */
    private static final int INSIDE_NUMBERS_FROM = 6;

    private final Spelling typed;
    private final int forgiven;
    private final boolean looksInside;
    /** Rows of the table of edits: of the letter of the written word before last, of the last, and of this one. */
    private int[] beforeLast;

    private int[] last;
    private int[] row;

    TypedWord(String text) {
        this.typed = Spelling.of(text);
        int length = text.length();
        this.forgiven = length >= TWO_MISTAKES_FROM ? 2 : length >= ONE_MISTAKE_FROM ? 1 : 0;
        this.looksInside = length >= INSIDE_NUMBERS_FROM && typed.hasDigit();
        this.beforeLast = new int[length + 1];
        this.last = new int[length + 1];
        this.row = new int[length + 1];
    }

    String text() {
        return typed.text();
    }

    Grade in(Spelling written) {
        int missing = typed.missingIn(written);
        if (missing > forgiven) {
            return Grade.NONE;
        }
        int at = missing > 0 ? -1 : written.text().indexOf(typed.text());
        if (at == 0) {
            return written.text().length() == typed.text().length() ? Grade.EXACT : Grade.PREFIX;
        }
        if (at > 0) {
            return Grade.INSIDE;
        }
        return forgiven > 0 && beginsMisspelt(written.text()) ? Grade.FORGIVEN : Grade.NONE;
    }

    /** Whether the written word begins with the typed one but for the mistakes that are forgiven; in numbers, has it anywhere. */
    private boolean beginsMisspelt(String written) {
        int length = typed.text().length();
        int longest = looksInside ? written.length() : Math.min(written.length(), length + forgiven);
        for (int i = 0; i <= length; i++) {
            last[i] = i;
        }
        boolean found = length <= forgiven;
        for (int j = 1; j <= longest && !found; j++) {
            fill(written, j);
            found = row[length] <= forgiven;
            int[] spare = beforeLast;
            beforeLast = last;
            last = row;
            row = spare;
        }
        return found;
    }

    /** The least mistakes between each beginning of the typed word and what ends with this letter of the written one. */
    private void fill(String written, int j) {
        String text = typed.text();
        row[0] = looksInside ? 0 : j;
        char letter = written.charAt(j - 1);
        for (int i = 1; i <= text.length(); i++) {
            char own = text.charAt(i - 1);
            int least = Math.min(row[i - 1], last[i]) + 1;
            least = Math.min(least, last[i - 1] + (own == letter ? 0 : 1));
            boolean swapped = i > 1 && j > 1 && own == written.charAt(j - 2) && text.charAt(i - 2) == letter;
            row[i] = swapped ? Math.min(least, beforeLast[i - 2] + 1) : least;
        }
    }
}
