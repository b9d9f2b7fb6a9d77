package org.shedboard.store;

import java.io.InputStream;
import java.io.OutputStream;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonEncoding;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.exc.JacksonIOException;

/**
 * All of a shop's records as one JSON document: what it is, the number of its schema, each table with its rows, and what each boils down
 * to, so that a reader sees whether the file is as it was written. Rows go by one at a time in both directions.
 */
final class RecordsFile {
    static final String FORMAT = "shedboard-records";
    static final int VERSION = 1;

    private RecordsFile() {}

    /** What stands in such a file. */
    record Contents(int schema, long rows, long journal) {}

    /** Writes what this transaction sees. */
    static Contents write(Sql sql, OutputStream out) {
        Tables tables = Tables.of(sql);
        int schema = Schema.version(sql);
        Map<String, String> digests = new LinkedHashMap<>();
        long rows = 0;
        try (JsonGenerator json = RowJson.FACTORY.createGenerator(ObjectWriteContext.empty(), out, JsonEncoding.UTF8)) {
            begin(json, schema);
            for (Table table : tables.all()) {
                RowsDigest digest = writeTable(json, tables, sql, table);
                digests.put(table.name(), digest.toString());
                rows += digest.rows();
            }
            json.writeEndObject();
            writeDigests(json, digests);
            json.writeEndObject();
            json.writeRaw('\n');
        } catch (JacksonIOException problem) {
            throw StoreFailure.from(problem.getCause());
        }
        return new Contents(schema, rows, Journal.newest(sql));
    }

    private static void begin(JsonGenerator json, int schema) {
        json.writeStartObject();
        json.writeStringProperty("format", FORMAT);
        json.writeNumberProperty("version", VERSION);
        json.writeNumberProperty("schema", schema);
        json.writeName("tables");
        json.writeStartObject();
    }

    private static RowsDigest writeTable(JsonGenerator json, Tables tables, Sql sql, Table table) {
        RowsDigest digest = new RowsDigest();
        json.writeRaw('\n');
        json.writeName(table.name());
        json.writeStartArray();
        tables.each(sql, table, row -> {
            json.writeRaw('\n');
            RowJson.write(json, row, table.insertOrder());
            digest.add(row);
        });
        json.writeEndArray();
        return digest;
    }

    private static void writeDigests(JsonGenerator json, Map<String, String> digests) {
        json.writeRaw('\n');
        json.writeName("digests");
        json.writeStartObject();
        digests.forEach(json::writeStringProperty);
        json.writeEndObject();
    }

    /** Makes a database of what the file says in a home that has none, in the schema of the file; all of it or a failure. */
    static Contents read(InputStream in, Home home, Schema known) {
        try (JsonParser json = RowJson.FACTORY.createParser(RowJson.reading(), in)) {
            int schema = head(json, known.newest());
            Migrator migrator = new Migrator(home, known.upTo(schema));
            Sql sql = migrator.open(Intent.MAKE);
            try {
                long rows = tables(json, sql);
                return new Contents(schema, rows, Journal.newest(sql));
            } finally {
                sql.run("SHUTDOWN COMPACT");
            }
        } catch (JacksonException broken) {
            throw bad(broken);
        } catch (SQLException problem) {
            throw StoreFailure.from(problem);
        }
    }

    private static StoreFailure bad(JacksonException broken) {
        var place = broken.getLocation();
        String where = place == null ? "" : "line %s, column %s: ".formatted(place.getLineNr(), place.getColumnNr());
        String said = broken.getOriginalMessage().lines().findFirst().orElse("");
        return new StoreFailure(
                StoreFailure.Kind.BAD_FILE, "this is no whole file of records: " + where + said, broken);
    }

    private static int head(JsonParser json, int newest) {
        RowJson.expect(json, json.nextToken(), JsonToken.START_OBJECT);
        int schema = 0;
        String format = "";
        while (json.nextToken() == JsonToken.PROPERTY_NAME
                && !json.currentName().equals("tables")) {
            String name = json.currentName();
            json.nextToken();
            if (name.equals("format")) {
                format = json.getString();
            } else if (name.equals("schema")) {
                schema = json.getIntValue();
            } else if (!name.equals("version") || json.getIntValue() != VERSION) {
                throw RowJson.wrong(json, "%s is not known to this program".formatted(name));
            }
        }
        if (!format.equals(FORMAT) || schema < 1) {
            throw RowJson.wrong(json, "it does not begin with format, version and schema");
        }
        if (schema > newest) {
            throw new StoreFailure(
                    StoreFailure.Kind.NEWER,
                    "these records were written by a newer program (schema %s, this one knows %s); use that one"
                            .formatted(schema, newest));
        }
        return schema;
    }

    private static long tables(JsonParser json, Sql sql) {
        Tables tables = Tables.of(sql);
        RowJson.expect(json, json.nextToken(), JsonToken.START_OBJECT);
        List<String> missing =
                new ArrayList<>(tables.all().stream().map(Table::name).toList());
        long rows = 0;
        while (json.nextToken() != JsonToken.END_OBJECT) {
            String name = json.currentName();
            if (!missing.remove(name)) {
                throw RowJson.wrong(json, "there is no table %s, or it is here twice".formatted(name));
            }
            rows += rowsOf(json, tables, tables.expect(name), sql);
        }
        if (!missing.isEmpty()) {
            throw RowJson.wrong(json, "table %s is missing".formatted(missing.get(0)));
        }
        tables.goOnNumbering(sql);
        expectDigests(json, tables.digests(sql));
        return rows;
    }

    private static long rowsOf(JsonParser json, Tables tables, Table table, Sql sql) {
        RowJson.expect(json, json.nextToken(), JsonToken.START_ARRAY);
        List<Cells> page = new ArrayList<>();
        long rows = 0;
        while (json.nextToken() != JsonToken.END_ARRAY) {
            page.add(RowJson.read(json, table));
            rows++;
            if (page.size() == Tables.PAGE) {
                insert(tables, table, sql, page);
            }
        }
        insert(tables, table, sql, page);
        return rows;
    }

    private static void insert(Tables tables, Table table, Sql sql, List<Cells> page) {
        try {
            sql.inOne(one -> {
                tables.insert(one, table, page);
                return null;
            });
        } catch (StoreFailure refused) {
            if (refused.constraint().isEmpty()) {
                throw refused;
            }
            throw new StoreFailure(
                    StoreFailure.Kind.BAD_FILE, "table %s: %s".formatted(table.name(), refused.getMessage()), refused);
        }
        page.clear();
    }

    /** A file that somebody changed by hand has to do without them. */
    private static void expectDigests(JsonParser json, Map<String, String> found) {
        if (json.nextToken() == JsonToken.END_OBJECT) {
            return;
        }
        if (!json.currentName().equals("digests")) {
            throw RowJson.wrong(json, "%s is not known to this program".formatted(json.currentName()));
        }
        RowJson.expect(json, json.nextToken(), JsonToken.START_OBJECT);
        while (json.nextToken() != JsonToken.END_OBJECT) {
            String table = json.currentName();
            json.nextToken();
            if (!json.getString().equals(found.get(table))) {
                throw new StoreFailure(
                        StoreFailure.Kind.BAD_FILE,
                        "table %s is not as it was written; take another file, or take \"digests\" out of this one if you changed it"
                                .formatted(table));
            }
        }
        RowJson.expect(json, json.nextToken(), JsonToken.END_OBJECT);
    }
}
