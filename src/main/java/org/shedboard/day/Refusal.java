package org.shedboard.day;

import java.util.Arrays;
import java.util.List;

/**
 * Why an act cannot be: a name, under which the text bundle has the sentence, and the values that belong into it.
 *
 * @param values strings as a person reads them
 */
public record Refusal(String name, List<String> values) {
    public Refusal {
        values = List.copyOf(values);
    }

    static Refusal of(String name, Object... values) {
        return new Refusal(name, Arrays.stream(values).map(String::valueOf).toList());
    }
}
