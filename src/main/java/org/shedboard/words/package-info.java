/**
 * Every text a person reads, by name, from one resource bundle. Screens and commands ask here; nothing else of the program holds
 * a sentence.
 */
package org.shedboard.words;
