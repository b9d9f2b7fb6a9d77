package org.shedboard.pack.lab;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What is to be measured in one run, and how long.
 *
 * @param only names of sections; all where there are none
 * @param scale every search takes so many times as long as its target says; other than 1, no verdict means anything
 * @param seeds of each judged day
 * @param files at most so many days or shops a section
 * @param longDays so many days get the solver's longest time
 * @param keep whether a plan better than the one kept of its day replaces it
 */
record TargetTerms(Folders folders, Set<String> only, double scale, int seeds, int files, int longDays, boolean keep) {
    private static final int SEEDS = 3;
    private static final int LONG_DAYS = 4;
    private static final int FOLDERS = 3;

    /** Day files, published shops, and the best plans kept. */
    record Folders(Path days, Path reference, Path kept) {}

    TargetTerms {
        only = Set.copyOf(only);
        if (!(scale > 0) || seeds < 1 || files < 1 || longDays < 0) {
            throw new IllegalArgumentException("scale, seeds and files are above 0, long at least 0");
        }
    }

    /** Three folders, then options, most of them as {@code name=value}; see {@link Targets}. */
    static TargetTerms parse(String... arguments) {
        if (arguments.length < FOLDERS) {
            throw new IllegalArgumentException("name the folders of days, of published shops, and of the plans kept");
        }
        Folders folders = new Folders(Path.of(arguments[0]), Path.of(arguments[1]), Path.of(arguments[2]));
        TargetTerms terms = new TargetTerms(folders, Set.of(), 1, SEEDS, Integer.MAX_VALUE, LONG_DAYS, false);
        for (String option : List.of(arguments).subList(FOLDERS, arguments.length)) {
            terms = terms.with(option);
        }
        return terms;
    }

    private TargetTerms with(String option) {
        String name = option.replaceFirst("=.*", "");
        String value = option.substring(Math.min(option.length(), name.length() + 1));
        return switch (name) {
            case "only" -> new TargetTerms(folders, names(value), scale, seeds, files, longDays, keep);
            case "scale" -> new TargetTerms(folders, only, Double.parseDouble(value), seeds, files, longDays, keep);
            case "seeds" -> new TargetTerms(folders, only, scale, Integer.parseInt(value), files, longDays, keep);
            case "files" -> new TargetTerms(folders, only, scale, seeds, Integer.parseInt(value), longDays, keep);
            case "long" -> new TargetTerms(folders, only, scale, seeds, files, Integer.parseInt(value), keep);
            case "keep" -> new TargetTerms(folders, only, scale, seeds, files, longDays, true);
            default ->
                throw new IllegalArgumentException(
                        "no option " + name + "; there are: only scale seeds files long keep");
        };
    }

    private static Set<String> names(String value) {
        return new LinkedHashSet<>(Arrays.asList(value.split(",")));
    }

    boolean wants(String section) {
        return only.isEmpty() || only.contains(section);
    }
}
