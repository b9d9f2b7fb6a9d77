package org.shedboard.board;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shedboard.day.Quote;
import org.shedboard.shop.Condition;
import org.shedboard.shop.Depth;
import org.shedboard.shop.Mud;

/**
 * A machine being taken in, as far as it is typed.
 *
 * @param texts what is typed in the fields that take text; of a known machine the number is among them where its year is asked for
 * @param picked index of the selected line in the list that belongs to the field
 * @param machineId the machine, once one we know is found
 * @param classId the class of a new machine, once chosen
 * @param workIds the work wanted so far
 * @param noticeIds the makers' notices taken up so far
 * @param round how often a quote was asked for; answers to earlier rounds are stale
 * @param answer the newest quote
 */
public record TakeInForm(
        Field field,
        Map<Field, Typing> texts,
        int picked,
        Optional<String> machineId,
        Optional<String> classId,
        List<String> workIds,
        List<String> noticeIds,
        Optional<Mud> mud,
        Optional<Depth> depth,
        Condition condition,
        int round,
        Optional<Quote.Answer> answer) {
    /** The fields in the order in which they are gone through; a known machine needs none from OWNER to YEAR. */
    public enum Field {
        FIND,
        OWNER,
        PHONE,
        CLASS,
        LABEL,
        NUMBER,
        YEAR,
        WORK,
        MUD,
        PROMISE,
        TOLD,
        DEPTH,
        CONDITION,
        METER,
        TAG,
        EXPECTED,
        NOTE;

        boolean isOfNewMachine() {
            return ordinal() >= OWNER.ordinal() && ordinal() <= YEAR.ordinal();
        }
    }

    public static final TakeInForm EMPTY = new TakeInForm(
            Field.FIND,
            Map.of(),
            0,
            Optional.empty(),
            Optional.empty(),
            List.of(),
            List.of(),
            Optional.empty(),
            Optional.empty(),
            Condition.SOUND,
            0,
            Optional.empty());

    public TakeInForm {
        texts = Map.copyOf(texts);
        workIds = List.copyOf(workIds);
        noticeIds = List.copyOf(noticeIds);
    }

    public String text(Field of) {
        return typing(of).text();
    }

    public Typing typing(Field of) {
        return texts.getOrDefault(of, Typing.EMPTY);
    }

    /** Whether anything was typed or wanted, which would be lost with it. */
    boolean isTouched() {
        return !texts.isEmpty() || isWanted();
    }

    public boolean isKnownMachine() {
        return machineId.isPresent();
    }

    /** Whether the field is shown for the machine at hand. */
    public boolean shows(Field of) {
        return !isSkipped(of) && (!of.isOfNewMachine() || field != Field.FIND);
    }

    private boolean isSkipped(Field of) {
        return of.isOfNewMachine() && isKnownMachine() && !(asksYear() && (of == Field.NUMBER || of == Field.YEAR));
    }

    private boolean asksYear() {
        return texts.containsKey(Field.NUMBER);
    }

    TakeInForm at(Field next) {
        return new TakeInForm(
                next, texts, 0, machineId, classId, workIds, noticeIds, mud, depth, condition, round, answer);
    }

    /** The next field that is shown, or this one at the end. */
    TakeInForm onward() {
        return moved(1);
    }

    TakeInForm backward() {
        return moved(-1);
    }

    private TakeInForm moved(int by) {
        Field[] all = Field.values();
        int index = field.ordinal() + by;
        while (index >= 0 && index < all.length && isSkipped(all[index])) {
            index += by;
        }
        return index < 0 || index >= all.length ? this : at(all[index]);
    }

    TakeInForm withText(Field of, Typing typing) {
        Map<Field, Typing> next = new EnumMap<>(Field.class);
        next.putAll(texts);
        next.put(of, typing);
        return new TakeInForm(
                field, next, picked, machineId, classId, workIds, noticeIds, mud, depth, condition, round, answer);
    }

    /** Without what was said of another machine. */
    TakeInForm withoutNumberAndYear() {
        Map<Field, Typing> next = new EnumMap<>(Field.class);
        next.putAll(texts);
        next.remove(Field.NUMBER);
        next.remove(Field.YEAR);
        return new TakeInForm(
                field, next, picked, machineId, classId, workIds, noticeIds, mud, depth, condition, round, answer);
    }

    TakeInForm pick(int index) {
        return new TakeInForm(
                field, texts, index, machineId, classId, workIds, noticeIds, mud, depth, condition, round, answer);
    }

    TakeInForm withMachine(Optional<String> id) {
        return new TakeInForm(
                field, texts, 0, id, Optional.empty(), List.of(), List.of(), mud, depth, condition, round, answer);
    }

    TakeInForm withClass(String id) {
        return new TakeInForm(
                field,
                texts,
                picked,
                machineId,
                Optional.of(id),
                List.of(),
                List.of(),
                mud,
                depth,
                condition,
                round,
                answer);
    }

    /** With this work wanted, or no longer wanted. */
    TakeInForm toggle(String workId) {
        List<String> next = new ArrayList<>(workIds);
        if (!next.remove(workId)) {
            next.add(workId);
        }
        return withWorks(next);
    }

    TakeInForm withWorks(List<String> ids) {
        return new TakeInForm(
                field, texts, picked, machineId, classId, ids, noticeIds, mud, depth, condition, round, answer);
    }

    /** With this notice taken up, or no longer. */
    TakeInForm toggleNotice(String noticeId) {
        List<String> next = new ArrayList<>(noticeIds);
        if (!next.remove(noticeId)) {
            next.add(noticeId);
        }
        return new TakeInForm(
                field, texts, picked, machineId, classId, workIds, next, mud, depth, condition, round, answer);
    }

    /** Whether anything at all is to be done. */
    boolean isWanted() {
        return !workIds.isEmpty() || !noticeIds.isEmpty();
    }

    TakeInForm withMud(Mud grade) {
        return new TakeInForm(
                field,
                texts,
                picked,
                machineId,
                classId,
                workIds,
                noticeIds,
                Optional.of(grade),
                depth,
                condition,
                round,
                answer);
    }

    TakeInForm withDepth(Optional<Depth> next) {
        return new TakeInForm(
                field, texts, picked, machineId, classId, workIds, noticeIds, mud, next, condition, round, answer);
    }

    TakeInForm withCondition(Condition next) {
        return new TakeInForm(
                field, texts, picked, machineId, classId, workIds, noticeIds, mud, depth, next, round, answer);
    }

    TakeInForm nextRound() {
        return new TakeInForm(
                field, texts, picked, machineId, classId, workIds, noticeIds, mud, depth, condition, round + 1, answer);
    }

    TakeInForm answered(Optional<Quote.Answer> next) {
        return new TakeInForm(
                field, texts, picked, machineId, classId, workIds, noticeIds, mud, depth, condition, round, next);
    }
}
