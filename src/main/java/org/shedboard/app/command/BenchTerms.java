package org.shedboard.app.command;

/**
 * How every problem of a bench is packed.
 *
 * @param limit of each search
 * @param seeds searches of each problem, with the seeds 1, 2, …
 * @param threads of each search
 */
public record BenchTerms(SearchLimit limit, int seeds, int threads) {}
