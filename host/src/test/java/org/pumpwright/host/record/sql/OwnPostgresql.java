package org.pumpwright.host.record.sql;

import java.io.File;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * A PostgreSQL server of the tests' own, on loopback, in a folder of its own, ended by its pid. The server refuses to run as
 * root; then it runs as the user that its package brings.
 */
public final class OwnPostgresql implements AutoCloseable {
    public static final String USER = "shop";

    private static final Path PROGRAMS = Path.of("/usr/lib/postgresql");
    private static final int SECONDS = 60;

    private final Path folder;
    private final ProcessBuilder starting;
    private Process server;
    private final int port;
    private int databases;

    private OwnPostgresql(Path folder, ProcessBuilder starting, int port) throws IOException {
        this.folder = folder;
        this.starting = starting;
        server = starting.start();
        this.port = port;
    }

    public static OwnPostgresql start() throws Exception {
        Path folder = Files.createTempDirectory("own-postgresql");
        String programs = programs();
        boolean root = "root".equals(System.getProperty("user.name"));
        if (root) {
            done(new ProcessBuilder("chown", "postgres", folder.toString()), folder);
        }
        List<String> as =
                root ? List.of("setpriv", "--reuid=postgres", "--regid=postgres", "--init-groups") : List.of();
        Path data = folder.resolve("data");
        done(
                command(
                        as,
                        programs + "/initdb",
                        "-D",
                        data.toString(),
                        "-U",
                        USER,
                        "-A",
                        "trust",
                        "-E",
                        "UTF8",
                        "--no-sync",
                        "--locale=C"),
                folder);
        int port = freePort();
        ProcessBuilder starting = command(
                        as,
                        programs + "/postgres",
                        "-D",
                        data.toString(),
                        "-p",
                        Integer.toString(port),
                        "-c",
                        "listen_addresses=127.0.0.1",
                        "-c",
                        "unix_socket_directories=" + folder)
                .directory(new File("/"))
                .redirectErrorStream(true)
                .redirectOutput(new File("/dev/null"));
        OwnPostgresql own = new OwnPostgresql(folder, starting, port);
        own.awaitReady();
        return own;
    }

    public String address(String database) {
        return "jdbc:postgresql://127.0.0.1:%d/%s".formatted(port, database);
    }

    public String newDatabase() throws SQLException {
        return newDatabase("template1");
    }

    /** A copy of a database that nobody uses. */
    public String newDatabase(String copied) throws SQLException {
        String name = "test" + databases++;
        try (Connection connection = DriverManager.getConnection(address("postgres"), USER, "")) {
            connection.createStatement().execute("CREATE DATABASE %s TEMPLATE %s".formatted(name, copied));
        }
        return name;
    }

    /** As when the power fails: all processes of this server end at once (SIGKILL); then it starts again and recovers. */
    void killAndStartAgain() throws Exception {
        kill();
        startAgain();
    }

    /** As when the power fails: all processes of this server end at once (SIGKILL). */
    public void kill() throws Exception {
        List<ProcessHandle> all = new ArrayList<>(List.of(server.toHandle()));
        server.descendants().forEach(all::add);
        all.forEach(ProcessHandle::destroyForcibly);
        for (ProcessHandle process : all) {
            process.onExit().get(SECONDS, TimeUnit.SECONDS);
        }
    }

    /** The server recovers. */
    public void startAgain() throws Exception {
        server = starting.start();
        awaitReady();
    }

    @Override
    public void close() throws Exception {
        server.destroy();
        if (!server.waitFor(SECONDS, TimeUnit.SECONDS)) {
            server.destroyForcibly();
        }
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(java.util.Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(file);
            }
        }
    }

    private void awaitReady() throws Exception {
        long until = System.nanoTime() + TimeUnit.SECONDS.toNanos(SECONDS);
        while (true) {
            try (Connection ready = DriverManager.getConnection(address("postgres"), USER, "")) {
                return;
            } catch (SQLException e) {
                if (!server.isAlive() || System.nanoTime() > until) {
                    throw new IOException("PostgreSQL did not start", e);
                }
                TimeUnit.MILLISECONDS.sleep(50);
            }
        }
    }

    private static String programs() throws IOException {
        if (!Files.isDirectory(PROGRAMS)) {
            throw new IOException("PostgreSQL is missing. Install with: sudo apt-get install -y postgresql");
        }
        try (Stream<Path> versions = Files.list(PROGRAMS)) {
            return versions.map(version -> version.resolve("bin"))
                    .filter(bin -> Files.isExecutable(bin.resolve("initdb")))
                    .max(java.util.Comparator.naturalOrder())
                    .orElseThrow(() ->
                            new IOException("PostgreSQL is missing. Install with: sudo apt-get install -y postgresql"))
                    .toString();
        }
    }

    private static ProcessBuilder command(List<String> as, String... words) {
        List<String> all = new ArrayList<>(as);
        all.addAll(List.of(words));
        return new ProcessBuilder(all);
    }

    private static void done(ProcessBuilder command, Path folder) throws Exception {
        Path log = Files.createTempFile("own-postgresql", ".log");
        Process process = command.directory(new File("/"))
                .redirectErrorStream(true)
                .redirectOutput(log.toFile())
                .start();
        if (process.waitFor() != 0) {
            throw new IOException("%s failed in %s: %s".formatted(command.command(), folder, Files.readString(log)));
        }
        Files.delete(log);
    }

    private static int freePort() throws IOException {
        try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return socket.getLocalPort();
        }
    }
}
