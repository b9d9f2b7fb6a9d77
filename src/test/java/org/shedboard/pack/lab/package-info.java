/**
 * The packing problem said a second time, to a general constraint solver, and a third time, as an exhaustive search: what the engine
 * finds is held against them. Nothing here uses any code of the search; only the problem, the plan and the checker are shared.
 */
package org.shedboard.pack.lab;
