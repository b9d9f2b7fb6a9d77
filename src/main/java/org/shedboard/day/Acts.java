package org.shedboard.day;

import java.time.Instant;

/** Carries acts out: from a day and an act to the next day and what to save, or a refusal. */
public final class Acts {
    private Acts() {}

    /** What comes of this act at this moment. The posted plan is not moved along yet: see {@link Planning#carryOut}. */
    public static Outcome apply(Day day, Act act, Instant now) {
        Draft draft = new Draft(day);
        if (act instanceof Act.OpenDay open) {
            return new OpeningActs(draft, now).open(open);
        }
        if (act instanceof Act.CloseDay close) {
            return new OpeningActs(draft, now).close(close);
        }
        if (act instanceof Act.BeHere here) {
            return new OpeningActs(draft, now).beHere(here);
        }
        if (act instanceof Act.CheckHoist check) {
            return new OpeningActs(draft, now).checkHoist(check);
        }
        if (act instanceof Act.TakeIn in) {
            return new DoorActs(draft, now).takeIn(in);
        }
        if (act instanceof Act.Arrive arrive) {
            return new DoorActs(draft, now).arrive(arrive);
        }
        if (act instanceof Act.Collect collect) {
            return new DoorActs(draft, now).collect(collect);
        }
        if (act instanceof Act.CallOff off) {
            return new DoorActs(draft, now).callOff(off);
        }
        if (act instanceof Act.ReadMeter read) {
            return new MeterActs(draft, now).read(read);
        }
        if (act instanceof Act.NoteRung rung) {
            return new MeterActs(draft, now).rung(rung);
        }
        if (act instanceof Act.SayPromise promise) {
            return new DoorActs(draft, now).sayPromise(promise);
        }
        if (act instanceof Act.SetNotices set) {
            draft.putNotices(set.notices());
            return draft.done();
        }
        if (act instanceof Act.AcceptFigure accept) {
            return new CatalogueActs(draft).accept(accept);
        }
        if (act instanceof Act.SetPackedPercent set) {
            return new CatalogueActs(draft).setPacked(set);
        }
        if (act instanceof Act.LendMachine lend) {
            return new LoanActs(draft, now).lend(lend);
        }
        if (act instanceof Act.GetBack back) {
            return new LoanActs(draft, now).getBack(back);
        }
        if (act instanceof Act.SetWashDown set) {
            return new OwnerActs(draft).setWashDown(set);
        }
        if (act instanceof Act.TakeBack back) {
            return new TakingBack(draft, now).takeBack(back);
        }
        if (act instanceof Act.PinTask pin) {
            return new PinActs(draft, now).pin(pin);
        }
        if (act instanceof Act.LiftPin lift) {
            return new PinActs(draft, now).lift(lift);
        }
        if (act instanceof Act.Post post) {
            return Planning.post(draft, post, now);
        }
        return onTheFloor(new FloorActs(draft, now), act);
    }

    private static Outcome onTheFloor(FloorActs floor, Act act) {
        if (act instanceof Act.Start start) {
            return floor.start(start);
        }
        if (act instanceof Act.Pause pause) {
            return floor.pause(pause);
        }
        if (act instanceof Act.Finish finish) {
            return floor.finish(finish);
        }
        if (act instanceof Act.HandOver over) {
            return floor.handOver(over);
        }
        if (act instanceof Act.DoOther other) {
            return floor.doOther(other);
        }
        if (act instanceof Act.Stop stop) {
            return floor.stop(stop);
        }
        return onTheHours(floor, act);
    }

    private static Outcome onTheHours(FloorActs floor, Act act) {
        HoursActs hours = floor.hours();
        if (act instanceof Act.TakeBreak pause) {
            return hours.takeBreak(pause);
        }
        if (act instanceof Act.Lend lend) {
            return hours.lend(lend);
        }
        if (act instanceof Act.BringBack back) {
            return hours.bringBack(back);
        }
        if (act instanceof Act.PlanErrand plan) {
            return hours.planErrand(plan);
        }
        if (act instanceof Act.RunErrand run) {
            return hours.runErrand(run);
        }
        if (act instanceof Act.DropErrand drop) {
            return hours.dropErrand(drop);
        }
        return inTheBooks(floor, act);
    }

    private static Outcome inTheBooks(FloorActs floor, Act act) {
        BookActs books = floor.books();
        if (act instanceof Act.Correct correct) {
            return books.correct(correct);
        }
        if (act instanceof Act.AgreeHours agree) {
            return books.agree(agree);
        }
        if (act instanceof Act.SetHoursRules set) {
            return books.setRules(set);
        }
        return atTheShelf(floor, act);
    }

    private static Outcome atTheShelf(FloorActs floor, Act act) {
        ShelfActs shelf = floor.shelf();
        if (act instanceof Act.FitPart fit) {
            return shelf.fitPart(fit);
        }
        if (act instanceof Act.CountStock count) {
            return shelf.count(count);
        }
        if (act instanceof Act.OrderStock order) {
            return shelf.order(order);
        }
        if (act instanceof Act.OrderCame came) {
            return shelf.come(came);
        }
        return onTheMachine(floor.machine(), act);
    }

    private static Outcome onTheMachine(MachineActs machine, Act act) {
        if (act instanceof Act.Tick tick) {
            return machine.tick(tick);
        }
        if (act instanceof Act.HoldVisit hold) {
            return machine.hold(hold);
        }
        if (act instanceof Act.Release release) {
            return machine.release(release);
        }
        if (act instanceof Act.AddWork add) {
            return machine.addWork(add);
        }
        if (act instanceof Act.OwnerSaid said) {
            return machine.ownerSaid(said);
        }
        return inTheRegister(machine.register(), act);
    }

    private static Outcome inTheRegister(RegisterActs register, Act act) {
        if (act instanceof Act.CorrectMachine correct) {
            return register.correct(correct);
        }
        if (act instanceof Act.CorrectOwner correct) {
            return register.correct(correct);
        }
        if (act instanceof Act.MergeMachines merge) {
            return register.merge(merge);
        }
        if (act instanceof Act.ForgetOwner forget) {
            return register.forget(forget);
        }
        throw new IllegalArgumentException("no rule for " + act);
    }
}
