package org.shedboard.estimate;

import org.shedboard.shop.Unit;

/**
 * Something that lies on the shelf.
 *
 * @param orderDays working days that usually pass from ordering it until it is here
 * @param isDisposable whether it is renewed, never cleaned, when it is found dirty
 */
public record Item(String id, String name, Unit unit, int orderDays, boolean isDisposable) {}
