package org.shedboard.words;

import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;

/** Says the texts of the bundle, with values put in for {@code {0}}, {@code {1}} and so on. */
public final class Words {
    private static final ResourceBundle BUNDLE = ResourceBundle.getBundle("org.shedboard.words.words", Locale.ROOT);

    private Words() {}

    /** The text of this name; an unknown name is a fault of the program. */
    public static String say(String name, Object... values) {
        String text = BUNDLE.getString(name);
        for (int i = 0; i < values.length; i++) {
            text = text.replace("{" + i + "}", String.valueOf(values[i]));
        }
        return text;
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

    private static String nameOf(Enum<?> constant) {
        String type = constant.getDeclaringClass().getSimpleName();
        return type.substring(0, 1).toLowerCase(Locale.ROOT) + type.substring(1) + "." + constant.name();
    }
}
