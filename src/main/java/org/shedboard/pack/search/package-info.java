/**
 * Makes plans: one at once by rules, the posted one moved along, and ever better ones by trying. The day calls
 * {@link org.shedboard.pack.search.Packer}; whoever has threads runs the rounds of a {@link org.shedboard.pack.search.Packing}. It knows
 * no drawn minutes, no thread and no clock: it ends after so many tries, or when told to.
 */
package org.shedboard.pack.search;
