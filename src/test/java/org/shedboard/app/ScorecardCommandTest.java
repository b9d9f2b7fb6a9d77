package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shedboard.app.CommandRoom.Said;
import tools.jackson.databind.JsonNode;

/** How right we were, as a command. */
class ScorecardCommandTest {
    @TempDir
    Path directory;

    private CommandRoom room;

    @BeforeEach
    void prepare() throws IOException {
        room = CommandRoom.withDemonstration(directory);
    }

    @Test
    void the_lines_say_what_the_json_says_then_the_rows_and_the_drawings() {
        Said said = room.demo("scorecard");
        assertEquals(0, said.status(), said.err());
        List<String> lines = said.out().lines().toList();
        JsonNode sentences = room.demo("scorecard", "--json").json().get("said");
        for (int i = 0; i < sentences.size(); i++) {
            assertEquals(sentences.get(i).asString(), lines.get(i));
        }
        assertTrue(sentences.size() >= 6, sentences.toString());
        assertTrue(lines.stream().anyMatch(line -> line.matches("  +Washes +\\d+ .*")), said.out());
        assertTrue(lines.stream().anyMatch(line -> line.contains("Minutes it took")), said.out());
    }

    @Test
    void the_measures_are_those_of_the_pieces_that_are_listed() {
        JsonNode card = room.demo("scorecard", "--last", "60", "--json").json();
        List<JsonNode> finished = list(card.get("finished"));
        JsonNode score = card.get("score");
        assertEquals(60, finished.size());
        assertEquals(60, card.get("pieces").asInt());
        assertEquals(
                mean(finished, each -> actual(each) <= each.get("likelyMinutes").asDouble() ? 1 : 0),
                score.get("withinLikelyShare").asDouble(),
                1e-4);
        assertEquals(
                mean(finished, each -> actual(each) <= each.get("safeMinutes").asDouble() ? 1 : 0),
                score.get("withinSafeShare").asDouble(),
                1e-4);
        JsonNode ours = score.get("ours");
        assertEquals(
                mean(finished, each -> 100 * Math.abs(missed(each)) / actual(each)),
                ours.get("meanAbsolutePercentageError").asDouble(),
                1e-2);
        assertEquals(
                mean(finished, each -> Math.abs(missed(each))),
                ours.get("meanAbsoluteErrorMinutes").asDouble(),
                1e-3);
        assertEquals(
                mean(finished, each -> Math.abs(each.get("catalogueMinutes").asDouble() - actual(each))),
                score.get("catalogueAlone").get("meanAbsoluteErrorMinutes").asDouble(),
                1e-3);
    }

    private static double missed(JsonNode piece) {
        return actual(piece) - piece.get("likelyMinutes").asDouble();
    }

    private static double actual(JsonNode piece) {
        return piece.get("actualMinutes").asDouble();
    }

    private static double mean(List<JsonNode> pieces, ToDoubleFunction<JsonNode> figure) {
        return pieces.stream().mapToDouble(figure).average().orElseThrow();
    }

    private static List<JsonNode> list(JsonNode array) {
        List<JsonNode> all = new ArrayList<>();
        array.forEach(all::add);
        return all;
    }

    @Test
    void the_last_pieces_are_the_newest_and_each_is_of_one_sort_class_and_person() {
        JsonNode card = room.demo("scorecard", "--json").json();
        JsonNode few = room.demo("scorecard", "--last", "10", "--json").json();
        List<JsonNode> all = list(card.get("finished"));
        assertEquals(all.subList(all.size() - 10, all.size()), list(few.get("finished")));
        for (String split : List.of("bySort", "byClass", "byPerson")) {
            int pieces = list(card.get(split)).stream()
                    .mapToInt(each -> each.get("pieces").asInt())
                    .sum();
            assertEquals(all.size(), pieces, split);
        }
        assertEquals(
                all.size(),
                list(card.get("piecesByTenth")).stream()
                        .mapToInt(JsonNode::asInt)
                        .sum());
    }

    @Test
    void fewer_than_ten_are_counted_and_not_scored() {
        JsonNode card = room.demo("scorecard", "--last", "9", "--json").json();
        assertEquals(9, card.get("pieces").asInt());
        assertTrue(card.get("score").isNull());
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-3", "100001", "many", "2.5"})
    void a_number_that_is_none_is_refused_in_one_line(String last) {
        Said said = room.demo("scorecard", "--last", last);
        assertEquals(2, said.status());
        assertEquals("", said.out());
        assertTrue(said.complaints().get(0).contains(last), said.err());
        assertTrue(said.complaints().size() <= 2, "the sentence and where to read on: " + said.err());
    }

    @Test
    void plain_letters_are_enough_for_all_of_it() {
        Said said = room.demo("scorecard", "--ascii");
        assertEquals(0, said.status(), said.err());
        assertTrue(said.out().chars().allMatch(each -> each < 127), said.out());
        assertTrue(said.out().contains("@ more"), said.out());
    }
}
