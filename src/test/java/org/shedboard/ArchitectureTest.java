package org.shedboard;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Holds the map of the packages: who may use whom, and what the core never touches. */
class ArchitectureTest {
    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("org.shedboard");

    /** Package, then the packages of ours that it may use, all of them further up; {@code app} may use all. */
    private static final Map<String, List<String>> MAP = map();

    private static final Set<String> SHELL = Set.of("disk", "wire", "store", "files", "term", "app");

    /** Fewer would mean that the import found next to nothing, and that the rules hold of nothing. */
    private static final int PLAUSIBLE_CLASSES = 200;

    private static Map<String, List<String>> map() {
        Map<String, List<String>> map = new LinkedHashMap<>();
        map.put("grid", List.of());
        map.put("look", List.of("grid"));
        map.put("words", List.of());
        map.put("fit", List.of());
        map.put("shop", List.of());
        map.put("estimate", List.of("shop"));
        map.put("hours", List.of("shop"));
        map.put("register", List.of("fit", "shop"));
        map.put("learn", List.of("fit", "shop"));
        map.put("forecast", List.of("fit", "shop", "estimate", "hours", "learn"));
        map.put("ahead", List.of("shop"));
        map.put("pack", List.of());
        map.put("pack.check", List.of("pack"));
        map.put("pack.numbers", List.of("pack"));
        map.put("pack.bound", List.of("pack", "pack.numbers"));
        map.put("pack.search", List.of("pack", "pack.numbers", "pack.bound"));
        map.put("pack.fault", List.of("pack", "pack.numbers", "pack.search"));
        map.put("pack.chance", List.of("pack", "pack.numbers", "pack.search", "pack.fault"));
        map.put("pack.story", List.of("pack", "pack.numbers"));
        map.put(
                "day",
                List.of(
                        "fit",
                        "shop",
                        "estimate",
                        "hours",
                        "register",
                        "learn",
                        "forecast",
                        "ahead",
                        "pack",
                        "pack.check",
                        "pack.search",
                        "pack.fault",
                        "pack.chance",
                        "pack.story",
                        "words"));
        map.put("tally", List.of("shop", "estimate", "hours", "register", "pack", "day", "words"));
        map.put("report", List.of("fit", "shop", "estimate", "register", "day", "words"));
        List<String> board = new ArrayList<>(map.get("day"));
        board.addAll(List.of("day", "tally", "report", "words"));
        map.put("board", List.copyOf(board));
        board.addAll(List.of("board", "grid"));
        map.put("screen", List.copyOf(board));
        map.put("disk", List.of());
        map.put("wire", List.of("disk"));
        map.put("store", List.of("shop", "estimate", "hours", "register", "pack", "disk", "wire"));
        map.put(
                "files",
                List.of(
                        "grid",
                        "look",
                        "words",
                        "shop",
                        "estimate",
                        "hours",
                        "register",
                        "pack",
                        "pack.fault",
                        "day",
                        "tally",
                        "report"));
        map.put("term", List.of("grid", "look", "board"));
        return map;
    }

    static Set<String> packages() {
        return MAP.keySet();
    }

    @Test
    void no_packages_use_each_other_in_a_circle() {
        Set<String> known = new TreeSet<>();
        MAP.forEach((name, used) -> {
            assertTrue(known.containsAll(used), name + " uses a package that comes after it");
            known.add(name);
        });
    }

    @ParameterizedTest
    @MethodSource("packages")
    void a_package_uses_only_what_the_map_allows(String name) {
        List<String> allowed = new ArrayList<>(
                MAP.get(name).stream().map(ArchitectureTest::full).toList());
        allowed.add(full(name));
        String[] ours = allowed.toArray(String[]::new);
        noClasses()
                .that()
                .resideInAPackage(full(name))
                .should()
                .dependOnClassesThat(resideInAPackage("org.shedboard..")
                        .and(com.tngtech.archunit.base.DescribedPredicate.not(resideInAnyPackage(ours))))
                .check(CLASSES);
    }

    @ParameterizedTest
    @MethodSource("packages")
    void the_core_touches_no_files_no_database_no_clock_no_thread_and_no_library(String name) {
        if (SHELL.contains(name)) {
            return;
        }
        classes()
                .that()
                .resideInAPackage(full(name))
                .should()
                .onlyDependOnClassesThat(resideInAnyPackage(
                                "org.shedboard..",
                                "java.lang",
                                "java.util",
                                "java.util.function",
                                "java.util.stream",
                                "java.util.regex",
                                "java.text",
                                "java.math",
                                "java.time",
                                "java.time.format",
                                "java.time.temporal",
                                "java.lang.invoke",
                                "java.lang.runtime",
                                "")
                        .and(com.tngtech.archunit.base.DescribedPredicate.not(
                                com.tngtech.archunit.core.domain.JavaClass.Predicates.belongToAnyOf(
                                        java.time.Clock.class, Thread.class, java.util.Random.class))))
                .check(CLASSES);
    }

    @Test
    void the_core_never_asks_what_time_it_is() {
        String[] core = MAP.keySet().stream()
                .filter(name -> !SHELL.contains(name))
                .map(ArchitectureTest::full)
                .toArray(String[]::new);
        for (Class<?> type : List.of(
                java.time.Instant.class,
                java.time.LocalDate.class,
                java.time.LocalTime.class,
                java.time.LocalDateTime.class,
                java.time.ZonedDateTime.class)) {
            noClasses()
                    .that()
                    .resideInAnyPackage(core)
                    .should()
                    .callMethod(type, "now")
                    .check(CLASSES);
        }
        noClasses()
                .that()
                .resideInAnyPackage(core)
                .should()
                .callMethod(System.class, "currentTimeMillis")
                .orShould()
                .callMethod(System.class, "nanoTime")
                .orShould()
                .callMethod(Math.class, "random")
                .check(CLASSES);
    }

    @Test
    void nobody_uses_the_wiring() {
        noClasses()
                .that()
                .resideOutsideOfPackage("org.shedboard.app..")
                .should()
                .dependOnClassesThat(resideInAPackage("org.shedboard.app.."))
                .check(CLASSES);
    }

    @Test
    void every_package_is_on_the_map_and_the_rules_hold_of_something() {
        Set<String> found = CLASSES.stream()
                .map(each -> each.getPackageName().replaceFirst("^org\\.shedboard\\.?", ""))
                .filter(name -> !name.startsWith("app"))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(new TreeSet<>(MAP.keySet()), found);
        assertTrue(CLASSES.size() > PLAUSIBLE_CLASSES, "only " + CLASSES.size() + " classes were found");
    }

    private static String full(String name) {
        return "org.shedboard." + name;
    }
}
