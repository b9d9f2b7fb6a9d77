package org.shedboard.estimate;

import java.util.List;
import org.shedboard.shop.Intake;
import org.shedboard.shop.Line;
import org.shedboard.shop.Stay;
import org.shedboard.shop.Step;

/** Says what work takes, by the arithmetic of one catalogue. */
public final class Estimator {
    private final Catalogue catalogue;

    public Estimator(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** The work of a visit with these lines, and what it takes. Every line names work of this catalogue. */
    public Estimate estimate(String classId, Intake intake, List<Line> lines) {
        Assembly assembly = new Assembly(catalogue, catalogue.expectClass(classId), intake, lines);
        return new Estimate(assembly.items(), assembly.stays());
    }

    /**
     * The stays of a visit with more work on it. Work joins the stay of its step while that is not over; otherwise the machine
     * comes in once more before its last step.
     */
    public List<Stay> withAdded(String classId, Intake intake, List<Stay> stays, List<Line> added) {
        List<Stay> bare = new Assembly(catalogue, catalogue.expectClass(classId), intake, added).repairStays();
        return new Joining(stays).with(bare);
    }

    /** The inspection points that are looked at in one step of this visit. */
    public List<Point> pointsOf(String classId, Intake intake, Step step) {
        return catalogue.expectClass(classId).pointsFor(intake).stream()
                .filter(point -> point.step() == step)
                .toList();
    }
}
