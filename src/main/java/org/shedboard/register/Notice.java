package org.shedboard.register;

import java.util.Set;

/**
 * What a maker asks to be done to some of its machines, at the maker's cost.
 *
 * @param classes ids of the classes of machine it is about
 * @param workId the catalogue's name of the work
 */
public record Notice(String id, String title, Set<String> classes, String workId) {
    public Notice {
        classes = Set.copyOf(classes);
    }
}
