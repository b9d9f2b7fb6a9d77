package org.shedboard.pack.lab;

import java.io.IOException;

/** One line of the table of targets: what is measured, what it is measured against, and how. */
interface Section {
    /** By which it is chosen on the command line. */
    String name();

    String what();

    String target();

    /** @param rows where what stands behind the line is written down */
    Reached measure(Laboratory lab, Rows rows) throws IOException, InterruptedException;
}
