package org.shedboard.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;

/** One connection on which transactions follow each other; every failure comes out as a {@link StoreFailure}. */
final class Sql implements AutoCloseable {
    /** So many rows of a long answer are fetched at a time, where the database can do so. */
    private static final int HELD_ROWS = 500;

    private final Connection connection;
    /** Statements once prepared, by text; they live as long as the connection and save a round trip each. */
    private final Map<String, PreparedStatement> prepared = new HashMap<>();

    private final List<Written> written = new ArrayList<>();

    /**
     * @param isolation of every transaction on it, a level of {@link Connection}
     */
    Sql(Connection connection, int isolation) {
        this.connection = connection;
        try {
            connection.setAutoCommit(false);
            connection.setTransactionIsolation(isolation);
        } catch (SQLException problem) {
            throw StoreFailure.from(problem);
        }
    }

    /** Does the work in one transaction: committed when it returns, rolled back when it throws. */
    synchronized <T> T inOne(Function<Sql, T> work) {
        try {
            return committed(work);
        } catch (SQLException problem) {
            throw StoreFailure.from(problem);
        }
    }

    private <T> T committed(Function<Sql, T> work) throws SQLException {
        written.clear();
        try {
            T result = work.apply(this);
            connection.commit();
            return result;
        } catch (SQLException | RuntimeException | Error problem) {
            rollBack(problem);
            throw problem;
        }
    }

    private void rollBack(Throwable reason) {
        try {
            connection.rollback();
        } catch (SQLException problem) {
            reason.addSuppressed(problem);
        }
    }

    /** Rows of a table; what follows the table's name chooses and orders them. */
    List<Cells> select(Table table, String rest, Object... arguments) {
        try (ResultSet rows = bound(table.select() + rest, arguments).executeQuery()) {
            List<Cells> all = new ArrayList<>();
            while (rows.next()) {
                all.add(Cells.read(table, rows));
            }
            return all;
        } catch (SQLException problem) {
            throw StoreFailure.from(problem);
        }
    }

    /** Hands over rows of a table one by one; what follows the table's name chooses and orders them. */
    void each(Table table, String rest, Consumer<Cells> work) {
        try (PreparedStatement statement = connection.prepareStatement(table.select() + rest)) {
            statement.setFetchSize(HELD_ROWS);
            try (ResultSet rows = statement.executeQuery()) {
                while (rows.next()) {
                    work.accept(Cells.read(table, rows));
                }
            }
        } catch (SQLException problem) {
            throw StoreFailure.from(problem);
        }
    }

    /** The first column of the first row as a whole number; empty when there is no row or nothing in it. */
    Optional<Long> findNumber(String text, Object... arguments) {
        try (ResultSet rows = bound(text, arguments).executeQuery()) {
            if (!rows.next()) {
                return Optional.empty();
            }
            long number = rows.getLong(1);
            return rows.wasNull() ? Optional.empty() : Optional.of(number);
        } catch (SQLException problem) {
            throw StoreFailure.from(problem);
        }
    }

    /** The only column of the only row, which is a moment. */
    Instant moment(String text) {
        try (ResultSet rows = bound(text).executeQuery()) {
            rows.next();
            return rows.getObject(1, OffsetDateTime.class).toInstant();
        } catch (SQLException problem) {
            throw StoreFailure.from(problem);
        }
    }

    /** The first column of each row. */
    List<String> texts(String text, Object... arguments) {
        try (ResultSet rows = bound(text, arguments).executeQuery()) {
            List<String> all = new ArrayList<>();
            while (rows.next()) {
                all.add(rows.getString(1));
            }
            return all;
        } catch (SQLException problem) {
            throw StoreFailure.from(problem);
        }
    }

    /** Adds rows. */
    void insert(Table table, List<Cells> rows) {
        write(Written.Kind.ADDED, table.insert(), table.insertOrder(), rows);
    }

    /** Changes rows that are there to what these hold. */
    void change(Table table, List<Cells> rows) {
        write(Written.Kind.CHANGED, table.update(), table.updateOrder(), rows);
    }

    void delete(Table table, List<Cells> rows) {
        write(Written.Kind.GONE, table.delete(), table.key(), rows);
    }

    private void write(Written.Kind kind, String text, List<String> order, List<Cells> rows) {
        batch(text, order, rows);
        rows.forEach(row -> written.add(new Written(kind, row)));
    }

    /** What was added, changed and deleted in this transaction, in order. */
    List<Written> written() {
        return List.copyOf(written);
    }

    /** Does to one row what was done to it before. */
    void redo(Written again) {
        Table table = again.row().table();
        List<Cells> row = List.of(again.row());
        switch (again.kind()) {
            case ADDED -> batch(table.insert(), table.insertOrder(), row);
            case CHANGED -> batch(table.update(), table.updateOrder(), row);
            case GONE -> batch(table.delete(), table.key(), row);
        }
    }

    /** Runs one statement for each row, with the row's cells in this order as its parameters. */
    void batch(String text, List<String> order, List<Cells> rows) {
        if (rows.isEmpty()) {
            return;
        }
        try {
            PreparedStatement statement = prepare(text);
            try {
                for (Cells row : rows) {
                    row.bind(statement, order);
                    statement.addBatch();
                }
                statement.executeBatch();
            } finally {
                statement.clearBatch();
            }
        } catch (SQLException problem) {
            throw StoreFailure.from(problem);
        }
    }

    /** Runs one statement that changes rows. */
    void update(String text, Object... arguments) {
        try {
            bound(text, arguments).executeUpdate();
        } catch (SQLException problem) {
            throw StoreFailure.from(problem);
        }
    }

    /** Runs a statement that has no parameters and is not asked again. */
    void run(String text) {
        try (Statement statement = connection.createStatement()) {
            statement.execute(text);
        } catch (SQLException problem) {
            throw StoreFailure.from(problem);
        }
    }

    private PreparedStatement bound(String text, Object... arguments) throws SQLException {
        PreparedStatement statement = prepare(text);
        for (int i = 0; i < arguments.length; i++) {
            statement.setObject(i + 1, asBound(arguments[i]));
        }
        return statement;
    }

    private Object asBound(Object argument) throws SQLException {
        if (argument instanceof Collection<?> keys) {
            boolean areDates = !keys.isEmpty() && keys.stream().allMatch(LocalDate.class::isInstance);
            return connection.createArrayOf(areDates ? "date" : "varchar", keys.toArray());
        }
        return argument instanceof Instant instant ? instant.atOffset(ZoneOffset.UTC) : argument;
    }

    private PreparedStatement prepare(String text) throws SQLException {
        PreparedStatement known = prepared.get(text);
        if (known == null) {
            known = connection.prepareStatement(text);
            prepared.put(text, known);
        }
        known.clearParameters();
        return known;
    }

    /** Ends the connection; one that broke has ended already. */
    @Override
    public void close() {
        try {
            connection.close();
        } catch (SQLException problem) {
            StoreFailure failure = StoreFailure.from(problem);
            if (!failure.is(StoreFailure.Kind.BROKEN)) {
                throw failure;
            }
        }
    }
}
