package org.shedboard.board;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.shedboard.board.Overlay.Choice;
import org.shedboard.board.Overlay.Purpose;
import org.shedboard.board.Overlay.Reply;
import org.shedboard.day.Act;
import org.shedboard.day.Day;
import org.shedboard.day.Figures;
import org.shedboard.day.FixOffer;
import org.shedboard.day.Names;
import org.shedboard.day.Riding;
import org.shedboard.estimate.Point;
import org.shedboard.report.FindingWords;
import org.shedboard.report.FixWords;
import org.shedboard.shop.Mark;
import org.shedboard.shop.OwnersWord;
import org.shedboard.shop.Person;
import org.shedboard.shop.Visit;
import org.shedboard.words.Words;

/** The questions about findings and about machines that are handed over. */
final class InspectAsks {
    private final Day day;

    InspectAsks(Day day) {
        this.day = day;
    }

    /** Why a point is not reached: the usual reasons by their digit, any other typed. Enter alone records none. */
    Overlay whyNotReached(Act.Tick tick, Point point) {
        ChoiceList choices = new ChoiceList();
        Arrays.stream(UsualReason.values()).map(Words::say).forEach(why -> choices.carry(why, noted(tick, why)));
        choices.ask(
                Words.say("ask.other_reason"),
                new Overlay.TypeIn(
                        Words.say("ask.why_not_reached", point.name()), Typing.EMPTY, new Purpose.NotReached(tick)));
        return choices.titled(Words.say("ask.why_not_reached", point.name()), UsualReason.values().length);
    }

    static Act.Tick noted(Act.Tick tick, String why) {
        return new Act.Tick(tick.personId(), tick.visitId(), tick.pointId(), tick.mark(), tick.measured(), why);
    }

    /** What a point is that reads outside its limits: not good. */
    Overlay outsideLimits(Act.Tick tick, Point point, double value, Overlay readAgain) {
        Point.Measure measure = point.measure().orElseThrow();
        String title = Words.say(
                "ask.outside_limits",
                point.name(),
                FindingWords.value(point, value),
                Figures.say(measure.low()),
                Figures.say(measure.high()));
        return new ChoiceList()
                .ask(Words.say("ask.read_again"), readAgain)
                .carry(Words.say(Mark.WATCH), marked(tick, Mark.WATCH, value))
                .carry(Words.say(Mark.FIX), marked(tick, Mark.FIX, value))
                .titled(title);
    }

    private static Act.Tick marked(Act.Tick tick, Mark mark, double value) {
        return new Act.Tick(
                tick.personId(), tick.visitId(), tick.pointId(), mark, OptionalDouble.of(value), tick.note());
    }

    /**
     * What the owner says of a fix, with all there is to know before they are asked. Its keys mark no point: it comes up by itself, and
     * whoever goes on marking must not answer it.
     *
     * @param by id of the person who asks
     */
    Overlay ownersWord(FixOffer offer, String by) {
        Visit visit = day.expectVisit(offer.visitId());
        List<Choice> choices = List.of(
                word('+', OwnersWord.Answer.YES, offer, by),
                word('-', OwnersWord.Answer.NO, offer, by),
                word('0', OwnersWord.Answer.LATER, offer, by));
        String title = Words.say("ask.owners_word", offer.point().name(), Names.of(day, visit));
        return new Overlay.Choose(title, FixWords.of(day, offer), choices, choices.size() - 1);
    }

    private Choice word(char key, OwnersWord.Answer answer, FixOffer offer, String by) {
        Visit visit = day.expectVisit(offer.visitId());
        Act said = new Act.OwnerSaid(
                visit.id(), offer.point().id(), answer, by, day.ownerOf(visit).name());
        return new Choice(key, Words.say("ask.owner_said." + answer), Optional.empty(), new Reply.Carry(said));
    }

    /** Which of several fixes the owner is asked about. */
    Overlay whichFix(Visit visit, List<Point> points) {
        ChoiceList choices = new ChoiceList();
        points.forEach(point -> choices.add(point.name(), Optional.empty(), new Reply.Offer(visit.id(), point.id())));
        return choices.titled(Words.say("ask.which_fix", Names.of(day, visit)));
    }

    /** Who hands a machine over that is not to be ridden. */
    Overlay whoHandsOver(Visit visit) {
        ChoiceList choices = new ChoiceList();
        for (Person person : day.shop().people()) {
            choices.ask(
                    person.name(),
                    new Overlay.TypeIn(
                            Words.say("ask.handed_to", Names.of(day, visit)),
                            Typing.of(day.ownerOf(visit).name()),
                            new Purpose.HandedTo(visit.id(), person.id())));
        }
        return choices.titled(Words.say("ask.who_hands_over", Names.of(day, visit)));
    }

    /** What whoever takes it was told; filled in with what they have to be. */
    Overlay whatTold(Purpose.HandedTo handed, String to) {
        Visit visit = day.expectVisit(handed.visitId());
        String points = FindingWords.names(Riding.stoppedBy(day, visit));
        return new Overlay.TypeIn(
                Words.say("ask.handed_told", to),
                Typing.of(Words.say("ask.told_not_to_ride", points)),
                new Purpose.HandedTold(visit.id(), handed.by(), to));
    }
}
