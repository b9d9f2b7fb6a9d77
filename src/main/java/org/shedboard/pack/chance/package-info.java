/**
 * Plans played on days whose minutes turn out otherwise: when jobs finish and days end with what chance, what a plan costs on the mean,
 * and plans chosen by that mean, for one more job or for all. The day asks it for outlooks and quotes. It knows nothing of how the
 * search finds its plans, nor where the spreads of the minutes come from.
 */
package org.shedboard.pack.chance;
