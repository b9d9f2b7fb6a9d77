package org.shedboard.learn;

/**
 * Finished work that is not learned from, and why.
 *
 * @param expectedMinutes what such work takes by all the others; the catalogue's figure where nothing else can be said
 */
public record SetAside(Lesson lesson, Lesson.Fault why, double expectedMinutes) {}
