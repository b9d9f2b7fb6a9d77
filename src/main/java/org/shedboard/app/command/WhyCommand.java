package org.shedboard.app.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shedboard.day.Names;
import org.shedboard.day.Outlook;
import org.shedboard.day.WhyPlanned;
import org.shedboard.screen.WhyStory;
import org.shedboard.shop.Task;
import org.shedboard.shop.Visit;
import org.shedboard.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Why a visit's next task is planned for when, where and whom it is, and what would change it. */
@Command(name = "why")
final class WhyCommand implements Wish.OnTheDay {
    @Parameters(index = "0", paramLabel = "TAG", descriptionKey = "option.tag")
    private String tag;

    @Override
    public Reply reply(Seen seen) {
        Visit visit = new Asked(seen).visit(tag);
        Outlook outlook = seen.outlook();
        Optional<Task> task = outlook.nextTaskOf(visit)
                .or(() -> visit.tasks().stream().filter(each -> !each.isDone()).findFirst());
        WhyPlanned why = task.flatMap(each -> WhyPlanned.of(outlook, visit, each))
                .orElseThrow(() -> new CannotDo("why_not_in_plan", Names.of(seen.day(), visit)));
        return new Reply.Tell(answer(visit, new WhyStory(outlook, why)));
    }

    private static Answer answer(Visit visit, WhyStory story) {
        List<String> lines = new ArrayList<>(List.of(story.planned()));
        section(lines, "why.label_then", story.then());
        section(lines, "why.label_there", story.there());
        section(lines, "why.label_who", story.who());
        section(lines, "why.label_change", story.change());
        return new Answer(
                lines,
                new Tree()
                        .put("id", visit.id())
                        .put("tag", visit.tag())
                        .put("planned", story.planned())
                        .put("then", story.then())
                        .put("there", story.there())
                        .put("who", story.who())
                        .put("change", story.change())
                        .fields());
    }

    private static void section(List<String> lines, String label, List<String> texts) {
        lines.add(Words.say(label));
        texts.forEach(text -> lines.add("  " + text));
    }
}
