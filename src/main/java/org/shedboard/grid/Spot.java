package org.shedboard.grid;

/** A part of a screen that stands for something when somebody points at it. */
public record Spot(Region region, Meaning meaning) {
    /** What it stands for; only the screens know. */
    public interface Meaning {}
}
