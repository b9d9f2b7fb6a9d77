package org.shedboard.shop;

/** Something a line needs from the shelf; the quantity is a text, such as "2.5 L". */
public record Part(String name, String quantity) {}
