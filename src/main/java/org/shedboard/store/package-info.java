/**
 * The shop's records in one relational database: SQL, migrations, transactions, the journal, and what it takes so that a change
 * shown as saved survives a power cut and several terminals of one machine may work at once. {@code app} opens a store and reads
 * and changes through it; the store decides nothing about the shop and knows no day, screen or clock: the moment of a change is
 * handed in. Times are kept to the microsecond.
 *
 * <p>The database is a file of H2's in the shop's home, which one process owns and others reach through it, or a schema of a PostgreSQL
 * server, to which each terminal connects by itself. Which it is ends at the {@link org.shedboard.store.Door}.
 *
 * <p>Statements that read or write whole rows are made from the {@link org.shedboard.store.Table} that lists the columns, because
 * thirty tables times four statements by hand would only be four more places to forget a column; what chooses rows stands as text
 * with the class that maps them.
 */
package org.shedboard.store;
