package org.shedboard.app.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.shedboard.words.Words;

/** What was looked at and how it was found, part by part. */
public record CheckUp(List<Looked> parts) {
    public CheckUp {
        parts = List.copyOf(parts);
    }

    /** What is looked at. */
    public enum Part {
        JAVA,
        TERMINAL,
        HOME,
        DISK,
        BACKUPS,
        DATABASE,
        TIME,
        JOURNAL,
        CLOCK,
        PLAN
    }

    /** How it was found. */
    public enum State {
        SOUND,
        /** Nothing is wrong with the records, but somebody may want to know. */
        NOTED,
        WRONG,
        NOT_LOOKED_AT
    }

    /**
     * @param said what was found, as a sentence
     * @param todo what to do about it; empty where there is nothing to do
     */
    public record Looked(Part part, State state, String said, String todo) {
        public static Looked sound(Part part, String name, Object... values) {
            return new Looked(part, State.SOUND, Words.say(name, values), "");
        }

        public static Looked noted(Part part, String said, String todo) {
            return new Looked(part, State.NOTED, said, todo);
        }

        public static Looked wrong(Part part, String said, String todo) {
            return new Looked(part, State.WRONG, said, todo);
        }

        public static Looked not(Part part, String said) {
            return new Looked(part, State.NOT_LOOKED_AT, said, "");
        }

        private String line() {
            String line = Words.say("doctor.line", Words.say(state), Words.say(part), said);
            return todo.isEmpty() ? line : line + " " + todo;
        }

        private Map<String, Object> tree() {
            return new Tree()
                    .put("part", part)
                    .put("state", state)
                    .put("said", said)
                    .put("todo", todo)
                    .fields();
        }
    }

    public boolean isSound() {
        return parts.stream().noneMatch(looked -> looked.state() == State.WRONG);
    }

    public Answer answer() {
        List<String> lines = new ArrayList<>(parts.stream().map(Looked::line).toList());
        long wrong =
                parts.stream().filter(looked -> looked.state() == State.WRONG).count();
        lines.add(isSound() ? Words.say("doctor.sound") : Words.say("doctor.wrong", wrong));
        Tree tree = new Tree()
                .put("sound", isSound())
                .put("checks", parts.stream().map(Looked::tree).toList());
        return new Answer(lines, tree.fields());
    }
}
