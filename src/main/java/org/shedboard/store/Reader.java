package org.shedboard.store;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.shedboard.estimate.Catalogue;
import org.shedboard.hours.ClockEntry;
import org.shedboard.hours.Errand;
import org.shedboard.hours.HoursRules;
import org.shedboard.register.Carried;
import org.shedboard.register.History;
import org.shedboard.register.Loan;
import org.shedboard.register.Logbook;
import org.shedboard.register.Measured;
import org.shedboard.register.Merged;
import org.shedboard.register.Movement;
import org.shedboard.register.Notice;
import org.shedboard.register.NoticeTaken;
import org.shedboard.register.Shelf;
import org.shedboard.shop.KeptPin;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Opening;
import org.shedboard.shop.Owner;
import org.shedboard.shop.Shop;
import org.shedboard.shop.Visit;

/** What is in the records at one moment; of no use once the work it was handed to has returned. */
public sealed class Reader permits Tx {
    private final Sql sql;

    Reader(Sql sql) {
        this.sql = sql;
    }

    public Optional<Shop> findShop() {
        return ShopRows.find(sql);
    }

    public Optional<KeptPin> findPin(String personId) {
        return PinRows.find(sql, personId);
    }

    /** Ids of the people who have a PIN. */
    public Set<String> signers() {
        return PinRows.people(sql);
    }

    /** Whether anybody has a PIN. */
    public boolean hasPins() {
        return PinRows.hasAny(sql);
    }

    public Optional<Catalogue> findCatalogue() {
        return CatalogueRows.find(sql);
    }

    public List<Owner> owners() {
        return OwnerRows.owners(sql);
    }

    public List<Machine> machines() {
        return OwnerRows.machines(sql);
    }

    /** Findings that machines took home to be looked at again, machine by machine. */
    public List<Carried> carried() {
        return CarriedRows.all(sql);
    }

    /** What was ever read off at points of these machines, the oldest first. */
    public List<Measured> measured(Collection<String> machineIds) {
        return MeasuredRows.of(sql, machineIds);
    }

    /** Records of machines that were merged into others. */
    public List<Merged> merged() {
        return OwnerRows.merged(sql);
    }

    /** All visits that are not over, and those that went, were cancelled or did not come since that moment; by arrival. */
    public List<Visit> visitsOpenOrEndedSince(Instant moment) {
        return visitsOpenOrEndedSince(moment, Map.of());
    }

    /**
     * The same, without reading again what is known.
     *
     * @param known visits by id in which the journal tells of no change since they were read
     */
    public List<Visit> visitsOpenOrEndedSince(Instant moment, Map<String, Visit> known) {
        return VisitRows.openOrEndedSince(sql, moment, known);
    }

    /** The visits that were with us between two moments, and those promised for a time between them; by arrival. */
    public List<Visit> visitsDuring(Instant from, Instant to) {
        return VisitRows.during(sql, from, to);
    }

    /** The visits of one machine by arrival, whatever became of them. */
    public List<Visit> visitsOf(String machineId) {
        return VisitRows.ofMachine(sql, machineId);
    }

    /** What a machine went through with us. */
    public History history(String machineId) {
        return VisitRows.history(sql, machineId);
    }

    /** The visits finished from one moment to another, in that order. */
    public List<Visit> finishedVisits(Instant from, Instant to) {
        return VisitRows.finishedWithin(sql, from, to);
    }

    /** When the newest visit but so many of those finished before a moment was finished; empty where there are no more of them. */
    public Optional<Instant> finishOfNewestBut(int count, Instant before) {
        return VisitRows.finishOfNewestBut(sql, count, before);
    }

    /** Numbers of which at least one is another once there is more work finished since that moment, or other clock entries on it. */
    public List<Long> stateOfFinishedWork(Instant since) {
        return EntryRows.stateOfFinishedWork(sql, since);
    }

