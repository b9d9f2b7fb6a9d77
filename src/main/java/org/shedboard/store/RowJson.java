package org.shedboard.store;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.exc.StreamReadException;
import tools.jackson.core.json.JsonFactory;

/**
 * One row of a table as a JSON object: texts, dates, times and instants are strings, numbers are numbers, what holds nothing is null.
 */
final class RowJson {
    /** Deeper than anything we write; longer texts than anybody types. */
    private static final StreamReadConstraints LIMITS = StreamReadConstraints.builder()
            .maxNestingDepth(10)
            .maxStringLength(50_000_000)
            .maxNumberLength(40)
            .maxNameLength(200)
            .build();

    static final JsonFactory FACTORY = JsonFactory.builder()
            .streamReadConstraints(LIMITS)
            .disable(StreamWriteFeature.AUTO_CLOSE_TARGET)
            .build();

    private RowJson() {}

    static ObjectReadContext reading() {
        return ObjectReadContext.empty();
    }

    static void write(JsonGenerator out, Cells row, Iterable<String> columns) {
        out.writeStartObject();
        for (String column : columns) {
            out.writeName(column);
            write(out, row.expectSet(column));
        }
        out.writeEndObject();
    }

    private static void write(JsonGenerator out, Object content) {
        if (content == null) {
            out.writeNull();
        } else if (content instanceof Boolean flag) {
            out.writeBoolean(flag);
        } else if (content instanceof Integer number) {
            out.writeNumber(number);
        } else if (content instanceof Long number) {
            out.writeNumber(number);
        } else if (content instanceof Double number) {
            out.writeNumber(number);
        } else {
            out.writeString(content.toString());
        }
    }

    /** The object that the parser stands at the beginning of; it must have every column of the table and no other. */
    static Cells read(JsonParser in, Table table) {
        Cells row = Cells.in(table);
        Set<String> read = new HashSet<>();
        expect(in, in.currentToken(), JsonToken.START_OBJECT);
        while (in.nextToken() != JsonToken.END_OBJECT) {
            String name = in.currentName();
            if (table.columns().stream().noneMatch(column -> column.name().equals(name)) || !read.add(name)) {
                throw wrong(in, "table %s has no column %s, or has it twice".formatted(table.name(), name));
            }
            Column column = table.expectColumn(name);
            row.set(name, in.nextToken() == JsonToken.VALUE_NULL ? null : read(in, table, column));
        }
        if (read.size() < table.columns().size()) {
            throw wrong(in, "a row of table %s lacks a column".formatted(table.name()));
        }
        return row;
    }

    /** The same with those columns alone that are there, the key among them. */
    static Cells readSome(JsonParser in, Table table) {
        Map<String, Object> contents = new LinkedHashMap<>();
        expect(in, in.currentToken(), JsonToken.START_OBJECT);
        while (in.nextToken() != JsonToken.END_OBJECT) {
            Column column = table.expectColumn(in.currentName());
            contents.put(column.name(), in.nextToken() == JsonToken.VALUE_NULL ? null : read(in, table, column));
        }
        Cells row = Cells.in(table.only(contents.keySet()));
        contents.forEach(row::set);
        return row;
    }

    private static Object read(JsonParser in, Table table, Column column) {
        try {
            return switch (column.type()) {
                case TEXT -> text(in);
                case NUMBER -> number(in, JsonToken.VALUE_NUMBER_INT).getIntValue();
                case LONG -> number(in, JsonToken.VALUE_NUMBER_INT).getLongValue();
                case REAL -> real(in);
                case FLAG -> flag(in);
                case DATE -> LocalDate.parse(text(in));
                case TIME -> LocalTime.parse(text(in));
                case INSTANT -> Instant.parse(text(in));
            };
        } catch (DateTimeParseException unread) {
            throw wrong(in, "%s.%s: %s".formatted(table.name(), column.name(), unread.getMessage()));
        }
    }

    private static String text(JsonParser in) {
        expect(in, in.currentToken(), JsonToken.VALUE_STRING);
        return in.getString();
    }

    private static JsonParser number(JsonParser in, JsonToken token) {
        expect(in, in.currentToken(), token);
        return in;
    }

    private static double real(JsonParser in) {
        boolean isWhole = in.currentToken() == JsonToken.VALUE_NUMBER_INT;
        return number(in, isWhole ? JsonToken.VALUE_NUMBER_INT : JsonToken.VALUE_NUMBER_FLOAT)
                .getDoubleValue();
    }

    private static boolean flag(JsonParser in) {
        boolean is = in.currentToken() == JsonToken.VALUE_TRUE;
        expect(in, in.currentToken(), is ? JsonToken.VALUE_TRUE : JsonToken.VALUE_FALSE);
        return is;
    }

    static void expect(JsonParser in, JsonToken found, JsonToken expected) {
        if (found != expected) {
            throw wrong(in, "%s stands where %s should".formatted(found, expected));
        }
    }

    static StreamReadException wrong(JsonParser in, String what) {
        return new StreamReadException(in, what);
    }
}
