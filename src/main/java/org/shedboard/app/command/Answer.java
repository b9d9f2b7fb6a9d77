package org.shedboard.app.command;

import java.util.List;
import java.util.Map;

/**
 * What a command says: for people as lines, for programs as a tree of JSON.
 *
 * @param tree its keys are documented and stay as they are
 */
public record Answer(List<String> lines, Map<String, Object> tree) {
    public Answer {
        lines = List.copyOf(lines);
    }
}
