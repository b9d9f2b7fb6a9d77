/**
 * The weeks ahead as a shop books them: for each working day the minutes its people and places have open, against the minutes that
 * are booked on it. Called when a machine is booked, and by whoever draws or prints the weeks. It packs nothing, knows no visit and
 * no plan: it says what cannot fit in any order, and what is left of it goes over to the next day.
 */
package org.shedboard.ahead;
