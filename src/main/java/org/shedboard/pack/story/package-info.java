/**
 * What can be told about a plan: why each task starts when it does, and what another plan would change. The day asks and the screens show
 * the answers as they are. It changes no plan and knows neither the search nor the words of a sentence.
 */
package org.shedboard.pack.story;
