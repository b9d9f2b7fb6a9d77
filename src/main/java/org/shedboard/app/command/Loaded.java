package org.shedboard.app.command;

import java.util.List;
import org.shedboard.day.Setup;
import org.shedboard.estimate.Catalogue;
import org.shedboard.words.Words;

/** What is said of a file that was loaded. */
public final class Loaded {
    private Loaded() {}

    public static Answer of(Catalogue catalogue) {
        int classes = catalogue.classes().size();
        int works = catalogue.works().size();
        Tree tree =
                new Tree().put("loaded", "catalogue").put("classes", classes).put("works", works);
        return new Answer(List.of(Words.say("command.load.catalogue", classes, works)), tree.fields());
    }

    /** Of all the records of a shop. */
    public static Answer of(String place, long rows) {
        Tree tree = new Tree().put("loaded", "records").put("rows", rows);
        return new Answer(List.of(Words.say("command.load.records", rows, place)), tree.fields());
    }

    public static Answer of(Setup setup) {
        String name = setup.shop().name();
        int people = setup.shop().people().size();
        int machines = setup.machines().size();
        Tree tree = new Tree()
                .put("loaded", "shop")
                .put("name", name)
                .put("places", setup.shop().places().size())
                .put("people", people)
                .put("owners", setup.owners().size())
                .put("machines", machines);
        return new Answer(List.of(Words.say("command.load.shop", name, people, machines)), tree.fields());
    }
}
