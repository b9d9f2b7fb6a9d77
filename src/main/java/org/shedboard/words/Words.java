package org.shedboard.words;

import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Says the texts of the bundle, with values put in for {@code {0}}, {@code {1}} and so on. */
public final class Words {
    private static final ResourceBundle BUNDLE = ResourceBundle.getBundle("org.shedboard.words.words", Locale.ROOT);

    static final Pattern PLACE = Pattern.compile("\\{(\\d)}");

    /** What a shop says in place of the bundle's texts. */
    private static volatile OwnWords own = OwnWords.none();

    private Words() {}

    /** From now on says a shop's own texts where it has some. */
    public static void speak(OwnWords words) {
        own = words;
    }

    /** The text of this name; an unknown name is a fault of the program. */
    public static String say(String name, Object... values) {
        return PLACE.matcher(text(name)).replaceAll(place -> {
            int index = Integer.parseInt(place.group(1));
            return Matcher.quoteReplacement(index < values.length ? String.valueOf(values[index]) : place.group());
        });
    }

    static DateTimeFormatter form(When form) {
        return own.form(form);
    }

    private static String text(String name) {
        return own.find(name).orElseGet(() -> usual(name));
    }

    /** The bundle's own text of this name, with its places. */
    static String usual(String name) {
        return BUNDLE.getString(name);
    }

    public static String say(String name, List<String> values) {
        return say(name, values.toArray());
    }

    /** The text for one constant, under the enum's name: {@code mud.CAKED}. */
    public static String say(Enum<?> constant) {
        return say(nameOf(constant));
    }

    public static boolean has(String name) {
        return BUNDLE.containsKey(name);
    }

    static String nameOf(Enum<?> constant) {
        String type = constant.getDeclaringClass().getSimpleName();
        return type.substring(0, 1).toLowerCase(Locale.ROOT) + type.substring(1) + "." + constant.name();
    }
}
