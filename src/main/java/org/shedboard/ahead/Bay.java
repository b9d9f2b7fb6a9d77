package org.shedboard.ahead;

import java.util.List;
import org.shedboard.shop.PlaceKind;

/**
 * Where some machines can stand: any place of these kinds, or only some of those.
 *
 * @param only names of the places that carry them, where not all of these kinds do
 */
public record Bay(List<PlaceKind> kinds, List<String> only) {
    public Bay {
        kinds = List.copyOf(kinds);
        only = List.copyOf(only);
    }
}
