/**
 * Files as whoever owns them wants them: for nobody else's eyes, there whole or not at all, read no further than there is room for.
 * The rest of the shell writes and reads through it what is private or comes from outside; it knows nothing of what is in them.
 */
package org.shedboard.disk;
