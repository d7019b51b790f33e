package cornerbook.app.book;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** A PostgreSQL server of the test's own, in a folder of its own, as Debian's package {@code postgresql} installs it. */
final class PostgresqlCluster {
    private static final Path INSTALLED = Path.of("/usr/lib/postgresql");

    private final Path programs;
    private final Path folder;
    private final int port;

    private PostgresqlCluster(Path programs, Path folder, int port) {
        this.programs = programs;
        this.folder = folder;
        this.port = port;
    }

    /** The folder of the newest server that is installed; empty when there is none. */
    static Optional<Path> findPrograms() throws IOException {
        if (!Files.isDirectory(INSTALLED)) {
            return Optional.empty();
        }
        try (var versions = Files.list(INSTALLED)) {
            return versions.filter(version -> Files.isExecutable(version.resolve("bin/initdb")))
                    .max(Comparator.comparingInt(
                            version -> Integer.parseInt(version.getFileName().toString())))
                    .map(version -> version.resolve("bin"));
        }
    }

    static PostgresqlCluster start(Path programs) throws IOException, InterruptedException {
        var cluster = make(programs);
        cluster.launch();
        return cluster;
    }

    /** One that keeps all that is written in an archive as well, by which it is brought back to any moment. */
    static PostgresqlCluster startArchiving(Path programs) throws IOException, InterruptedException {
        var cluster = make(programs);
        run("mkdir", cluster.archive());
        cluster.set("archive_mode = on");
        cluster.set("archive_command = 'cp %%p %s/%%f'".formatted(cluster.archive()));
        cluster.launch();
        return cluster;
    }

    private static PostgresqlCluster make(Path programs) throws IOException, InterruptedException {
        var cluster = new PostgresqlCluster(programs, folder(), freePort());
        run(cluster.program("initdb"), "-D", cluster.data(), "-U", "shop", "-A", "trust", "-E", "UTF8", "--locale=C");
        return cluster;
    }

    private static Path folder() throws IOException, InterruptedException {
        return Path.of(run("mktemp", "-d", "/tmp/cornerbook-postgresql.XXXXXX").strip());
    }

    private static int freePort() throws IOException {
        try (var free = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return free.getLocalPort();
        }
    }

    private void launch() throws IOException, InterruptedException {
        run(
                program("pg_ctl"),
                "-D",
                data(),
                "-l",
                folder.resolve("log").toString(),
                "-o",
                "-p %d -k %s -c listen_addresses=127.0.0.1 -c fsync=off".formatted(port, folder),
                "-w",
                "start");
    }

    /** A copy of this one as it is now, which does not run; with options of {@code pg_basebackup}. */
    PostgresqlCluster baseBackup(String... options) throws IOException, InterruptedException {
        var copy = new PostgresqlCluster(programs, folder(), freePort());
        var command = new ArrayList<>(List.of(
                program("pg_basebackup"),
                "-h",
                "127.0.0.1",
                "-p",
                String.valueOf(port),
                "-U",
                "shop",
                "-D",
                copy.data(),
                "-c",
                "fast"));
        command.addAll(List.of(options));
        run(command.toArray(String[]::new));
        return copy;
    }

    /** Starts this base backup with what was archived after it, up to a moment. */
    void restore(PostgresqlCluster from, String moment) throws IOException, InterruptedException {
        set("restore_command = 'cp %s/%%f %%p'".formatted(from.archive()));
        set("recovery_target_time = '%s'".formatted(moment));
        set("recovery_target_action = promote");
        run("touch", data() + "/recovery.signal");
        launch();
    }

    /** Starts one that follows this one; from then on nothing is acknowledged that the follower has not got. */
    PostgresqlCluster follow() throws IOException, InterruptedException {
        var follower = baseBackup("-R", "-X", "stream");
        follower.launch();
        psql("alter system set synchronous_standby_names = '*'");
        run(program("pg_ctl"), "-D", data(), "reload");
        return follower;
    }

    /** Makes a follower the one that is written to. */
    void promote() throws IOException, InterruptedException {
        run(program("pg_ctl"), "-D", data(), "-w", "promote");
    }

    /** As if its machine lost power: nothing is finished first. */
    void kill() throws IOException, InterruptedException {
        run(program("pg_ctl"), "-D", data(), "-m", "immediate", "-w", "stop");
    }

    private String archive() {
        return folder.resolve("archive").toString();
    }

    private void set(String setting) throws IOException, InterruptedException {
        run("sed", "-i", "$ a\\" + setting, data() + "/postgresql.conf");
    }

    /** Makes an empty database; gives its address. */
    String database(String name) throws IOException, InterruptedException {
        run(program("createdb"), "-h", "127.0.0.1", "-p", String.valueOf(port), "-U", "shop", name);
        return address(name);
    }

    /** Makes a database that is a copy of another, which nobody uses meanwhile; gives its address. */
    String copy(String template, String name) throws IOException, InterruptedException {
        run(program("createdb"), "-h", "127.0.0.1", "-p", String.valueOf(port), "-U", "shop", "-T", template, name);
        return address(name);
    }

    String address(String name) {
        return "jdbc:postgresql://127.0.0.1:%d/%s?user=shop".formatted(port, name);
    }

    /** Makes an empty database that asks its owner for this password; gives its address, without it. */
    String databaseOf(String user, String password) throws IOException, InterruptedException {
        var rules = folder.resolve("data/pg_hba.conf");
        run("sed", "-i", "1i host all %s 127.0.0.1/32 scram-sha-256".formatted(user), rules.toString());
        run(program("pg_ctl"), "-D", data(), "reload");
        psql("create role %s login password '%s'".formatted(user, password));
        psql("create database %s owner %s".formatted(user, user));
        return "jdbc:postgresql://127.0.0.1:%d/%s?user=%s".formatted(port, user, user);
    }

    int port() {
        return port;
    }

    /** Runs a statement as the one who may do everything; gives what it answers, without titles. */
    String psql(String statement) throws IOException, InterruptedException {
        return run(
                        program("psql"),
                        "-h",
                        "127.0.0.1",
                        "-p",
                        String.valueOf(port),
                        "-U",
                        "shop",
                        "-d",
                        "postgres",
                        "-At",
                        "-c",
                        statement)
                .strip();
    }

    void stop() throws IOException, InterruptedException {
        kill();
        remove();
    }

    /** Of one that does not run. */
    void remove() throws IOException, InterruptedException {
        run("rm", "-rf", folder.toString());
    }

    private String program(String name) {
        return programs.resolve(name).toString();
    }

    private String data() {
        return folder.resolve("data").toString();
    }

    /** Runs a program and gives what it says; as a user without privileges when this one is root, for PostgreSQL asks so. */
    private static String run(String... command) throws IOException, InterruptedException {
        var whole = new ArrayList<String>();
        if (System.getProperty("user.name").equals("root")) {
            whole.addAll(List.of("runuser", "-u", "postgres", "--"));
        }
        whole.addAll(List.of(command));
        var said = Files.createTempFile("said", null);
        try {
            int exitCode = new ProcessBuilder(whole)
                    .directory(Path.of("/tmp").toFile())
                    .redirectErrorStream(true)
                    .redirectOutput(said.toFile())
                    .start()
                    .waitFor();
            var words = Files.readString(said);
            if (exitCode != 0) {
                throw new IOException("%s ended with %d: %s".formatted(whole, exitCode, words));
            }
            return words;
        } finally {
            Files.delete(said);
        }
    }
}
