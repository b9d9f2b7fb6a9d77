/**
 * How the styles of a screen look: a dark and a light scheme, and the measure of whether they can be read. The terminal and
 * pictures of screens take their colours from here; no value of a colour stands anywhere else. It knows no terminal.
 */
package org.shedboard.look;
