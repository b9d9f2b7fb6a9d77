package org.shedboard.store;

import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;

/** A named column of a table and how its contents travel. */
record Column(String name, Type type) {
    /** What a column holds. */
    enum Type {
        TEXT(String.class, Types.VARCHAR),
        NUMBER(Integer.class, Types.INTEGER),
        LONG(Long.class, Types.BIGINT),
        REAL(Double.class, Types.DOUBLE),
        FLAG(Boolean.class, Types.BOOLEAN),
        DATE(LocalDate.class, Types.DATE),
        TIME(LocalTime.class, Types.TIME),
        INSTANT(OffsetDateTime.class, Types.TIMESTAMP_WITH_TIMEZONE);

        private final Class<?> asRead;
        private final int sqlType;

        Type(Class<?> asRead, int sqlType) {
            this.asRead = asRead;
            this.sqlType = sqlType;
        }
    }

    /**
     * The content of this column in the current row; null where there is none.
     *
     * @param index which column of the row it is, from 1
     */
    Object read(ResultSet row, int index) throws SQLException {
        Object content = row.getObject(index, type.asRead);
        return content instanceof OffsetDateTime time ? time.toInstant() : content;
    }

    void bind(PreparedStatement statement, int index, Object content) throws SQLException {
        if (content == null) {
            statement.setNull(index, type.sqlType);
        } else if (content instanceof Instant instant) {
            statement.setObject(index, instant.atOffset(ZoneOffset.UTC));
        } else {
            statement.setObject(index, content);
        }
    }
}
