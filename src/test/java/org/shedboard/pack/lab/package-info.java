/**
 * The packing problem said a second time, to a general constraint solver, and a third time, as an exhaustive search: what the engine
 * finds is held against them. Neither uses any code of the search; only the problem, the plan and the checker are shared. Programs to be
 * run by hand measure the engine: {@link org.shedboard.pack.lab.Targets} all that is asked of it, in one table.
 */
package org.shedboard.pack.lab;
