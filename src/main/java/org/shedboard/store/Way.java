package org.shedboard.store;

import java.io.IOException;
import java.net.Socket;
import java.sql.Connection;
import java.sql.SQLException;

/** How a guest comes to the owner of the file. */
interface Way {
    /** A line to whoever makes commits durable; the first thing to come over it is the greeting. */
    Socket line() throws IOException;

    Connection database() throws SQLException;
}
