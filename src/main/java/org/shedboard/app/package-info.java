/**
 * Where everything meets: the program's start, its commands, the session of the full screen, and the workshop that reads the day
 * from the records and carries acts out on it. Nobody uses this package.
 */
package org.shedboard.app;
