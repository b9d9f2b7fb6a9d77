package org.shedboard.store;

import java.sql.Connection;
import java.util.List;

/**
 * The steps of the schema on PostgreSQL, which can take back what it did to a schema: all that are missing are one transaction, and
 * whoever else comes to the same shop meanwhile waits for it.
 */
final class DatabaseSteps {
    private static final String HAS_SCHEMA = "SELECT 1 WHERE to_regnamespace(?) IS NOT NULL";
    private static final String HAS_SHOP = "SELECT 1 WHERE to_regclass(?) IS NOT NULL";
    private static final String ALONE = "SELECT 1 FROM pg_advisory_xact_lock(hashtext(?))";

    private static final Table TABLES =
            Table.named("information_schema.tables").text("table_schema").keyed("table_schema");

    private final DatabaseUrl url;
    private final Schema schema;

    DatabaseSteps(DatabaseUrl url, Schema schema) {
        this.url = url;
        this.schema = schema;
    }

    /** Brings the shop up to date; one that is not there is made, or missed. */
    void take(Sql sql, Intent intent) {
        if (!sql.inOne(this::isUpToDate)) {
            sql.inOne(one -> {
                takeAlone(one, intent);
                return null;
            });
        }
    }

    /** Fails when the database cannot be reached. */
    static boolean hasShop(DatabaseUrl url) {
        try (Sql sql = DatabaseDoor.open(url, Connection.TRANSACTION_READ_COMMITTED)) {
            return sql.inOne(one -> hasShop(one, url.schema()));
        }
    }

    /** The schemas with a shop that may be read. */
    static List<String> shops(DatabaseUrl url) {
        try (Sql sql = DatabaseDoor.open(url, Connection.TRANSACTION_READ_COMMITTED)) {
            return sql
                    .inOne(one -> one.select(
                            TABLES,
                            "WHERE table_name = 'schema_history' AND table_type = 'BASE TABLE' ORDER BY table_schema"))
                    .stream()
                    .map(row -> row.text("table_schema"))
                    .toList();
        }
    }

    private static boolean hasShop(Sql sql, String schema) {
        return sql.findNumber(HAS_SHOP, schema + ".schema_history").isPresent();
    }

    private boolean isUpToDate(Sql sql) {
        return hasShop(sql, url.schema()) && schema.missing(sql).isEmpty();
    }

    private void takeAlone(Sql sql, Intent intent) {
        waitForOthers(sql);
        if (hasShop(sql, url.schema())) {
            schema.missing(sql).forEach(migration -> {
                intent.expectToBringForward(migration.version());
                take(sql, migration);
            });
        } else if (intent.mayMake()) {
            makeTables(sql);
        } else {
            throw new StoreFailure(StoreFailure.Kind.NO_SHOP, "there is no shop at %s".formatted(url.said()));
        }
    }

    /** Makes empty records as a part of what is under way; fails when there is a shop. */
    void make(Sql sql) {
        waitForOthers(sql);
        if (hasShop(sql, url.schema())) {
            throw new StoreFailure(
                    StoreFailure.Kind.SHOP_EXISTS, "there is a shop at %s already".formatted(url.said()));
        }
        makeTables(sql);
    }

    private void waitForOthers(Sql sql) {
        sql.findNumber(ALONE, "shedboard " + url.schema());
    }

    private void makeTables(Sql sql) {
        if (sql.findNumber(HAS_SCHEMA, url.schema()).isEmpty()) {
            sql.run("CREATE SCHEMA " + url.schema());
        }
        schema.all().forEach(migration -> take(sql, migration));
    }

    private void take(Sql sql, Migration migration) {
        migration.statements().stream().map(DatabaseSteps::byCodePoint).forEach(sql::run);
        schema.note(sql, migration);
    }

    /** A database sorts words as its country does, and not as the file and the program do, unless a column says otherwise. */
    private static String byCodePoint(String statement) {
        return statement.replaceAll("\\bVARCHAR\\b(\\(\\d+\\))?", "$0 COLLATE \"C\"");
    }
}
