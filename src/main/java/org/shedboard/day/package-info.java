/**
 * The day as a value and everything that can be done to it. An act and a day give the next day and what to save, or a refusal;
 * the day gives a packing problem, and a plan comes back as the posted plan. Keys and commands both come through here. It knows
 * no database, no screen and no clock: the moment is handed in.
 */
package org.shedboard.day;
