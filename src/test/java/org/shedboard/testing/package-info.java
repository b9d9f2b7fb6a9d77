/**
 * What tests of several packages share: stored screens, and a terminal that exists in memory only. Nothing here knows
 * what is shown.
 */
package org.shedboard.testing;
