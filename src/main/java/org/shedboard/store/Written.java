package org.shedboard.store;

import java.util.List;

/** What was done to one row of a table, so that it can be done again. */
record Written(Kind kind, Cells row) {
    enum Kind {
        ADDED("+"),
        CHANGED("="),
        GONE("-");

        private final String sign;

        Kind(String sign) {
            this.sign = sign;
        }

        String sign() {
            return sign;
        }

        static Kind of(String sign) {
            for (Kind kind : values()) {
                if (kind.sign.equals(sign)) {
                    return kind;
                }
            }
            throw new IllegalArgumentException("no row is written by " + sign);
        }
    }

    /** The columns that have to be known to do it. */
    List<String> columns() {
        return kind == Kind.GONE ? row.table().key() : row.table().insertOrder();
    }
}
