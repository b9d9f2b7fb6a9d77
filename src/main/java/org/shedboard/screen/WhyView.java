package org.shedboard.screen;

import java.util.List;
import java.util.Optional;
import org.shedboard.board.Board;
import org.shedboard.board.Screen;
import org.shedboard.day.Names;
import org.shedboard.day.Outlook;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Glyphs;
import org.shedboard.grid.Region;
import org.shedboard.grid.Style;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;
import org.shedboard.words.Words;

/** Why a task is planned as it is: what is planned, then the facts, each question at the left and its answers beside it. */
final class WhyView {
    private static final int LABEL = 22;

    /** Beyond this width the eye loses the line. */
    private static final int WIDEST = 110;

    /** Rows that are more than any answer needs. */
    private static final int TALLEST = 200;

    private final Canvas canvas;
    private final Board board;
    private final Screen.Why screen;
    private final Outlook outlook;
    private final Visit visit;

    WhyView(Canvas canvas, Board board, Screen.Why screen) {
        this.canvas = canvas;
        this.board = board;
        this.screen = screen;
        this.outlook = board.expectOutlook();
        this.visit = outlook.day().expectVisit(screen.visitId());
    }

    void draw(Region page) {
        Header.draw(canvas, page.row(0), board, Words.say("why.title", Names.of(outlook.day(), visit)));
        Region body = page.below(1).inside(1, 0).left(WIDEST);
        int rows = new WhyView(canvas.within(body.top(0)), board, screen).rows(body, 0);
        int scroll = Math.max(0, Math.min(screen.scroll(), rows - body.height()));
        new WhyView(canvas.within(body), board, screen).rows(body, scroll);
    }

    /** Draws everything, moved up; gives how many rows it is. */
    private int rows(Region body, int scroll) {
        Region all = new Region(body.left(), body.top() - scroll, body.width(), TALLEST);
        List<Task> tasks = visit.tasks();
        if (screen.why().isEmpty()) {
            Region rest = tasks.isEmpty()
                    ? all
                    : canvas.paragraph(all, Words.say("why.which", screen.task() + 1, tasks.size()), Style.QUIET);
            return canvas.paragraph(rest, unplanned(tasks), Style.STRONG).top() - all.top();
        }
        WhyStory story = new WhyStory(outlook, screen.why().get());
        Region rest = canvas.paragraph(all, Words.say("why.which", screen.task() + 1, tasks.size()), Style.QUIET);
        rest = canvas.paragraph(rest, story.planned(), Style.STRONG).below(1);
        rest = answers(rest, "why.label_then", story.then());
        rest = answers(rest, "why.label_there", story.there());
        rest = answers(rest, "why.label_who", story.who());
        return answers(rest, "why.label_change", story.change()).top() - all.top();
    }

    /** Why a task is not in the plan. */
    private String unplanned(List<Task> tasks) {
        if (tasks.isEmpty() || !visit.state().isOpen()) {
            return Words.say("why.nothing_left");
        }
        Optional<Task> task = Optional.of(tasks.get(Math.min(tasks.size() - 1, screen.task())));
        String why = outlook.whyNotIn(visit.id()).orElse("");
        String name = task.get().name();
        return task.get().isDone()
                ? Words.say("why.done", name)
                : Words.say("why.not_planned", name, why).strip();
    }

    private Region answers(Region region, String label, List<String> texts) {
        canvas.text(region.left(LABEL), Words.say(label), Style.TITLE);
        Region rest = region.rightOf(LABEL);
        for (String text : texts) {
            canvas.text(rest.left(2), Glyphs.BULLET + "", Style.QUIET);
            rest = canvas.paragraph(rest.rightOf(2), text, Style.NORMAL);
            rest = new Region(region.left() + LABEL, rest.top(), region.width() - LABEL, rest.height());
        }
        return new Region(region.left(), rest.top() + 1, region.width(), Math.max(0, rest.height() - 1));
    }
}
