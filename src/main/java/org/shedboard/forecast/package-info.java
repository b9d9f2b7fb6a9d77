/**
 * What visits will take, forecast from what finished ones took: it tells finished work as lessons, and puts a visit's minutes together
 * as one distribution. The day asks it for likely and safe minutes and for those it packs; it knows nothing of plans, screens or
 * records.
 */
package org.shedboard.forecast;
