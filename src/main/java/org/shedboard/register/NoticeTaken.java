package org.shedboard.register;

/** A maker's notice that became a line of a visit. */
public record NoticeTaken(String noticeId, String machineId, String visitId, String lineId) {}
