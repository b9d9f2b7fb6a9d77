/**
 * What a workshop is made of and what comes into it: places, people, owners, machines, and the visits of machines with their
 * stays, tasks and findings. Everybody above uses these values; they know nothing of catalogues, minutes to come, plans or
 * screens. Times are instants; which day or hour that is depends on the shop's zone.
 */
package org.shedboard.shop;
