package org.shedboard.day;

import java.util.Map;

/** Puts the ids of visits in the place of the handles by which a file calls them. */
final class Handle {
    private final Map<String, String> ids;

    private Handle(Map<String, String> ids) {
        this.ids = ids;
    }

    static Act resolved(Act act, Map<String, String> ids) {
        return new Handle(ids).resolved(act);
    }

    private Act resolved(Act act) {
        if (act instanceof Act.Arrive a) {
            return new Act.Arrive(id(a.visitId()), a.mud(), a.tag());
        }
        if (act instanceof Act.SayPromise a) {
            return new Act.SayPromise(id(a.visitId()), a.at(), a.by(), a.to(), a.why(), a.ownersWish());
        }
        if (act instanceof Act.Collect a) {
            return new Act.Collect(id(a.visitId()), a.handed());
        }
        if (act instanceof Act.CallOff a) {
            return new Act.CallOff(id(a.visitId()), a.noShow());
        }
        if (act instanceof Act.HoldVisit a) {
            return new Act.HoldVisit(id(a.visitId()), a.reason(), a.note(), a.until());
        }
        if (act instanceof Act.Release a) {
            return new Act.Release(id(a.visitId()));
        }
        if (act instanceof Act.AddWork a) {
            return new Act.AddWork(id(a.visitId()), a.wanted());
        }
        return onTask(act);
    }

    private Act onTask(Act act) {
        if (act instanceof Act.Start a) {
            return new Act.Start(a.personId(), id(a.visitId()), a.taskId(), a.placeId());
        }
        if (act instanceof Act.Pause a) {
            return new Act.Pause(id(a.visitId()), a.taskId());
        }
        if (act instanceof Act.Finish a) {
            return new Act.Finish(a.personId(), id(a.visitId()), a.taskId(), a.rest(), a.why());
        }
        if (act instanceof Act.Tick a) {
            return new Act.Tick(a.personId(), id(a.visitId()), a.pointId(), a.mark(), a.measured(), a.note());
        }
        if (act instanceof Act.HandOver a) {
            return new Act.HandOver(id(a.visitId()), a.taskId(), a.toPersonId());
        }
        return act;
    }

    private String id(String handle) {
        String id = ids.get(handle);
        if (id == null) {
            throw new IllegalArgumentException("no take-in has the handle " + handle);
        }
        return id;
    }
}
