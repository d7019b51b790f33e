package cornerbook.app.request;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.book.EmptyBook;
import cornerbook.app.cli.Main;
import cornerbook.app.door.ServedShop;
import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.nio.channels.ServerSocketChannel;
import java.nio.channels.SocketChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.spi.ToolProvider;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Connections that bring no request take nobody else's place. */
@Timeout(120)
class ConnectionsTest {
    private static final int DESCRIPTORS = 256;

    private Instant now = Instant.parse("2026-11-25T10:00:00Z");
    private final Clock clock = new Settable();
    private final List<SocketChannel> far = new ArrayList<>();
    private ServerSocketChannel server;

    private final class Settable extends Clock {
        @Override
        public ZoneOffset getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            return now;
        }
    }

    @BeforeEach
    void listen() throws IOException {
        server = ServerSocketChannel.open().bind(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0));
    }

    @AfterEach
    void close() throws IOException {
        for (var each : far) {
            each.close();
        }
        server.close();
    }

    private SocketChannel connect() throws IOException {
        far.add(SocketChannel.open(server.getLocalAddress()));
        return server.accept();
    }

    @Test
    void oneThatWaitsLongestGivesWay() throws IOException {
        var connections = new Connections(2, 2, clock);
        var first = connect();
        var second = connect();
        var third = connect();
        connections.add(first);
        connections.add(second);
        connections.add(third);
        assertThat(List.of(first.isOpen(), second.isOpen(), third.isOpen())).containsExactly(false, true, true);
    }

    @Test
    void oneThatBringsNoRequestInTimeIsClosed() throws IOException {
        var connections = new Connections(10, 10, clock);
        var early = connect();
        connections.add(early);
        now = now.plus(Connections.WAITS_AT_MOST);
        connections.closeLate();
        assertThat(early.isOpen()).isTrue();
        var late = connect();
        connections.add(late);
        now = now.plusSeconds(1);
        connections.closeLate();
        assertThat(early.isOpen()).isFalse();
        assertThat(late.isOpen()).isTrue();
    }

    /** As a browser meets it: the server as people start it, with few descriptors, and many who say half a sentence. */
    @Test
    void serverWithFewDescriptorsAnswersWhileManyConnectionsAreHalfOpenAndAfter(@TempDir Path folder) throws Exception {
        var half = new ArrayList<Socket>();
        try (var process = serve(folder)) {
            for (int i = 0; i < 400; i++) {
                var socket = new Socket(InetAddress.getLoopbackAddress(), process.port);
                socket.getOutputStream().write("GET / HTTP/1.1\r\nHo".getBytes(StandardCharsets.US_ASCII));
                half.add(socket);
            }
            assertThat(page(process.port)).as("while they are open").contains("Today");
            for (var each : half) {
                each.close();
            }
            assertThat(page(process.port)).as("after they closed").contains("Today");
        } finally {
            for (var each : half) {
                each.close();
            }
        }
    }

    /**
     * The limit falls below what is open, so that the system refuses the next connection, and rises again. A request that
     * comes in pieces makes its thread wait, and for the first that waits the runtime opens a descriptor: one that it does not
     * get then it never asks for again, and every later request is answered with nothing.
     */
    @Test
    void serverThatWasRefusedDescriptorsListensAgain(@TempDir Path folder) throws Exception {
        try (var process = serve(folder)) {
            process.limitDescriptors(10);
            // Linux takes the descriptor for the next connection when it begins to wait (accept4): one may still be let
            // in, and is told why it gets no page, or closed with its listener.
            var answer = "not asked";
            while (!answer.isEmpty()) {
                answer = inPiecesOrNothing(process.port);
                assertThat(answer).matches("(?s)|HTTP/1.1 503 .*<html.*");
            }
            process.limitDescriptors(DESCRIPTORS);
            process.awaitPage();
            assertThat(inPieces(process.port)).contains("Today");
        }
    }

    private static ServerProcess serve(Path folder) throws Exception {
        EmptyBook.open(folder).close();
        var port = ServedShop.twoFreePorts();
        var started = new ProcessBuilder(
                        "sh",
                        "-c",
                        "ulimit -Sn %d; exec \"$0\" \"$@\"".formatted(DESCRIPTORS),
                        ProcessHandle.current().info().command().orElseThrow(),
                        "-XX:-MaxFDLimit",
                        "--enable-native-access=ALL-UNNAMED",
                        "-cp",
                        installed(folder.resolve("program")),
                        Main.class.getName(),
                        "serve",
                        "--data",
                        folder.toString(),
                        "--port",
                        String.valueOf(port))
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("server.out").toFile())
                .start();
        var server = new ServerProcess(started, port);
        server.awaitPage();
        return server;
    }

    /**
     * The class path with archives in place of folders, as the program is installed: a class in an open archive needs no
     * descriptor, and one that could not be read once is missing for as long as the process runs (JVMS 5.4.3).
     */
    private static String installed(Path folder) throws IOException {
        Files.createDirectory(folder);
        var jar = ToolProvider.findFirst("jar").orElseThrow();
        var places = new ArrayList<String>();
        for (var place : System.getProperty("java.class.path").split(File.pathSeparator, -1)) {
            if (Files.isDirectory(Path.of(place))) {
                var archive = folder.resolve(places.size() + ".jar").toString();
                assertThat(jar.run(
                                System.out,
                                System.err,
                                "--create",
                                "--no-compress",
                                "--file",
                                archive,
                                "-C",
                                place,
                                "."))
                        .isZero();
                places.add(archive);
            } else {
                places.add(place);
            }
        }
        return String.join(File.pathSeparator, places);
    }

    private record ServerProcess(Process process, int port) implements AutoCloseable {
        void limitDescriptors(int most) throws Exception {
            assertThat(new ProcessBuilder("prlimit", "--pid", String.valueOf(process.pid()), "--nofile=" + most + ":")
                            .start()
                            .waitFor())
                    .isZero();
        }

        /** Until the first page is there as it should be. */
        void awaitPage() throws Exception {
            while (process.isAlive()) {
                try {
                    if (page(port).contains("Today")) {
                        return;
                    }
                } catch (IOException e) {
                    // Nobody listens yet, or again.
                }
                Thread.sleep(100);
            }
            throw new IllegalStateException("the server ended");
        }

        @Override
        public void close() {
            process.destroy();
            process.onExit().orTimeout(30, TimeUnit.SECONDS).join();
        }
    }

    private static String page(int port) throws IOException {
        return answer(port, request(port));
    }

    private static String inPieces(int port) throws IOException {
        return answer(port, request(port).substring(0, 8), request(port).substring(8));
    }

    private static String inPiecesOrNothing(int port) {
        try {
            return inPieces(port);
        } catch (IOException e) {
            return "";
        }
    }

    private static String request(int port) {
        return "GET / HTTP/1.1\r\nHost: 127.0.0.1:" + port + "\r\n\r\n";
    }

    private static String answer(int port, String... pieces) throws IOException {
        try (var socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
            socket.setSoTimeout(20_000);
            for (int i = 0; i < pieces.length; i++) {
                if (i > 0) {
                    LockSupport.parkNanos(Duration.ofMillis(300).toNanos());
                }
                socket.getOutputStream().write(pieces[i].getBytes(StandardCharsets.US_ASCII));
            }
            var answered = new ByteArrayOutputStream();
            var part = new byte[8192];
            for (int read; (read = socket.getInputStream().read(part)) >= 0; ) {
                answered.write(part, 0, read);
                if (answered.toString(StandardCharsets.UTF_8).contains("</html>")) {
                    break;
                }
            }
            return answered.toString(StandardCharsets.UTF_8);
        }
    }
}
