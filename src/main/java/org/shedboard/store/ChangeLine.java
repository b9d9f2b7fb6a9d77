package org.shedboard.store;

import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.CRC32C;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectWriteContext;

/**
 * One change as a line of JSON with everything needed to do it again: its row of the journal, the rows it wrote and those it deleted, in
 * order. It names the change before it, so that a gap is noticed, and begins with a check sum of all that follows.
 */
record ChangeLine(long id, long previous, int schema, String changeId, Instant at, String text) {
    private static final Pattern SUMMED = Pattern.compile("\\{\"crc\":\"([0-9a-f]{8})\",");
    private static final Pattern HEAD = Pattern.compile(
            "\"previous\":(\\d+),\"schema\":(\\d+),\"journal\":\\{\"id\":(\\d+),\"change_id\":\"([^\"]+)\",\"happened_at\":\"([^\"]+)\".*",
            Pattern.DOTALL);

    /** What was written in this transaction, whose row of the journal stands already. */
    static ChangeLine of(Sql sql, String changeId, int schema) {
        Cells journal = Journal.expect(sql, changeId);
        long id = journal.wide("id");
        long previous = Journal.before(sql, id);
        StringWriter rest = new StringWriter();
        try (JsonGenerator json = RowJson.FACTORY.createGenerator(ObjectWriteContext.empty(), rest)) {
            json.writeStartObject();
            json.writeNumberProperty("previous", previous);
            json.writeNumberProperty("schema", schema);
            json.writeName("journal");
            RowJson.write(json, journal, journal.table().insertOrder());
            json.writeName("rows");
            json.writeStartArray();
            sql.written().forEach(written -> write(json, written));
            json.writeEndArray();
            json.writeEndObject();
        }
        String body = rest.toString().substring(1);
        return new ChangeLine(
                id,
                previous,
                schema,
                changeId,
                journal.instant("happened_at"),
                "{\"crc\":\"%s\",%s".formatted(sum(body), body));
    }

    private static void write(JsonGenerator json, Written written) {
        json.writeStartArray();
        json.writeString(written.kind().sign());
        json.writeString(written.row().table().name());
        RowJson.write(json, written.row(), written.columns());
        json.writeEndArray();
    }

    private static String sum(String body) {
        CRC32C sum = new CRC32C();
        sum.update(body.getBytes(StandardCharsets.UTF_8));
        return "%08x".formatted(sum.getValue());
    }

    /** Empty when the line is not as it was written. */
    static Optional<ChangeLine> parse(String text) {
        Matcher summed = SUMMED.matcher(text);
        if (!summed.lookingAt() || !summed.group(1).equals(sum(text.substring(summed.end())))) {
            return Optional.empty();
        }
        Matcher head = HEAD.matcher(text).region(summed.end(), text.length());
        return head.matches()
                ? Optional.of(new ChangeLine(
                        Long.parseLong(head.group(3)),
                        Long.parseLong(head.group(1)),
                        Integer.parseInt(head.group(2)),
                        head.group(4),
                        Instant.parse(head.group(5)),
                        text))
                : Optional.empty();
    }

    /** Does the change again, journal row included. */
    void redo(Sql sql, Tables tables) {
        try (JsonParser json = RowJson.FACTORY.createParser(RowJson.reading(), text)) {
            List<Written> rows = new ArrayList<>();
            Optional<Cells> journal = Optional.empty();
            json.nextToken();
            while (json.nextToken() == JsonToken.PROPERTY_NAME) {
                String name = json.currentName();
                json.nextToken();
                if (name.equals("journal")) {
                    journal = Optional.of(RowJson.read(json, tables.expect("journal")));
                } else if (name.equals("rows")) {
                    rows.addAll(rows(json, tables));
                }
            }
            rows.forEach(sql::redo);
            tables.insert(sql, tables.expect("journal"), List.of(journal.orElseThrow()));
        } catch (JacksonException | IllegalArgumentException broken) {
            throw new StoreFailure(
                    StoreFailure.Kind.DAMAGED,
                    "change %s cannot be done again: %s"
                            .formatted(
                                    id, broken.getMessage().lines().findFirst().orElse("")),
                    broken);
        }
    }

    private static List<Written> rows(JsonParser json, Tables tables) {
        List<Written> rows = new ArrayList<>();
        while (json.nextToken() == JsonToken.START_ARRAY) {
            Written.Kind kind = Written.Kind.of(json.nextStringValue());
            Table table = tables.expect(json.nextStringValue());
            json.nextToken();
            rows.add(new Written(kind, RowJson.readSome(json, table)));
            json.nextToken();
        }
        return rows;
    }
}
