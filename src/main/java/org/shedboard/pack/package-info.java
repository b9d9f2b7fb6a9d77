/**
 * The world of the day file as values: one packing problem, a plan for it, what costs how much, and how long to search. Everybody who
 * packs, checks, stores, reads or shows a plan uses these. They know nobody: no search, no checker, no records of the shop, no clock.
 */
package org.shedboard.pack;
