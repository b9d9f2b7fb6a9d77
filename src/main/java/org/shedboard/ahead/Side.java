package org.shedboard.ahead;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * One day's people, or its places: the minutes that each has open, and what is claimed of them.
 *
 * <p>Somebody with three skills is there once, so the hours of each skill alone say little. What can be said is this: whatever work
 * only a group of people can do must fit into the hours of that group, for every group. That is Hall's condition, and for minutes
 * that may be split at will it is also enough. Only groups that are exactly those who can do some of the work need be looked at.
 */
public final class Side<K> {
    private final Map<String, Integer> open;
    private final Map<K, Claim<K>> claims;

    private Side(Map<String, Integer> open, Map<K, Claim<K>> claims) {
        this.open = open;
        this.claims = claims;
    }

    /** With so many minutes each, by id, and nothing claimed yet. */
    public static <K> Side<K> of(Map<String, Integer> open) {
        return new Side<>(new LinkedHashMap<>(open), Map.of());
    }

    public Side<K> plus(List<Claim<K>> more) {
        Map<K, Claim<K>> all = new LinkedHashMap<>(claims);
        for (Claim<K> claim : more) {
            all.merge(claim.what(), claim, (one, other) -> one.of(one.minutes() + other.minutes()));
        }
        return new Side<>(open, all);
    }

    /** All that is claimed, one claim for each thing. */
    public List<Claim<K>> claims() {
        return List.copyOf(claims.values());
    }

    public int booked(K what) {
        return claims.containsKey(what) ? claims.get(what).minutes() : 0;
    }

    public int booked() {
        return claims.values().stream().mapToInt(Claim::minutes).sum();
    }

    public int open() {
        return open.values().stream().mapToInt(Integer::intValue).sum();
    }

    /** Minutes that these have together; those nobody knows have none. */
    public int open(Set<String> ids) {
        return ids.stream().mapToInt(id -> open.getOrDefault(id, 0)).sum();
    }

    /** The groups with more booked than they have, the smallest first; a group in which another one lies is told by that alone. */
    public List<Squeeze<K>> over() {
        List<Set<String>> told = new ArrayList<>();
        List<Squeeze<K>> over = new ArrayList<>();
        for (Set<String> group : groups()) {
            Squeeze<K> squeeze = squeezeOf(group);
            if (squeeze.isOver() && told.stream().noneMatch(group::containsAll)) {
                over.add(squeeze);
                if (!group.isEmpty()) {
                    told.add(group);
                }
            }
        }
        return over;
    }

    /**
     * The groups that more work would leave with more than they have. What of the work booked does not fit anyway goes over to
     * another day, and keeps nobody else from theirs.
     */
    public List<Squeeze<K>> over(List<Claim<K>> more) {
        Side<K> fitting = fitting().plus(more);
        Side<K> all = plus(more);
        return more.stream()
                .flatMap(claim -> fitting.groupsWith(claim.by()).stream()
                        .filter(group -> fitting.squeezeOf(group).isOver())
                        .limit(1))
                .distinct()
                .map(all::squeezeOf)
                .toList();
    }

    /** Minutes of more work that only these can do, which still fit. */
    public int room(Set<String> by) {
        return fitting().slack(by);
    }

    private int slack(Set<String> by) {
        return groupsWith(by).stream()
                .mapToInt(group -> squeezeOf(group).left())
                .min()
                .orElseThrow();
    }

    /** What does not fit: the minutes that go over to another day. */
    public List<Claim<K>> rest() {
        Side<K> fitting = fitting();
        return claims.values().stream()
                .map(claim -> claim.of(claim.minutes() - fitting.booked(claim.what())))
                .filter(claim -> claim.minutes() > 0)
                .toList();
    }

    /** As much of what is claimed as fits. */
    private Side<K> fitting() {
        Side<K> fitted = of(open);
        for (Claim<K> claim : claims.values()) {
            int fits = Math.min(claim.minutes(), fitted.slack(claim.by()));
            fitted = fitted.plus(List.of(claim.of(fits)));
        }
        return fitted;
    }

    private Squeeze<K> squeezeOf(Set<String> group) {
        List<Claim<K>> only = claims.values().stream()
                .filter(claim -> claim.minutes() > 0 && group.containsAll(claim.by()))
                .toList();
        return new Squeeze<>(
                only.stream().map(Claim::what).toList(),
                only.stream().mapToInt(Claim::minutes).sum(),
                open(group),
                group.containsAll(open.keySet()));
    }

    /** All unions of those who can do some of the work, the smallest first. */
    private List<Set<String>> groups() {
        return unions(new LinkedHashSet<>());
    }

    private List<Set<String>> groupsWith(Set<String> by) {
        Set<Set<String>> start = new LinkedHashSet<>();
        start.add(new HashSet<>(by));
        return unions(start).stream().filter(group -> group.containsAll(by)).toList();
    }

    private List<Set<String>> unions(Set<Set<String>> found) {
        for (Claim<K> claim : claims.values()) {
            List<Set<String>> before = List.copyOf(found);
            found.add(claim.by());
            for (Set<String> group : before) {
                Set<String> both = new HashSet<>(group);
                both.addAll(claim.by());
                found.add(both);
            }
        }
        return found.stream().sorted(Comparator.comparingInt(Set::size)).toList();
    }
}
