package org.shedboard.app.command;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.shedboard.board.ScorecardWords;
import org.shedboard.day.Books;
import org.shedboard.estimate.MachineClass;
import org.shedboard.learn.Calibration;
import org.shedboard.learn.Drift;
import org.shedboard.learn.Lesson;
import org.shedboard.learn.Said;
import org.shedboard.learn.Score;
import org.shedboard.learn.Scorecard;
import org.shedboard.learn.Scored;
import org.shedboard.learn.SetAside;
import org.shedboard.learn.Sort;
import org.shedboard.screen.ScorecardPlots;
import org.shedboard.words.Words;

/** How right we were, said and drawn; as JSON with every measure. */
final class ScorecardAnswer {
    /** The size of the drawings: a line of a terminal, and high enough to read. */
    private static final int COLUMNS = 79;

    private static final int ROWS = 21;

    private static final double DIGITS = 10_000;

    private final Books books;
    private final Scorecard card;

    private ScorecardAnswer(Books books, Scorecard card) {
        this.books = books;
        this.card = card;
    }

    static Answer of(Books books, Scorecard card, int wanted) {
        ScorecardAnswer answer = new ScorecardAnswer(books, card);
        return new Answer(answer.lines(), answer.tree(wanted));
    }

    private List<String> lines() {
        List<String> lines = new ArrayList<>(ScorecardWords.of(books, card));
        if (!card.last().isEmpty()) {
            lines.add("");
            lines.addAll(table().lines());
            lines.add(Words.say("scorecard.legend"));
            lines.add("");
            lines.addAll(ScorecardPlots.lines(card, COLUMNS, ROWS));
        }
        if (!card.aside().isEmpty()) {
            lines.add("");
            lines.add(Words.say("command.scorecard.aside"));
            lines.addAll(ScorecardWords.aside(books, card));
        }
        return lines;
    }

    private Table table() {
        List<String> headings = ScorecardWords.headings();
        Table table = new Table("l" + "r".repeat(headings.size() - 1)).row(headings.toArray(String[]::new));
        for (ScorecardWords.Part part : ScorecardWords.parts(books, card)) {
            if (!part.heading().isEmpty()) {
                table.row(filled(List.of(part.heading()), headings.size()));
            }
            for (ScorecardWords.Row row : part.rows()) {
                List<String> texts = new ArrayList<>(List.of("  " + row.name()));
                texts.addAll(row.figures());
                table.row(filled(texts, headings.size()));
            }
        }
        return table;
    }

    private static String[] filled(List<String> texts, int size) {
        List<String> all = new ArrayList<>(texts);
        all.addAll(Collections.nCopies(size - texts.size(), ""));
        return all.toArray(String[]::new);
    }

    private Map<String, Object> tree(int wanted) {
        return new Tree()
                .put("wanted", wanted)
                .put("pieces", card.last().size())
                .put("said", ScorecardWords.of(books, card))
                .put("score", card.score().map(ScorecardAnswer::score))
                .put("bySort", card.bySort().stream().map(this::bySort).toList())
                .put("byClass", card.byClass().stream().map(this::byClass).toList())
                .put("byPerson", card.byPerson().stream().map(this::byPerson).toList())
                .put(
                        "calibration",
                        card.calibration().shares().stream()
                                .map(ScorecardAnswer::share)
                                .toList())
                .put("piecesByTenth", card.calibration().tenths())
                .put("finished", card.last().stream().map(ScorecardAnswer::said).toList())
                .put(
                        "drifts",
                        card.drifts().stream().map(ScorecardAnswer::drift).toList())
                .put(
                        "setAside",
                        card.aside().stream().map(ScorecardAnswer::aside).toList())
                .fields();
    }

    private Map<String, Object> bySort(Scored<Sort> scored) {
        return scored(new Tree().put("sort", scored.what()), scored);
    }

    private Map<String, Object> byClass(Scored<String> scored) {
        String name = books.catalogue()
                .findClass(scored.what())
                .map(MachineClass::name)
                .orElse(scored.what());
        return scored(new Tree().put("class", scored.what()).put("name", name), scored);
    }

    private Map<String, Object> byPerson(Scored<String> scored) {
        return scored(new Tree().put("person", scored.what()).put("name", books.nameOf(scored.what())), scored);
    }

    private static Map<String, Object> scored(Tree tree, Scored<?> scored) {
        return tree.put("pieces", scored.count())
                .put("score", scored.score().map(ScorecardAnswer::score))
                .fields();
    }

    private static Map<String, Object> score(Score score) {
        return new Tree()
                .put("withinLikelyShare", rounded(score.likelyShare()))
                .put("withinLikelyAim", Said.LIKELY)
                .put("withinLikely", score.likelyAim())
                .put("withinSafeShare", rounded(score.safeShare()))
                .put("withinSafeAim", Said.SAFE)
                .put("withinSafe", score.safeAim())
                .put("actualOverLikely", rounded(score.factor()))
                .put("ours", measures(score.learned()))
                .put("catalogueAlone", measures(score.catalogue()))
                .put("meanOfLastTen", measures(score.lastTen()))
                .fields();
    }

    private static Map<String, Object> measures(Score.Measures measures) {
        return new Tree()
                .put("meanAbsolutePercentageError", rounded(100 * measures.percentageError()))
                .put("meanAbsoluteErrorMinutes", rounded(measures.meanMinutesOff()))
                .put("pinballLikelyMinutes", rounded(measures.pinballLikely()))
                .put("pinballSafeMinutes", rounded(measures.pinballSafe()))
                .put("crpsMinutes", rounded(measures.crps()))
                .fields();
    }

    private static Map<String, Object> share(Calibration.Share share) {
        return new Tree()
                .put("saidShare", rounded(share.said()))
                .put("seenShare", rounded(share.seen()))
                .fields();
    }

    private static Map<String, Object> said(Said said) {
        return lesson(said.lesson())
                .put("likelyMinutes", rounded(said.likelyMinutes()))
                .put("safeMinutes", rounded(said.safeMinutes()))
                .put("actualMinutes", rounded(said.lesson().actualMinutes()))
                .put("place", rounded(said.place()))
                .fields();
    }

    private static Map<String, Object> drift(Drift drift) {
        return new Tree()
                .put("sort", drift.sort())
                .put("since", drift.since().toString())
                .put("actualOverLikely", rounded(drift.factor()))
                .put("pieces", drift.pieces())
                .fields();
    }

    private static Map<String, Object> aside(SetAside aside) {
        return lesson(aside.lesson())
                .put("expectedMinutes", rounded(aside.expectedMinutes()))
                .put("actualMinutes", rounded(aside.lesson().actualMinutes()))
                .put("why", aside.why())
                .fields();
    }

    private static Tree lesson(Lesson lesson) {
        Map<String, Double> people = new TreeMap<>();
        lesson.circumstances().people().forEach((person, share) -> people.put(person, rounded(share)));
        return new Tree()
                .put("visit", lesson.visitId())
                .put("sort", lesson.sort())
                .put("class", lesson.circumstances().classId())
                .put("date", lesson.circumstances().date().toString())
                .put("people", people)
                .put("catalogueMinutes", rounded(lesson.catalogueMinutes()));
    }

    private static double rounded(double figure) {
        return Math.round(figure * DIGITS) / DIGITS;
    }
}
