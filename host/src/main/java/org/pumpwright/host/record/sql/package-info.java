/**
 * Keeps entries in a database by SQL: a file of SQLite, or PostgreSQL where several stands and a desk share. The only
 * package that knows a database. May use the ledger, JDBC and the libraries around it.
 */
@NullMarked
package org.pumpwright.host.record.sql;

import org.jspecify.annotations.NullMarked;
