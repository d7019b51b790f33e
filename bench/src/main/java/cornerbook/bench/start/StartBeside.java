package cornerbook.bench.start;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.IntFunction;
import java.util.stream.Stream;

/**
 * Starts the bare server, the program with a book that is there, and the program with a new book, in turn and in one run, each until
 * its first page is there. Told are medians of the time by the clock and of the processor time of the process, and how many times
 * the bare server's they are: on a busy machine the latter says more.
 */
public final class StartBeside {
    private static final Duration LONGEST = Duration.ofSeconds(60);
    private static final double NANOS_OF_MS = 1e6;
    private static final byte[] ANSWER = "HTTP/1.1 200".getBytes(StandardCharsets.US_ASCII);

    private StartBeside() {}

    /**
     * Runs it.
     *
     * @param arguments runs of each; a folder with a book; then the command of the program up to its verb
     */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        int runs = Integer.parseInt(arguments[0]);
        var book = Path.of(arguments[1]);
        var program = List.of(arguments).subList(2, arguments.length);
        var bare = new Times("bare server of the JDK");
        var kept = new Times("the program with its book");
        var fresh = new Times("the program with a new book");
        for (int run = 0; run < runs; run++) {
            bare.add(start(port -> List.of(
                    program.getFirst(),
                    "-XX:+UseSerialGC",
                    "-cp",
                    System.getProperty("java.class.path"),
                    BareServer.class.getName(),
                    String.valueOf(port))));
            kept.add(start(port -> serve(program, book, port)));
            var folder = Files.createTempDirectory("start-beside");
            try {
                fresh.add(start(port -> serve(program, folder.resolve("book"), port)));
            } finally {
                remove(folder);
            }
        }
        for (var times : List.of(bare, kept, fresh)) {
            System.out.println(times.against(bare));
        }
    }

    private static List<String> serve(List<String> program, Path book, int port) {
        return Stream.concat(
                        program.stream(), Stream.of("serve", "--port", String.valueOf(port), "--data", book.toString()))
                .toList();
    }

    /** What a start took. */
    private record Took(double clockMs, double processorMs) {}

    private static final class Times {
        private final String name;
        private final List<Took> all = new ArrayList<>();

        Times(String name) {
            this.name = name;
        }

        void add(Took took) {
            all.add(took);
        }

        double clockMs() {
            return median(all.stream().map(Took::clockMs).toList());
        }

        double processorMs() {
            return median(all.stream().map(Took::processorMs).toList());
        }

        String against(Times bare) {
            return String.format(
                    Locale.ROOT,
                    "%-28s %6.0f ms by the clock (%.1f times), %6.0f ms of processor time (%.1f times), medians of %d",
                    name,
                    clockMs(),
                    clockMs() / bare.clockMs(),
                    processorMs(),
                    processorMs() / bare.processorMs(),
                    all.size());
        }

        private static double median(List<Double> values) {
            return values.stream().sorted().skip(values.size() / 2).findFirst().orElseThrow();
        }
    }

    private static Took start(IntFunction<List<String>> command) throws IOException, InterruptedException {
        int port = freePort();
        long begun = System.nanoTime();
        var process = new ProcessBuilder(command.apply(port))
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        try {
            while (!answers(port)) {
                if (!process.isAlive() || System.nanoTime() - begun > LONGEST.toNanos()) {
                    throw new IllegalStateException("no answer from " + command.apply(port));
                }
                Thread.sleep(2);
            }
            double clock = (System.nanoTime() - begun) / NANOS_OF_MS;
            double processor = process.info().totalCpuDuration().orElseThrow().toNanos() / NANOS_OF_MS;
            return new Took(clock, processor);
        } finally {
            process.destroy();
            process.waitFor();
        }
    }

    /** Whether the first page comes: it is rendered before its first byte is sent. */
    private static boolean answers(int port) {
        try (var socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
            socket.getOutputStream()
                    .write("GET / HTTP/1.1\r\nHost: 127.0.0.1:%s\r\nConnection: close\r\n\r\n"
                            .formatted(port)
                            .getBytes(StandardCharsets.US_ASCII));
            return Arrays.equals(socket.getInputStream().readNBytes(ANSWER.length), ANSWER);
        } catch (IOException e) {
            return false;
        }
    }

    private static int freePort() throws IOException {
        try (var socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return socket.getLocalPort();
        }
    }

    private static void remove(Path folder) throws IOException {
        try (var files = Files.walk(folder)) {
            for (var file : files.sorted((one, other) -> other.compareTo(one)).toList()) {
                Files.delete(file);
            }
        }
    }
}
