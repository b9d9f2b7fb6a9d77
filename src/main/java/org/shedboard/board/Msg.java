package org.shedboard.board;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shedboard.day.Act;
import org.shedboard.day.FixOffer;
import org.shedboard.day.KnockOffChance;
import org.shedboard.day.Outlook;
import org.shedboard.day.Posted;
import org.shedboard.day.Quote;
import org.shedboard.day.Refusal;
import org.shedboard.day.Trace;
import org.shedboard.day.WhatIf;
import org.shedboard.learn.Drift;
import org.shedboard.pack.story.Difference;
import org.shedboard.register.History;
import org.shedboard.tally.LookBack;
import org.shedboard.tally.SpanTally;

/** Something that happened, told to the board. */
public sealed interface Msg {
    /**
     * A key was pressed.
     *
     * @param at when, on a clock that only goes forward
     */
    record Pressed(Key key, Instant at) implements Msg {}

    /**
     * Somebody pointed at what stands for these keys.
     *
     * @param at when, on a clock that only goes forward
     */
    record Pointed(List<Key> keys, Instant at) implements Msg {
        public Pointed {
            keys = List.copyOf(keys);
        }
    }

    /** A form that was half filled in when the program ended last, in the words it was kept in. */
    record FormKept(Map<String, String> words) implements Msg {
        public FormKept {
            words = Map.copyOf(words);
        }
    }

    /**
     * Time went by.
     *
     * @param at on the clock that keys are timed by
     */
    record TimeWent(Instant at) implements Msg {}

    /**
     * The day was read, after a change or because a minute went by.
     *
     * @param change number of the newest change of the records that is in it; 0 for a day that is nobody else's
     */
    record Seen(Outlook outlook, SpanTally tally, long change) implements Msg {
        public Seen(Outlook outlook, SpanTally tally) {
            this(outlook, tally, 0);
        }
    }

    /** The hours of some days were read. */
    record HoursRead(SpanTally tally) implements Msg {}

    /** Some days were looked back upon. */
    record LookedBack(LookBack back) implements Msg {}

    /** What a machine went through was read. */
    record HistoryRead(History history) implements Msg {}

    /** How sure knock-off is on the day that was read last; empty when that says nothing. */
    record KnockOffSeen(Optional<KnockOffChance> chance) implements Msg {}

    /** What runs away from what is said of it, by all that is finished; often nothing. */
    record DriftsSeen(List<Drift> drifts) implements Msg {
        public DriftsSeen {
            drifts = List.copyOf(drifts);
        }
    }

    /** What is not as it should be with the backups and the clock, a sentence each; often nothing. */
    record Warned(List<String> sentences) implements Msg {
        public Warned {
            sentences = List.copyOf(sentences);
        }
    }

    /**
     * An act was carried out and is saved.
     *
     * @param subject the visit it was about
     * @param trace by which it can be taken back; empty where it was about another day
     */
    record Saved(Act act, Optional<String> subject, Optional<Trace> trace) implements Msg {
        /** Nothing is remembered of it. */
        public Saved(Act act, Optional<String> subject) {
            this(act, subject, Optional.empty());
        }
    }

    /**
     * An act cannot be; nothing was changed.
     *
     * @param date the day it was about; today when empty
     * @param earlier what another terminal did to the same thing first, where it did
     * @param isOvertaken whether that is the only reason, so that it can be done all the same
     */
    record NotDone(Act act, Optional<LocalDate> date, Refusal refusal, Optional<Earlier> earlier, boolean isOvertaken)
            implements Msg {
        public NotDone(Act act, Refusal refusal) {
            this(act, Optional.empty(), refusal, Optional.empty(), false);
        }
    }

    /**
     * A quote that was asked for.
     *
     * @param round which asking it answers
     */
    record Quoted(Quote.Answer answer, int round) implements Msg {}

    /** What would come of a change that was tried. */
    record Tried(WhatIf whatIf, WhatIf.Answer answer) implements Msg {}

    /** A change that was tried is carried out and saved, all of it. */
    record Kept(WhatIf whatIf, Trace trace) implements Msg {}

    /** A change that was tried cannot be any more; nothing of it was kept. */
    record NotKept(WhatIf whatIf, Refusal refusal) implements Msg {}

    /** What it takes to put a fix right. */
    record FixOffered(FixOffer.Answer answer) implements Msg {}

    /** A report was written; a sentence that says where it is. */
    record Written(String sentence) implements Msg {}

    /** A better plan was found in the background, and what it gains. */
    record BetterFound(Posted plan, Difference difference) implements Msg {}

    /** Something of the program or the machine went wrong; a sentence to show. */
    record WentWrong(String sentence) implements Msg {}

    /** The records cannot be reached any more; a sentence that stands until the day is read again. */
    record RecordsAway(String sentence) implements Msg {}

    /** There is no shop here yet. */
    record NoShop() implements Msg {}
}
