package org.shedboard.ahead;

import java.util.EnumMap;
import java.util.Map;
import org.shedboard.shop.PlaceKind;
import org.shedboard.shop.Skill;

/** Minutes of work that is not booked, as it would come on a day: hands-on by skill, and in places by kind. */
public record Load(Map<Skill, Integer> bySkill, Map<PlaceKind, Integer> byPlace) {
    public static final Load NONE = new Load(Map.of(), Map.of());

    public Load {
        bySkill = Map.copyOf(bySkill);
        byPlace = Map.copyOf(byPlace);
    }

    public int of(Skill skill) {
        return bySkill.getOrDefault(skill, 0);
    }

    public int of(PlaceKind kind) {
        return byPlace.getOrDefault(kind, 0);
    }

    /** All hands-on minutes. */
    public int handsOn() {
        return bySkill.values().stream().mapToInt(Integer::intValue).sum();
    }

    public Load plus(Load other) {
        Map<Skill, Integer> skills = new EnumMap<>(Skill.class);
        skills.putAll(bySkill);
        other.bySkill.forEach((skill, minutes) -> skills.merge(skill, minutes, Integer::sum));
        Map<PlaceKind, Integer> places = new EnumMap<>(PlaceKind.class);
        places.putAll(byPlace);
        other.byPlace.forEach((kind, minutes) -> places.merge(kind, minutes, Integer::sum));
        return new Load(skills, places);
    }
}
