/**
 * What was found at a machine, said in plain words: a point now and last time, how it wears and when it reaches its limit, what the owner
 * said, who looked and who signed; and all of it put together for the owner. Made from a day and a visit; the screen, the commands and
 * the files show it.
 */
package org.shedboard.report;
