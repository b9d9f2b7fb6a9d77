package org.shedboard.board;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The README's tables of keys say what the keys do. */
class ReadmeTest {
    private static final String README = read();

    private static String read() {
        try {
            return Files.readString(Path.of("README.md"));
        } catch (IOException missing) {
            throw new IllegalStateException("the tests run in the project's folder", missing);
        }
    }

    @Test
    void every_key_of_the_board_of_next_and_of_the_shelf_is_in_the_readme() {
        Board board = FakeShell.demonstration().board();
        Board unopened = FakeShell.unopened().board();
        String person = board.expectDay().shop().people().get(0).id();
        Board plug = FakeShell.onThePlug().board();
        List<Binding> bindings = Stream.of(
                        board,
                        unopened,
                        board.with(new Screen.Next(person, Optional.empty())),
                        plug.with(new Screen.Next("P1", Optional.empty())),
                        board.with(new Screen.Shelf(0)))
                .flatMap(each -> Keys.of(each).stream())
                .toList();
        for (Binding binding : bindings) {
            String row = "| `%s` | %s | %s |".formatted(binding.label(), binding.name(), binding.help());
            assertTrue(README.contains(row), "the README lacks\n" + row);
        }
    }
}
