/**
 * What the shop's own finished work teaches: how long each sort of work takes here against the catalogue, by mud, depth, machine and
 * person, how unsure that is, and how right it was so far. The day asks it for minutes; it knows nothing of plans, clocks or records.
 */
package org.shedboard.learn;
