/**
 * What tests of several packages share: stored screens, a terminal that exists in memory only, a real terminal, a browser, and
 * a folder of day files. Nothing here knows what is shown.
 */
package org.shedboard.testing;
