/**
 * Files as people keep them, to and from values: the catalogue, a shop, its past visits. A file is read whole: either the value
 * comes out, or every fault in it with its place, and nothing half read. Knows no database and no screen; the text of a file is
 * handed in.
 */
package org.shedboard.files;
