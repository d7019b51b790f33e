package cornerbook.app.bay;

import cornerbook.app.book.Book;
import cornerbook.app.cli.Main;
import cornerbook.app.door.JavaProcess;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Visit;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;

/** The server as people start it, in a process of its own, from the classes that the test was built with. */
final class ShopProcess implements AutoCloseable, CutVisit.Server {
    private static final Duration LOOKS_EVERY = Duration.ofMillis(100);

    private final Path folder;
    private final int port = freePort();
    private Process process;
    private Thread killer = new Thread(() -> {});

    /** With these cars only. */
    ShopProcess(Path folder, List<CarHistory> cars) {
        this.folder = folder;
        try (var book = Book.open(folder)) {
            book.records().addCars(cars);
        }
        process = start();
    }

    @Override
    public String address(String path) {
        return "http://127.0.0.1:" + port + path;
    }

    @Override
    public void killWithin(int milliseconds) {
        var victim = process;
        killer = Thread.startVirtualThread(() -> {
            sleep(Duration.ofMillis(milliseconds));
            victim.destroyForcibly();
        });
    }

    @Override
    public void restart() {
        end();
        process = start();
    }

    /** Asks it to stop, as the system and Ctrl+C do, and returns when it has ended. */
    void stop() {
        process.destroy();
        end();
    }

    /** What the visit is once the process has ended. */
    Visit closeAndRead(String visitId) {
        close();
        try (var book = Book.open(folder)) {
            return book.visits().find(visitId).orElseThrow();
        }
    }

    @Override
    public void close() {
        process.destroyForcibly();
        end();
    }

    private void end() {
        try {
            killer.join();
            process.waitFor();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted", e);
        }
    }

    private Process start() {
        try {
            var started = JavaProcess.of(
                            List.of(), Main.class, "serve", "--data", folder.toString(), "--port", String.valueOf(port))
                    .redirectErrorStream(true)
                    .redirectOutput(folder.resolve("server.log").toFile())
                    .start();
            while (!answers()) {
                if (!started.isAlive()) {
                    throw new IllegalStateException("the server did not start, see " + folder.resolve("server.log"));
                }
                sleep(LOOKS_EVERY);
            }
            return started;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private boolean answers() {
        try (var probe = new Socket(InetAddress.getLoopbackAddress(), port)) {
            return probe.isConnected();
        } catch (IOException e) {
            return false;
        }
    }

    private static void sleep(Duration time) {
        try {
            Thread.sleep(time);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static int freePort() {
        try (var probe = new ServerSocket(0)) {
            return probe.getLocalPort();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
