package org.shedboard.board;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.shedboard.day.AsSeen;
import org.shedboard.day.Day;
import org.shedboard.day.Outlook;
import org.shedboard.learn.Drift;
import org.shedboard.register.Finder;
import org.shedboard.register.History;
import org.shedboard.tally.LookBack;
import org.shedboard.tally.SpanTally;

/**
 * The whole state of the full screen: what is known of the shop, what is shown of it, and what its user is in the middle of.
 *
 * @param looksOnly whether nothing may be changed from this terminal
 */
public record Board(Known known, Shown shown, AtHand atHand, boolean looksOnly) {
    /** The board before anything is known. */
    public static Board starting(ZoneId zone) {
        return new Board(Known.nothing(zone), Shown.only(new Screen.Loading()), AtHand.NOTHING, false);
    }

    /** The same for a terminal from which nothing may be changed. */
    public Board lookingOnly() {
        return new Board(known, shown, atHand, true);
    }

    public ZoneId zone() {
        return known.zone();
    }

    public Optional<Known.Seen> seen() {
        return known.seen();
    }

    public Optional<Better> better() {
        return known.better();
    }

    public Read read() {
        return known.read();
    }

    public Screen screen() {
        return shown.screen();
    }

    public List<Screen> behind() {
        return shown.behind();
    }

    public Optional<Overlay> overlay() {
        return shown.overlay();
    }

    public Optional<Note> note() {
        return shown.note();
    }

    public int saving() {
        return atHand.saving();
    }

    public Optional<TakeInForm> draft() {
        return atHand.draft();
    }

    public Instant lastKey() {
        return atHand.lastKey();
    }

    public boolean pasting() {
        return atHand.pasting();
    }

    public Sight sight() {
        return atHand.sight();
    }

    public Optional<Outlook> outlook() {
        return seen().map(Known.Seen::outlook);
    }

    public Outlook expectOutlook() {
        return outlook().orElseThrow(() -> new IllegalStateException("the day has not been read yet"));
    }

    public Day expectDay() {
        return expectOutlook().day();
    }

    /** Who is taken to act where nobody is named: whoever opened the day, else the first of the people. */
    public String who() {
        return expectDay().inCharge();
    }

    private Board with(Known next) {
        return new Board(next, shown, atHand, looksOnly);
    }

    private Board with(Shown next) {
        return new Board(known, next, atHand, looksOnly);
    }

    private Board with(AtHand next) {
        return new Board(known, shown, next, looksOnly);
    }

    Board with(Screen next) {
        return with(shown.with(next));
    }

    Board withSeen(Known.Seen next) {
        return with(known.with(next));
    }

    /** On to another screen, from which Escape leads back here. */
    Board on(Screen next) {
        return with(shown.on(next));
    }

    /** Back to the screen before this one; to the bay board where there is none. */
    Board back() {
        return with(shown.back(seen().isPresent() ? Screen.Places.START : screen()));
    }

    /** On to a screen that nothing leads back from. */
    Board onlyOn(Screen next) {
        return with(shown.onlyOn(next));
    }

    Board asking(Overlay question) {
        return with(shown.asking(Optional.of(question)));
    }

    Board without() {
        return with(shown.asking(Optional.empty()));
    }

    Board noting(Note next) {
        return with(shown.noting(Optional.of(next)));
    }

    Board withoutNote() {
        return with(shown.noting(Optional.empty()));
    }

    Board saving(int change) {
        return with(atHand.saving(change));
    }

    Board offering(Optional<Better> next) {
        return with(known.with(next));
    }

    Board withHours(SpanTally tally) {
        return with(known.with(read().with(tally)));
    }

    Board withLookBack(LookBack back) {
        return with(known.with(read().with(back)));
    }

    Board withDrifts(List<Drift> drifts) {
        return with(known.with(read().with(drifts)));
    }

    Board withWarnings(List<String> warnings) {
        return with(known.with(read().warned(warnings)));
    }

    Board withHistory(History history) {
        return with(known.with(read().with(history)));
    }

    /** Why the records cannot be reached just now; empty while they can. */
    public Optional<String> away() {
        return known.away();
    }

    Board withoutRecords(String sentence) {
        return with(known.without(sentence));
    }

    /** With what finds machines in the books as they are; made only when they have changed. */
    Board withFinder() {
        return read().finder().filter(finder -> Found.isOf(finder, expectDay())).isPresent()
                ? this
                : with(known.with(read().with(Found.finder(expectDay()))));
    }

    /** What finds machines in the books as they are. */
    public Finder finder() {
        return withFinder().read().finder().orElseThrow();
    }

    /** What the machine that is shown went through; empty while it is being read. */
    public Optional<History> historyOf(String machineId) {
        return read().history().filter(history -> history.machineId().equals(machineId));
    }

    /** The month a screen shows; empty while it is being read. */
    public Optional<LookBack> lookBackOf(Screen.Hours page) {
        return read().lookBack().filter(back -> back.tally().ledger().from().equals(page.from()));
    }

    /** The hours a screen shows; empty while they are being read. */
    public Optional<SpanTally> hoursOf(Screen.Hours page) {
        return Stream.concat(seen().map(Known.Seen::tally).stream(), read().hours().stream())
                .filter(tally -> tally.ledger().from().equals(page.from())
                        && tally.ledger().until().equals(page.until()))
                .findFirst();
    }

    Board keeping(Optional<TakeInForm> form) {
        return with(atHand.keeping(form));
    }

    Board pressedAt(Instant at) {
        return with(atHand.pressedAt(at));
    }

    Board pasting(boolean now) {
        return with(atHand.pasting(now));
    }

    Board seeing(Sight next) {
        return with(atHand.seeing(next));
    }

    /** What was done at this terminal and can be taken back. */
    public Doings doings() {
        return atHand.doings();
    }

    Board remembering(Doings next) {
        return with(atHand.remembering(next));
    }

    /** The day as it was seen when whatever is asked here was asked; as it is seen now where nothing is. */
    public Optional<AsSeen> decidingOn() {
        return atHand.deciding().upon().or(() -> seen().map(Known.Seen::asSeen));
    }

    /** With what somebody was making up their mind about on the board that this one comes of. */
    Board minding(Board before) {
        return with(atHand.deciding(Deciding.on(before, this)));
    }

    /** Asks again what was answered last by typing, with the answer in it, when the act has not come about. */
    Board typingAgain() {
        return atHand.deciding()
                .typed()
                .filter(typed -> typed.over().getClass() == screen().getClass())
                .map(typed -> asking(typed.answer()))
                .orElse(this);
    }

    Board typingTag(String digits) {
        return with(atHand.typingTag(digits));
    }
}
