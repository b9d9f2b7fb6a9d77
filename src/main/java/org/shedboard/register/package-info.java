/**
 * What the shop knows about machines beyond one visit: what they took home to be looked at again, what their makers ask for, what
 * lies on the shelf for them. The day's acts read it and change it; it knows nothing of days, plans, databases or screens.
 */
package org.shedboard.register;
