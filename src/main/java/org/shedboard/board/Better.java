package org.shedboard.board;

import org.shedboard.day.Posted;
import org.shedboard.pack.story.Difference;

/** A better plan, and what it changes of the posted one. */
public record Better(Posted plan, Difference difference) {}
