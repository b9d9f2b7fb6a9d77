package org.shedboard.app;

import org.shedboard.shop.Person;
import org.shedboard.shop.Pin;

/** Who signs, and the PIN they gave for it; whether it is theirs is still to be checked. */
record Signature(Person person, Pin pin) {}
