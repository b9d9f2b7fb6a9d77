package org.shedboard.app.command;

import java.util.List;
import java.util.Optional;
import org.shedboard.shop.Person;
import org.shedboard.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A person's PIN is to be set or changed. No PIN is ever an argument: the arguments of a program are there for all to see. */
@Command(name = "pin")
public final class PinCommand implements Wish {
    @Parameters(index = "0", paramLabel = "NAME", descriptionKey = "option.who")
    private String name;

    @Option(names = "--by", paramLabel = "NAME")
    private Optional<String> by;

    public String name() {
        return name;
    }

    /** Whose PIN signs; the same person's when empty. */
    public Optional<String> by() {
        return by;
    }

    /** What is said once it is done. */
    public static Answer answer(Person person) {
        String sentence = Words.say("command.pin.set", person.name());
        Tree tree = new Tree().put("done", "pin").put("sentence", sentence).put("person", person.name());
        return new Answer(List.of(sentence), tree.fields());
    }
}
