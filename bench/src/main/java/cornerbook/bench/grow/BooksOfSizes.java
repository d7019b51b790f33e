package cornerbook.bench.grow;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Makes books of invented cars, one of each size, starts the program with each and asks for its pages in turn. Told are a table and
 * the slope of each line of it: the exponent b of the best line through the logarithms, so that ten times the cars take 10^b times
 * as long. Processor time is that of the program's process, with what it does in the background meanwhile.
 */
public final class BooksOfSizes {
    private static final Duration LONGEST = Duration.ofMinutes(60);
    private static final int ASKED = 40;
    private static final double NANOS_OF_MS = 1e6;
    private static final Pattern RESIDENT = Pattern.compile("VmRSS:\\s+(\\d+) kB");
    private static final double KB_OF_MB = 1024;
    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    private BooksOfSizes() {}

    /**
     * Runs it.
     *
     * @param arguments a folder for the books, which are kept there for the next run; the sizes, with commas between them; then the
     *     command of the program up to its verb
     */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        var folder = Path.of(arguments[0]);
        var sizes =
                Arrays.stream(arguments[1].split(",", -1)).map(Integer::valueOf).toList();
        var program = List.of(arguments).subList(2, arguments.length);
        var rows = new LinkedHashMap<String, List<Double>>();
        for (int size : sizes) {
            var book = folder.resolve("cars-" + size);
            make(program, book, size);
            measure(program, book, size)
                    .forEach((name, value) -> rows.computeIfAbsent(name, each -> new ArrayList<>())
                            .add(value));
        }
        System.out.println(
                "| | " + String.join(" | ", sizes.stream().map(String::valueOf).toList()) + " | slope |");
        System.out.println("|---|" + "---|".repeat(sizes.size() + 1));
        rows.forEach((name, values) -> System.out.println("| " + name + " | "
                + String.join(
                        " | ",
                        values.stream()
                                .map(value -> String.format(Locale.ROOT, "%.0f", value))
                                .toList())
                + String.format(Locale.ROOT, " | %.2f |", slope(sizes, values))));
    }

    /** The verb goes on where it was stopped; a book that is whole is started and ended. */
    private static void make(List<String> program, Path book, int cars) throws IOException, InterruptedException {
        var served = new Served(program, List.of("demo", "--cars", String.valueOf(cars)), book);
        served.end();
    }

    private static Map<String, Double> measure(List<String> program, Path book, int cars)
            throws IOException, InterruptedException {
        var told = new LinkedHashMap<String, Double>();
        var served = new Served(program, List.of("serve"), book);
        try {
            told.put("start with the first page, ms", served.startedMs);
            told.put("the same, processor ms", served.processorMs());
            var last = String.format(Locale.ROOT, "/cars/demo-%02d", cars);
            served.ask("/", told, "first page");
            served.ask("/?q=demo", told, "search");
            served.ask(last, told, "a car");
            told.put("resident, MB", served.residentMb());
        } finally {
            served.end();
        }
        return told;
    }

    /** Least squares through the logarithms. */
    private static double slope(List<Integer> sizes, List<Double> values) {
        double meanX = sizes.stream().mapToDouble(Math::log).average().orElseThrow();
        double meanY = values.stream().mapToDouble(Math::log).average().orElseThrow();
        double above = 0;
        double below = 0;
        for (int i = 0; i < sizes.size(); i++) {
            double x = Math.log(sizes.get(i)) - meanX;
            above += x * (Math.log(values.get(i)) - meanY);
            below += x * x;
        }
        return above / below;
    }

    /** The program with a book, from its start until it is ended. */
    private static final class Served {
        private final int port = freePort();
        private final Process process;
        final double startedMs;

        Served(List<String> program, List<String> verb, Path book) throws IOException, InterruptedException {
            long begun = System.nanoTime();
            this.process = new ProcessBuilder(
                            Stream.of(program, verb, List.of("--port", String.valueOf(port), "--data", book.toString()))
                                    .flatMap(List::stream)
                                    .toList())
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            while (!answers()) {
                if (!process.isAlive() || System.nanoTime() - begun > LONGEST.toNanos()) {
                    process.destroy();
                    throw new IllegalStateException("no answer with the book " + book);
                }
                Thread.sleep(20);
            }
            this.startedMs = (System.nanoTime() - begun) / NANOS_OF_MS;
        }

        private boolean answers() throws InterruptedException {
            try {
                return status("/") == 200;
            } catch (IOException e) {
                return false;
            }
        }

        private int status(String address) throws IOException, InterruptedException {
            return CLIENT.send(
                            HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + address))
                                    .build(),
                            HttpResponse.BodyHandlers.ofByteArray())
                    .statusCode();
        }

        void ask(String address, Map<String, Double> told, String name) throws IOException, InterruptedException {
            var times = new ArrayList<Double>();
            double before = processorMs();
            for (int i = 0; i < ASKED; i++) {
                long begun = System.nanoTime();
                int status = status(address);
                if (status != 200) {
                    throw new IllegalStateException(address + " is answered with " + status);
                }
                times.add((System.nanoTime() - begun) / NANOS_OF_MS);
            }
            double processor = (processorMs() - before) / ASKED;
            times.sort(null);
            told.put(name + ", median ms", times.get(ASKED / 2));
            told.put(name + ", longest ms", times.getLast());
            told.put(name + ", processor ms each", Math.max(processor, 1));
        }

        double processorMs() {
            return process.info().totalCpuDuration().orElseThrow().toNanos() / NANOS_OF_MS;
        }

        double residentMb() throws IOException {
            var found = RESIDENT.matcher(Files.readString(Path.of("/proc/" + process.pid() + "/status")));
            if (!found.find()) {
                throw new IllegalStateException("the system does not tell what is resident");
            }
            return Long.parseLong(found.group(1)) / KB_OF_MB;
        }

        void end() throws InterruptedException {
            process.destroy();
            process.waitFor();
        }

        private static int freePort() {
            try (var socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
                return socket.getLocalPort();
            } catch (IOException e) {
                throw new IllegalStateException("no port is free", e);
            }
        }
    }
}
