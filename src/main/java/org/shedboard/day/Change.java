package org.shedboard.day;

import java.util.List;
import org.shedboard.estimate.Catalogue;
import org.shedboard.hours.ClockEntry;
import org.shedboard.hours.Errand;
import org.shedboard.hours.HoursRules;
import org.shedboard.register.Carried;
import org.shedboard.register.Loan;
import org.shedboard.register.Merged;
import org.shedboard.register.Movement;
import org.shedboard.register.Notice;
import org.shedboard.register.NoticeTaken;
import org.shedboard.register.Order;
import org.shedboard.register.Reading;
import org.shedboard.register.Rung;
import org.shedboard.register.Stock;
import org.shedboard.shop.Machine;
import org.shedboard.shop.Opening;
import org.shedboard.shop.Owner;
import org.shedboard.shop.Visit;

/** One thing an act leaves to be saved: the new whole of a value, in the place of the one with its id. */
public sealed interface Change {
    record OwnerSaved(Owner owner) implements Change {}

    record MachineSaved(Machine machine) implements Change {}

    record VisitSaved(Visit visit) implements Change {}

    record EntrySaved(ClockEntry entry) implements Change {}

    record ErrandSaved(Errand errand) implements Change {}

    record HoursRulesSaved(HoursRules rules) implements Change {}

    record ReadingSaved(Reading reading) implements Change {}

    record RungSaved(Rung rung) implements Change {}

    record OpeningSaved(Opening opening) implements Change {}

    /** All that a machine takes home to be looked at again. */
    record CarriedSaved(String machineId, List<Carried> carried) implements Change {}

    record PlanPosted(Posted posted) implements Change {}

    /** These notices take the place of all before. */
    record NoticesSaved(List<Notice> notices) implements Change {
        public NoticesSaved {
            notices = List.copyOf(notices);
        }
    }

    record NoticeTakenSaved(NoticeTaken taken) implements Change {}

    record LoanSaved(Loan loan) implements Change {}

    record StockSaved(Stock stock) implements Change {}

    record OrderSaved(Order order) implements Change {}

    record MovementSaved(Movement movement) implements Change {}
    /** A record of a machine goes into another, with everything that names it. */
    record MachineMerged(Merged merged) implements Change {}

    /** Name and telephone of an owner are erased wherever they stand, in what was recorded long ago too. */
    record OwnerForgotten(Owner owner) implements Change {}

    /** This catalogue takes the place of the one before. */
    record CatalogueSaved(Catalogue catalogue) implements Change {}

    record PackedPercentSaved(int percent) implements Change {}

    record NumberUsed(long next) implements Change {}
}
