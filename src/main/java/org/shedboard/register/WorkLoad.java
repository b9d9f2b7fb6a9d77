package org.shedboard.register;

import java.util.EnumMap;
import java.util.Map;
import org.shedboard.shop.PlaceKind;
import org.shedboard.shop.Skill;

/**
 * Work that would come in: minutes of people by the skill they need, and minutes of places by their kind.
 *
 * @param inPlaces with the minutes in which nobody works on a machine but it stands there
 */
public record WorkLoad(Map<Skill, Integer> handsOn, Map<PlaceKind, Integer> inPlaces) {
    public static final WorkLoad NONE = new WorkLoad(Map.of(), Map.of());

    public WorkLoad {
        handsOn = Map.copyOf(handsOn);
        inPlaces = Map.copyOf(inPlaces);
    }

    /** Minutes of people, whatever they need to know. */
    public int minutes() {
        return handsOn.values().stream().mapToInt(Integer::intValue).sum();
    }

    public WorkLoad plus(WorkLoad other) {
        Map<Skill, Integer> people = new EnumMap<>(Skill.class);
        people.putAll(handsOn);
        other.handsOn.forEach((skill, minutes) -> people.merge(skill, minutes, Integer::sum));
        Map<PlaceKind, Integer> places = new EnumMap<>(PlaceKind.class);
        places.putAll(inPlaces);
        other.inPlaces.forEach((kind, minutes) -> places.merge(kind, minutes, Integer::sum));
        return new WorkLoad(people, places);
    }
}
