package org.shedboard.register;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import org.shedboard.register.NumberRemark.Kind;

/**
 * An identification number and what can be told from it. It is kept as it was typed; only for judging it are blanks and hyphens left out
 * and letters made large. Nothing in it is refused or changed: what fails is said, and what it was perhaps read for is suggested.
 *
 * @param judged what is judged
 */
public record IdNumber(String typed, String judged) {
    private static final String EXCLUDED = "IOQ";
    /** What each excluded letter is taken for when it is misread. */
    private static final String READ_FOR = "100";

    /** Index of the character that decides the year on cars and light trucks. */
    private static final int SEVENTH = 6;

    public static IdNumber of(String typed) {
        return new IdNumber(typed, typed.replaceAll("[\\s\\p{Pd}]", "").toUpperCase(Locale.ROOT));
    }

    /** A number of seventeen is of a vehicle unless a letter stands where the check digit would; one that was misread stays one. */
    public NumberKind kind() {
        if (judged.isEmpty()) {
            return NumberKind.NONE;
        }
        if (!judged.matches("[0-9A-Z]{" + CheckDigit.LENGTH + "}")) {
            return NumberKind.SERIAL;
        }
        char ninth = corrected().charAt(CheckDigit.PLACE);
        return CheckDigit.isDigit(ninth) || ninth == 'X' ? NumberKind.VEHICLE : NumberKind.PRODUCT;
    }

    public NumberCheck check() {
        return switch (kind()) {
            case NONE, SERIAL -> NumberCheck.NOT_ASKED;
            case PRODUCT -> NumberCheck.NOT_CHECKABLE;
            case VEHICLE -> isWhole() && hasRightDigit(judged) ? NumberCheck.RIGHT : NumberCheck.WRONG;
        };
    }

    /** The check digit the rest asks for; empty where there is none or the rest cannot be right. */
    public Optional<Character> expectedDigit() {
        return kind() == NumberKind.VEHICLE && isWhole() ? Optional.of(CheckDigit.of(judged)) : Optional.empty();
    }

    /** Whether there is no letter in it that vehicle numbers leave out because it reads like a digit. */
    private boolean isWhole() {
        return judged.chars().allMatch(character -> CheckDigit.isAllowed((char) character));
    }

    private static boolean hasRightDigit(String number) {
        return number.charAt(CheckDigit.PLACE) == CheckDigit.of(number);
    }

    /** A vehicle number with digits for the letters that it cannot have; empty where it has none of them. */
    public Optional<String> misread() {
        return kind() == NumberKind.VEHICLE && !isWhole() ? Optional.of(corrected()) : Optional.empty();
    }

    private String corrected() {
        String right = judged;
        for (int i = 0; i < EXCLUDED.length(); i++) {
            right = right.replace(EXCLUDED.charAt(i), READ_FOR.charAt(i));
        }
        return right;
    }

    /** The model years it allows, oldest first, none later than the next year; which of several it is has to be asked. */
    public List<Integer> years(int thisYear) {
        return kind() == NumberKind.VEHICLE ? list(YearCode.yearsOf(yearCode(), thisYear + 1)) : List.of();
    }

    private static List<Integer> list(int[] years) {
        return Arrays.stream(years).boxed().toList();
    }

    private char yearCode() {
        return judged.charAt(YearCode.PLACE);
    }

    /** The year it would have if it were the number of a car or a light truck, which no machine of a workshop like ours is. */
    public OptionalInt yearOnLightVehicle() {
        return kind() == NumberKind.VEHICLE && YearCode.isCode(yearCode())
                ? OptionalInt.of(YearCode.onLightVehicle(yearCode(), judged.charAt(SEVENTH)))
                : OptionalInt.empty();
    }

    /** Whether it is marked, on the machine and wherever it is shown. */
    public boolean fails() {
        return faults().stream().anyMatch(remark -> remark.kind().fails());
    }

    /** What is wrong with it, or looks so, the first thing first. */
    public List<NumberRemark> faults() {
        return switch (kind()) {
            case VEHICLE -> vehicleFaults();
            case SERIAL -> isAlmostVehicle() ? List.of(remark(Kind.ALMOST_VEHICLE, judged.length())) : List.of();
            case NONE, PRODUCT -> List.of();
        };
    }

    private boolean isAlmostVehicle() {
        return Math.abs(judged.length() - CheckDigit.LENGTH) == 1;
    }

    private List<NumberRemark> vehicleFaults() {
        List<NumberRemark> faults = new ArrayList<>();
        for (int i = 0; i < judged.length(); i++) {
            int letter = EXCLUDED.indexOf(judged.charAt(i));
            if (letter >= 0) {
                faults.add(remark(Kind.LETTER_EXCLUDED, i + 1, judged.charAt(i), READ_FOR.charAt(letter)));
            }
        }
        misread()
                .ifPresent(right ->
                        faults.add(remark(hasRightDigit(right) ? Kind.READ_AS_RIGHT : Kind.READ_AS_WRONG, right)));
        expectedDigit()
                .filter(digit -> digit != judged.charAt(CheckDigit.PLACE))
                .ifPresent(digit -> faults.add(remark(Kind.CHECK_DIGIT_WRONG, judged.charAt(CheckDigit.PLACE), digit)));
        if (!YearCode.isCode(yearCode())) {
            faults.add(remark(Kind.NO_YEAR, yearCode()));
        }
        return faults;
    }

    /** All there is to say of it. */
    public List<NumberRemark> remarks(int thisYear) {
        List<NumberRemark> remarks = new ArrayList<>(faults());
        switch (kind()) {
            case NONE -> remarks.add(remark(Kind.NOTHING));
            case SERIAL -> remarks.add(remark(Kind.SERIAL_AS_IT_IS, judged.length()));
            case PRODUCT -> remarks.add(remark(Kind.CHECK_LETTER, judged.charAt(CheckDigit.PLACE)));
            case VEHICLE -> vehicleRemarks(remarks, thisYear);
        }
        return remarks;
    }

    private void vehicleRemarks(List<NumberRemark> remarks, int thisYear) {
        if (check() == NumberCheck.RIGHT) {
            remarks.add(remark(Kind.CHECK_DIGIT_RIGHT, judged.charAt(CheckDigit.PLACE)));
        }
        if (!YearCode.isCode(yearCode())) {
            return;
        }
        List<Integer> years = years(thisYear);
        remarks.add(remark(years.size() > 1 ? Kind.SEVERAL_YEARS : Kind.ONE_YEAR, yearCode(), joined(years)));
        if (years.size() > 1) {
            remarks.add(remark(
                    Kind.POSITION_SEVEN,
                    judged.charAt(SEVENTH),
                    yearOnLightVehicle().getAsInt()));
        }
    }

    private static String joined(List<Integer> years) {
        return String.join(", ", years.stream().map(String::valueOf).toList());
    }

    private static NumberRemark remark(Kind kind, Object... values) {
        return NumberRemark.of(kind, values);
    }
}