    public Optional<Visit> findVisit(String id) {
        return VisitRows.find(sql, id);
    }

    public Optional<Opening> opening(LocalDate date) {
        return OpeningRows.find(sql, date);
    }

    /** How the days from one date until another were opened, in order. */
    public List<Opening> openings(LocalDate from, LocalDate until) {
        return OpeningRows.within(sql, from, until);
    }

    /** The newest date before this one that was opened and never closed. */
    public Optional<LocalDate> unclosedBefore(LocalDate date) {
        return OpeningRows.unclosedBefore(sql, date);
    }

    /** How the newest day was opened that ever was. */
    public Optional<Opening> newestOpening() {
        return OpeningRows.newest(sql);
    }

    /**
     * The clock entries that touch the span from one moment to another, open ones included, with the corrections to them and to the
     * presences of its days.
     */
    public List<ClockEntry> entries(Instant from, Instant to) {
        return EntryRows.within(sql, from, to);
    }

    /** The clock entries that somebody is on, however long ago they began. */
    public List<ClockEntry> openEntries() {
        return EntryRows.open(sql);
    }

    /** Other work that is planned, or that somebody is on. */
    public List<Errand> openErrands() {
        return ErrandRows.open(sql);
    }

    /** What makers ask for. */
    public List<Notice> notices() {
        return NoticeRows.notices(sql);
    }

    /** What was ever taken up of it. */
    public List<NoticeTaken> noticesTaken() {
        return NoticeRows.taken(sql);
    }

    /** Machines of ours that were ever lent, in the order in which they went out. */
    public List<Loan> loans() {
        return NoticeRows.loans(sql);
    }

    /** What meters showed, which visits were finished and who was rung, each oldest first. */
    public Logbook logbook() {
        return LogbookRows.read(sql);
    }

    /** What the logbook has of these visits, as far as they are finished, and these readings and calls. */
    public Logbook logbookOf(Collection<String> visitIds, Collection<String> readingIds, Collection<String> rungIds) {
        return LogbookRows.of(sql, visitIds, readingIds, rungIds);
    }

    /** How the shop counts its hours. */
    public HoursRules hoursRules() {
        return HoursRulesRows.find(sql);
    }

    /** What is on the shelf, and what is waited for. */
    public Shelf shelf() {
        return ShelfRows.read(sql);
    }

    /** How what lies on the shelf of an item got there, the oldest first. */
    public List<Movement> movementsOf(String itemId) {
        return ShelfRows.movementsOf(sql, itemId);
    }

    public Optional<Posted> posted() {
        return PlanRows.find(sql);
    }

    /** The next number for ids; 1 in a new shop. */
    public long nextNumber() {
        return SettingRows.nextNumber(sql);
    }

    public Optional<String> setting(String name) {
        return SettingRows.find(sql, name);
    }

    /** Number of the newest journal row, 0 before the first: as long as it stays, nothing has changed. */
    public long lastJournal() {
        return Journal.newest(sql);
    }

    /** What the clock says of the machine that has the records, when they began to be read just now. */
    public Instant clockOfRecords() {
        return sql.moment("SELECT CURRENT_TIMESTAMP");
    }

    /** The newest change; empty before the first. */
    public Optional<JournalRow> lastChange() {
        return Journal.newestRow(sql);
    }

    /** The changes of these names that the journal tells from one moment to another, in order. */
    public List<JournalRow> journal(List<String> what, Instant from, Instant to) {
        return Journal.of(sql, what, from, to);
    }

    /** When the first change was made; empty before there is any. */
    public Optional<Instant> firstChange() {
        return Journal.page(sql, 1, 1).stream().map(JournalRow::at).findFirst();
    }

    /** The journal held against the tables, as far as it tells of them row by row. */
    public Audit audit() {
        return Auditing.of(sql);
    }

    /** The journal from this row on. */
    public List<JournalRow> journal(long from) {
        return Journal.from(sql, from);
    }
}
