/**
 * The way between a terminal and the machine that serves the records: encrypted, to nobody but who holds the shop's own key, for nobody
 * but who knows the password. The shell's store lets the database's bytes run through it; nothing here knows what they are.
 */
package org.shedboard.wire;
