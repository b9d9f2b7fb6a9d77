/**
 * Says whether a plan obeys every rule of the day file, and what it costs. Whoever shows or saves a plan asks here first. It shares
 * no code with the search, so that a mistake in one does not hide in the other.
 */
package org.shedboard.pack.check;
