package org.shedboard.screen;

import java.util.List;
import java.util.Optional;
import org.shedboard.board.Board;
import org.shedboard.board.Screen;
import org.shedboard.board.TrialWords;
import org.shedboard.day.Act;
import org.shedboard.day.Comparison;
import org.shedboard.day.WhatIf;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Column;
import org.shedboard.grid.Glyphs;
import org.shedboard.grid.Region;
import org.shedboard.grid.Style;
import org.shedboard.words.Words;

/** A change that is tried, or a better plan that is offered: what it is, what it comes to, visit by visit, and what moves of the chosen one. */
final class TrialView {
    /** Rows of what is tried; more are only counted. */
    private static final int MOST_ACTS = 5;

    private static final int WIDEST = 120;

    private final Canvas canvas;
    private final Board board;
    private final Screen.Trial screen;
    private final TrialWords words;

    TrialView(Canvas canvas, Board board, Screen.Trial screen) {
        this.canvas = canvas;
        this.board = board;
        this.screen = screen;
        this.words = new TrialWords(board.expectDay());
    }

    void draw(Region page) {
        String title = screen.whatIf().isOffer() ? "trial.title_offer" : "trial.title";
        Header.draw(canvas, page.row(0), board, Words.say(title));
        Region rest = acts(page.below(1).inside(1, 0).left(WIDEST));
        Optional<Comparison> comparison = screen.comparison();
        if (comparison.isPresent() && !screen.whatIf().acts().isEmpty()) {
            comparison(rest, comparison.get());
        } else if (!screen.whatIf().acts().isEmpty()) {
            canvas.paragraph(rest, unanswered(), screen.answer().isPresent() ? Style.DANGER : Style.QUIET);
        }
    }

    private Region acts(Region region) {
        List<Act> acts = screen.whatIf().acts();
        if (screen.whatIf().isOffer()) {
            return canvas.paragraph(region, Words.say("trial.offer"), Style.NORMAL);
        }
        if (acts.isEmpty()) {
            return canvas.paragraph(region, Words.say("trial.nothing_yet"), Style.NORMAL);
        }
        Region rest = region;
        int first = Math.max(0, acts.size() - MOST_ACTS);
        if (first > 0) {
            rest = canvas.paragraph(rest, Words.say("trial.before", first), Style.QUIET);
        }
        for (Act act : acts.subList(first, acts.size())) {
            rest = canvas.paragraph(rest, Glyphs.BULLET + " " + words.act(act), Style.STRONG);
        }
        return canvas.paragraph(rest, Words.say("trial.not_saved"), Style.HELD);
    }

    /** It is being worked out, or cannot be. */
    private String unanswered() {
        return screen.answer()
                .filter(WhatIf.Answer.NotPossible.class::isInstance)
                .map(answer -> ((WhatIf.Answer.NotPossible) answer).refusal())
                .map(refusal -> Words.say("trial.not_possible", Words.say(refusal.name(), refusal.values())))
                .orElse(Words.say("trial.working"));
    }

    private void comparison(Region region, Comparison comparison) {
        Region rest = canvas.paragraph(region, TrialWords.sum(comparison), Style.NORMAL)
                .below(1);
        if (comparison.rows().isEmpty()) {
            canvas.paragraph(rest, Words.say("trial.nothing_moves"), Style.NORMAL);
            return;
        }
        int room = Math.max(2, rest.height() * 3 / 5);
        int rows = Math.min(comparison.rows().size(), room - 1);
        table(rest.top(rows + 1), comparison.rows());
        moves(rest.below(rows + 2), comparison.rows().get(screen.row()));
    }

    private void table(Region region, List<Comparison.Row> rows) {
        boolean isNarrow = region.width() < 100;
        List<Column> columns = List.of(
                Column.left("", 1),
                Column.left(Words.say("trial.machine"), 0),
                Column.left(Words.say("trial.ready"), isNarrow ? 21 : 22),
                Column.left(Words.say("trial.promised"), isNarrow ? 9 : 22),
                Column.left(Words.say("trial.chance_of_it"), 11),
                Column.left("", isNarrow ? 11 : 18));
        canvas.headings(region, columns);
        int shown = region.height() - 1;
        int first = Math.max(0, Math.min(screen.row() - shown + 1, rows.size() - shown));
        for (int index = 0; index < Math.min(shown, rows.size() - first); index++) {
            Comparison.Row row = rows.get(first + index);
            boolean selected = first + index == screen.row();
            if (!selected) {
                // pointing again would be Enter, which keeps the trial
                Press.row(canvas, region.row(index + 1), first + index, screen.row());
            }
            List<String> texts = List.of(
                    selected ? String.valueOf(Glyphs.POINTER) : "",
                    words.nameOf(row.visit()),
                    words.ready(row),
                    words.promised(row),
                    TrialWords.chance(row),
                    TrialWords.fate(row));
            canvas.entry(region.below(1 + index).row(0), columns, texts, selected ? Style.SELECTED : styleOf(row));
        }
    }

    private static Style styleOf(Comparison.Row row) {
        return switch (row.fate()) {
            case IN_DANGER -> Style.DANGER;
            case SAVED -> Style.GOOD;
            case SAME -> Style.NORMAL;
        };
    }

    private void moves(Region region, Comparison.Row row) {
        List<String> moves = words.moves(row);
        if (moves.isEmpty() || region.height() < 2) {
            return;
        }
        Region rest = canvas.paragraph(region, Words.say("trial.moves_of", words.nameOf(row.visit())), Style.TITLE);
        int shown = moves.size() > rest.height() ? rest.height() - 1 : moves.size();
        for (String move : moves.subList(0, Math.max(0, shown))) {
            canvas.text(rest, move, Style.NORMAL);
            rest = rest.below(1);
        }
        if (shown < moves.size()) {
            canvas.text(rest, Words.say("trial.more", moves.size() - shown), Style.QUIET);
        }
    }
}
