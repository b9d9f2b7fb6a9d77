package org.shedboard.pack.chance;

/**
 * How sure it is that one day's work is over in time: nobody works into overtime after their last shift of the day, and whatever
 * the plan has over by the end of somebody's last shift is. Work for which the plan itself needs such overtime is in time when it
 * turns out short enough.
 *
 * @param day counted from minute 0, 1440 minutes each; a shift belongs to the day it begins in
 * @param minute the latest end of a last shift of anyone who has work that day
 * @param chance the share of the replays in which it is
 * @param error the standard deviation with which {@code chance} strays because only so many replays were drawn
 */
public record KnockOff(int day, int minute, double chance, double error) {
    /**
     * A stay that decides whether a day is over in time.
     *
     * @param stay its place in the job
     * @param drop how much smaller the share of days that are not over in time is when the stay's work takes its middle minutes in
     *     the very same draws
     * @param error the standard deviation with which {@code drop} strays
     */
    public record Decider(String job, int stay, double drop, double error) {}
}
