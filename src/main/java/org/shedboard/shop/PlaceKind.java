package org.shedboard.shop;

/** What a place is fit for. */
public enum PlaceKind {
    WASH,
    HOIST,
    FLOOR
}
