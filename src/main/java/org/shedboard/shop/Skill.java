package org.shedboard.shop;

/** What a person may do. */
public enum Skill {
    WASH,
    HOIST,
    SERVICE,
    BRAKES,
    ELECTRICS,
    SIGN_OFF
}
