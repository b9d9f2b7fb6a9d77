package org.shedboard.app.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.shedboard.day.Act;
import org.shedboard.day.Day;
import org.shedboard.register.Notice;
import org.shedboard.register.NoticeTaken;
import org.shedboard.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** What makers ask for: listed, or read from a file in place of what was known before. */
@Command(name = "notices")
public final class NoticesCommand implements Wish.OnTheDay {
    @Parameters(index = "0", arity = "0..1", paramLabel = "FILE", descriptionKey = "option.file")
    private Optional<Path> file = Optional.empty();

    private List<Notice> notices = List.of();

    /** The file to be read and {@link #give given} before the reply is asked for; empty to list what is known. */
    public Optional<Path> file() {
        return file;
    }

    public void give(List<Notice> read) {
        notices = List.copyOf(read);
    }

    @Override
    public Reply reply(Seen seen) {
        return file.isPresent() ? Reply.Carry.of(new Act.SetNotices(notices)) : new Reply.Tell(list(seen.day()));
    }

    private static Answer list(Day day) {
        List<Notice> all = day.books().register().notices();
        List<String> lines = all.isEmpty()
                ? List.of(Words.say("command.notices.none"))
                : all.stream().map(notice -> line(day, notice)).toList();
        return new Answer(
                lines,
                new Tree()
                        .put(
                                "notices",
                                all.stream().map(notice -> tree(day, notice)).toList())
                        .fields());
    }

    private static String line(Day day, Notice notice) {
        String work = day.books()
                .catalogue()
                .findWork(notice.workId())
                .map(each -> each.name())
                .orElse(notice.workId());
        return Words.say(
                "command.notices.line",
                notice.id(),
                notice.title(),
                work,
                count(day, notice, NoticeTaken.State.DONE),
                count(day, notice, NoticeTaken.State.TAKEN));
    }

    private static long count(Day day, Notice notice, NoticeTaken.State state) {
        return day.books().register().taken().stream()
                .filter(taken -> taken.noticeId().equals(notice.id()) && taken.state() == state)
                .count();
    }

    private static Object tree(Day day, Notice notice) {
        return new Tree()
                .put("id", notice.id())
                .put("title", notice.title())
                .put("classes", notice.classes())
                .put("label", notice.label())
                .put("yearFrom", notice.yearFrom())
                .put("yearTo", notice.yearTo())
                .put("work", notice.workId())
                .put(
                        "taken",
                        day.books().register().taken().stream()
                                .filter(taken -> taken.noticeId().equals(notice.id()))
                                .map(taken -> new Tree()
                                        .put("machine", taken.machineId())
                                        .put("visit", taken.visitId())
                                        .put("state", taken.state())
                                        .fields())
                                .toList())
                .fields();
    }
}
