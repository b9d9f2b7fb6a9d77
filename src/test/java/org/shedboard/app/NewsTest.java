package org.shedboard.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shedboard.day.Act;
import org.shedboard.files.Seed;
import org.shedboard.shop.Visit;
import org.shedboard.store.JournalRow;
import org.shedboard.store.Reader;
import org.shedboard.testing.Records;

@Tag("records")
class NewsTest {
    @TempDir
    private Path home;

    private Workshop shop;
    private JournalRow last;

    @BeforeEach
    void open() {
        Workshop.make(Records.at(home), Seed.catalogue(), Seed.shop(Seed.catalogue()));
        shop = Workshop.open(Records.at(home), "board", Optional.of(LocalDateTime.parse(CommandRoom.MORNING)));
        last = shop.read(Reader::lastChange).orElseThrow();
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private Optional<News> since(JournalRow change) {
        return shop.read(reader -> News.since(change, reader));
    }

    private Visit agreeHours() {
        Visit visit = shop.day().findByTag(7).orElseThrow();
        String line = visit.lines().get(0).id();
        Quads.expectDone(shop.carryOut(new Act.AgreeHours(visit.id(), line, 77), "P1"));
        return visit;
    }

    @Test
    void while_nothing_changes_there_is_nothing() {
        assertEquals(Set.of(), since(last).orElseThrow().tables());
    }

    @Test
    void a_change_of_a_visit_is_of_that_visit_alone() {
        Visit visit = agreeHours();
        News news = since(last).orElseThrow();
        assertEquals(Set.of(visit.id()), news.visits());
        assertTrue(news.isOfVisitsAnd(Set.of("plan_posted")), news.tables()::toString);
        assertTrue(news.tables().contains("visit_line"), news.tables()::toString);
    }

    @Test
    void a_change_of_another_table_is_not_of_visits_alone() {
        assertTrue(since(last).orElseThrow().isOfVisitsAnd(Set.of()));
        JournalRow ofTheShelf =
                new JournalRow(9, last.at(), "P1", "board", "x", "stock I1; count 3", "stock I1; count 2");
        assertFalse(new News(List.of(ofTheShelf)).isOfVisitsAnd(Set.of("plan_posted")));
    }

    /** As after a shop has gone back to a backup and on from there. */
    @Test
    void where_another_change_has_the_number_anything_may_be_other() {
        agreeHours();
        JournalRow other = new JournalRow(
                last.id(), last.at(), last.who(), last.terminal(), "another", last.before(), last.after());
        assertEquals(Optional.empty(), since(other));
    }

    @Test
    void what_the_journal_only_counts_may_be_anything() {
        JournalRow first = shop.read(reader -> reader.journal(1)).get(0);
        assertTrue(first.isCounted(), first.after());
        assertEquals(Optional.empty(), Optional.of(new News(List.of(first))).filter(News::isTold));
    }
}
