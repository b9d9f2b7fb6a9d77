/**
 * What is wrong with an input, and everything that does not agree within a problem. The readers of files ask here before anything is
 * packed; whether begun work can still be finished is tried out with the search. It mends nothing, and knows no file format.
 */
package org.shedboard.pack.fault;
