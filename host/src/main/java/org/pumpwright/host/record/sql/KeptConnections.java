package org.pumpwright.host.record.sql;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.locks.ReentrantLock;
import javax.sql.DataSource;
import org.jdbi.v3.core.ConnectionFactory;

/**
 * Connections to a file, kept open between uses. A pool that a server needs, which looks after broken connections and takes
 * long to load, is not needed here. Thread-safe.
 */
final class KeptConnections implements ConnectionFactory, AutoCloseable {
    private final DataSource source;
    private final Deque<Connection> idle = new ArrayDeque<>();
    private final ReentrantLock lock = new ReentrantLock();
    private boolean closed;

    KeptConnections(DataSource source) {
        this.source = source;
    }

    @Override
    public Connection openConnection() throws SQLException {
        lock.lock();
        try {
            Connection kept = idle.poll();
            if (kept != null) {
                return kept;
            }
        } finally {
            lock.unlock();
        }
        return source.getConnection();
    }

    /** Keeps a connection that is as it was when it was opened. */
    @Override
    public void closeConnection(Connection connection) throws SQLException {
        boolean sound = !connection.isClosed() && connection.getAutoCommit();
        lock.lock();
        try {
            if (sound && !closed) {
                idle.push(connection);
                return;
            }
        } finally {
            lock.unlock();
        }
        connection.close();
    }

    @Override
    public void close() {
        lock.lock();
        try {
            closed = true;
            while (!idle.isEmpty()) {
                close(idle.pop());
            }
        } finally {
            lock.unlock();
        }
    }

    private static void close(Connection connection) {
        try {
            connection.close();
        } catch (SQLException e) {
            // Everything acknowledged is on the disk; there is nothing left to be done with it.
            return;
        }
    }
}
