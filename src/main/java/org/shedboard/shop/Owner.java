package org.shedboard.shop;

/** Whose machine it is and how to reach them. */
public record Owner(String id, String name, String phone) {}
