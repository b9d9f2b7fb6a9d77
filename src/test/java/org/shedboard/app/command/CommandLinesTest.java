package org.shedboard.app.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

class CommandLinesTest {
    static List<CommandSpec> commands() {
        return CommandLines.line().getSubcommands().values().stream()
                .map(CommandLine::getCommandSpec)
                .toList();
    }

    @ParameterizedTest
    @MethodSource("commands")
    void every_command_and_all_it_takes_is_explained(CommandSpec command) {
        assertEquals(1, command.usageMessage().description().length, command.name());
        for (ArgSpec each : command.args()) {
            assertTrue(
                    each.description().length == 1 && !each.description()[0].isBlank(),
                    command.name() + " " + each.paramLabel() + " " + each);
        }
    }

    @Test
    void no_explanation_is_left_of_a_command_or_option_that_is_gone() {
        Set<String> known = new TreeSet<>(Set.of("shedboard.usage.description", "shedboard.usage.footer"));
        for (CommandSpec command : commands()) {
            String before = "shedboard." + command.name() + ".";
            known.add(before + "usage.description");
            for (OptionSpec option : command.options()) {
                known.add(before + option.longestName().replaceFirst("^-+", ""));
            }
        }
        Set<String> there = new TreeSet<>();
        ResourceBundle.getBundle("org.shedboard.words.words", Locale.ROOT).keySet().stream()
                .filter(name -> name.startsWith("shedboard."))
                .forEach(there::add);
        assertFalse(there.isEmpty());
        there.removeAll(known);
        assertEquals(Set.of(), there);
    }

    @Test
    void what_every_command_takes_has_the_same_meaning_in_each() {
        for (CommandSpec command : commands()) {
            for (String option : List.of("--home", "--demo", "--at", "--ascii", "--json", "--help")) {
                assertTrue(command.optionsMap().containsKey(option), command.name() + " " + option);
            }
        }
    }
}
