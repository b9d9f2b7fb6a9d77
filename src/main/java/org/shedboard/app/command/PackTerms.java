package org.shedboard.app.command;

/**
 * How one problem is to be packed.
 *
 * @param seed which chances to search by
 * @param againstRisk whether, after the usual search, as long a one is made for a plan that keeps more promises on drawn days
 */
public record PackTerms(SearchLimit limit, long seed, int threads, boolean againstRisk) {}
