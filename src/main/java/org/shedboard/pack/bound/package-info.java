/**
 * The least that any plan of a problem can cost, proven. The search asks it once a problem; its one door is
 * {@link org.shedboard.pack.bound.Bound}. It makes no plans and knows nothing of the search, so that its proof holds whatever is found.
 */
package org.shedboard.pack.bound;
