package org.shedboard.forecast;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.shedboard.estimate.Estimate;
import org.shedboard.fit.LogNormal;
import org.shedboard.learn.Sort;
import org.shedboard.learn.Story;
import org.shedboard.learn.Trait;
import org.shedboard.shop.Step;

/**
 * Where the likely minutes of one visit come from.
 *
 * @param range minutes of the whole visit, what is done of it among them
 * @param catalogueAtPace minutes by the catalogue at the pace of who does them, as those of finished visits are told
 * @param parts one of each source; together they are the likely minutes
 * @param works what each piece of its work takes by itself: together they are not the likely minutes, nor are the safe ones
 * @param table the same work at other mud grades and depths; empty where the catalogue no longer has the class or the work
 */
public record Explanation(
        Estimate.Range range,
        int catalogueAtPace,
        List<Part> parts,
        List<PieceOfWork> works,
        Optional<MudAndDepth> table) {
    /** What minutes come from, in the order in which it is told. */
    public enum Source {
        /** The catalogue's minutes for this work on a clean machine that is looked over once. */
        CATALOGUE,
        /** A deeper look: the catalogue's minutes for it, and what was learned of it. */
        DEPTH,
        /** The mud: the catalogue's minutes for it, and what was learned of it. */
        MUD,
        /** Work that was added after the visit was agreed on. */
        ADDED,
        /** The catalogue had other minutes when the visit came in. */
        CHANGED,
        /** Machines of this class and age. */
        MACHINE,
        /** Who does it: their pace, what was learned of them, and their practice. */
        PERSON,
        /** What all work takes here, and the season. */
        SHOP,
        /** The minutes are drawn together so that more mud, or a deeper look, is never said to take less. */
        EVENED,
        /** A slow piece of work costs more than a quick one saves, so all together take more than each by itself. */
        TOGETHER;

        private static Source of(Trait trait) {
            return switch (trait) {
                case SHOP, SEASON -> SHOP;
                case MUD -> MUD;
                case DEPTH -> DEPTH;
                case CLASS, AGE -> MACHINE;
                case PERSON, PRACTICE -> PERSON;
            };
        }
    }

    /** Minutes that come from one source; some take minutes away. */
    public record Part(Source source, int minutes) {}

    /** A piece of work by itself. */
    public record PieceOfWork(Step step, Sort sort, int catalogue, int likely, int safe) {}

    public Explanation {
        parts = List.copyOf(parts);
        works = List.copyOf(works);
    }

    /** @param addedLines ids of the lines that were added after the visit was agreed on */
    public static Explanation of(VisitForecast forecast, Set<String> addedLines) {
        CatalogueShare catalogue = CatalogueShare.of(forecast, addedLines);
        return new Explanation(
                forecast.range(),
                (int) Math.round(forecast.catalogueMinutes()),
                whole(
                        new Sources(forecast, catalogue).minutes(),
                        forecast.range().likely()),
                works(forecast),
                catalogue.isKnown() ? Optional.of(MudAndDepth.of(forecast)) : Optional.empty());
    }

    private static List<Part> whole(Map<Source, Double> minutes, int likely) {
        double[] all =
                minutes.values().stream().mapToDouble(Double::doubleValue).toArray();
        int[] whole = WholeMinutes.of(all, likely);
        List<Part> parts = new ArrayList<>();
        for (Source source : minutes.keySet()) {
            parts.add(new Part(source, whole[source.ordinal()]));
        }
        return parts;
    }

    private static List<PieceOfWork> works(VisitForecast forecast) {
        List<PieceOfWork> works = new ArrayList<>();
        forecast.pieces().forEach((piece, tasks) -> {
            int catalogue = Piece.minutesOf(tasks);
            LogNormal shown = forecast.minutesOf(piece, catalogue, forecast.peopleOf(piece));
            works.add(new PieceOfWork(piece.step(), piece.sort(), catalogue, (int) Math.round(shown.median()), (int)
                    Math.round(shown.quantile(Shown.SAFE))));
        });
        return works;
    }

    public int minutesFrom(Source source) {
        return parts.get(source.ordinal()).minutes();
    }

    /** The minutes of one visit being told apart by where they come from. */
    private static final class Sources {
        private final VisitForecast forecast;
        private final Map<Source, Double> minutes = new EnumMap<>(Source.class);

        Sources(VisitForecast forecast, CatalogueShare catalogue) {
            this.forecast = forecast;
            for (Source source : Source.values()) {
                minutes.put(source, 0.0);
            }
            catalogue.minutes().forEach((source, sum) -> minutes.put(source, (double) sum));
            forecast.pieces().forEach((piece, tasks) -> add(piece, Piece.minutesOf(tasks)));
            double apart =
                    minutes.values().stream().mapToDouble(Double::doubleValue).sum();
            forecast.together(forecast.visit().tasks())
                    .ifPresent(together -> add(Source.TOGETHER, together.median() - apart));
        }

        Map<Source, Double> minutes() {
            return minutes;
        }

        private void add(Piece piece, int catalogue) {
            Map<String, Double> people = forecast.peopleOf(piece);
            Story story = forecast.story(piece, catalogue, people);
            add(Source.PERSON, story.catalogueMinutes() - catalogue);
            story.shares().forEach(share -> add(Source.of(share.trait()), share.minutes()));
            LogNormal shown = forecast.minutesOf(piece, catalogue, people);
            add(Source.EVENED, shown.median() - story.likelyMinutes());
        }

        private void add(Source source, double more) {
            minutes.merge(source, more, Double::sum);
        }
    }
}
