package org.shedboard.learn;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Minutes of finished work that were clocked together, on one task or on several, and what the catalogue has for them figure by
 * figure.
 *
 * @param pace of who did it: hands-on minutes for one of the catalogue
 * @param actualMinutes all people together, corrections made
 */
public record Clocked(
        String visitId, Circumstances circumstances, List<Part> parts, double pace, double actualMinutes) {
    /**
     * The part of the catalogue's minutes that one figure gave.
     *
     * @param figure name of it; things that are never put right by themselves have names of their own
     */
    public record Part(Sort sort, String figure, int minutes) {}

    public Clocked {
        parts = List.copyOf(parts);
    }

    int catalogueMinutes() {
        return parts.stream().mapToInt(Part::minutes).sum();
    }

    /** What is wrong with it whatever the others are like. */
    Optional<Lesson.Fault> fault() {
        Sort any = parts.isEmpty() ? Sort.REPAIR : parts.get(0).sort();
        return new Lesson(visitId, any, circumstances, catalogueMinutes() * pace, actualMinutes).fault();
    }

    /** What it took for one minute of the catalogue, at the pace of who did it. */
    double ratio() {
        return actualMinutes / (catalogueMinutes() * pace);
    }

    /** The share of the catalogue's minutes that is work of each sort; together 1. */
    Map<Sort, Double> sorts() {
        Map<Sort, Double> shares = new EnumMap<>(Sort.class);
        double all = catalogueMinutes();
        parts.forEach(part -> shares.merge(part.sort(), part.minutes() / all, Double::sum));
        return shares;
    }

    /** The share of them that each figure gave; together 1. */
    Map<String, Double> figures() {
        Map<String, Double> shares = new LinkedHashMap<>();
        double all = catalogueMinutes();
        parts.forEach(part -> shares.merge(part.figure(), part.minutes() / all, Double::sum));
        return shares;
    }
}
