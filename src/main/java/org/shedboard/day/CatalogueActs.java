package org.shedboard.day;

import java.util.List;
import java.util.Optional;
import org.shedboard.estimate.Catalogue;
import org.shedboard.estimate.Figure;
import org.shedboard.forecast.Foresight;
import org.shedboard.shop.Visit;

/** What is put right of the figures that the shop plans by. */
final class CatalogueActs {
    private final Draft draft;

    CatalogueActs(Draft draft) {
        this.draft = draft;
    }

    /**
     * One figure has other minutes from now on, and so has the work on machines here and expected that has not begun: what was learned is
     * learned anew against them, and would be counted twice on the old ones.
     */
    Outcome accept(Act.AcceptFigure act) {
        Catalogue before = draft.day().books().catalogue();
        Optional<Figure> figure = Figure.find(before, act.figureId());
        Optional<Refusal> no = personRefusal(act.by())
                .or(() ->
                        figure.isEmpty() ? Optional.of(Refusal.of("figure_unknown", act.figureId())) : Optional.empty())
                .or(() -> refusal(before, figure.orElseThrow(), act));
        if (no.isPresent()) {
            return new Outcome.Refused(no.get());
        }
        Catalogue next = figure.orElseThrow().in(before, act.minutes());
        List<Visit> renewed = CatalogueFit.renewed(draft.day(), next);
        draft.put(next);
        renewed.forEach(draft::put);
        return draft.done();
    }

    private Optional<Refusal> personRefusal(String personId) {
        return draft.day().shop().findPerson(personId).isPresent()
                ? Optional.empty()
                : Optional.of(Refusal.of("person_unknown", personId));
    }

    private static Optional<Refusal> refusal(Catalogue catalogue, Figure figure, Act.AcceptFigure act) {
        int now = figure.minutesIn(catalogue).orElseThrow();
        if (now != act.was()) {
            return Optional.of(Refusal.of("figure_changed", figure.id(), act.was(), now));
        }
        int least = figure.least(catalogue);
        int most = figure.most(catalogue);
        return act.minutes() < least || act.minutes() > most
                ? Optional.of(Refusal.of("figure_range", figure.id(), act.minutes(), least, most))
                : Optional.empty();
    }

    Outcome setPacked(Act.SetPackedPercent act) {
        Optional<Refusal> no = personRefusal(act.by());
        if (no.isPresent()) {
            return new Outcome.Refused(no.get());
        }
        if (act.percent() < Foresight.LEAST_PERCENT || act.percent() > Foresight.MOST_PERCENT) {
            return new Outcome.Refused(
                    Refusal.of("percent_range", act.percent(), Foresight.LEAST_PERCENT, Foresight.MOST_PERCENT));
        }
        draft.putPacked(act.percent());
        return draft.done();
    }
}
