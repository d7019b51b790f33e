package cornerbook.bench.web;

import cornerbook.app.book.Book;
import cornerbook.app.demo.DemoShop;
import cornerbook.app.door.CornerbookServer;
import cornerbook.app.limits.LimitsFile;
import cornerbook.app.sheet.Letterhead;
import cornerbook.core.assess.Assessor;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/** Each page of the demonstration's book, asked of the server over the loopback and read to its end. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class PageBenchmark {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T10:00:00Z"), ZoneOffset.UTC);
    private static final int OK = 200;

    /** The findings hold the wheel plan. CAR and VISIT stand for a car whose visit is finished. */
    @Param({"/", "/cars/CAR", "/visits/VISIT", "/visits/VISIT/findings", "/visits/VISIT/handover.pdf"})
    private String page = "";

    private final HttpClient client = HttpClient.newHttpClient();

    @SuppressWarnings("NullAway.Init") // set before each run by JMH, as all below
    private Path folder;

    @SuppressWarnings("NullAway.Init")
    private Book book;

    @SuppressWarnings("NullAway.Init")
    private CornerbookServer server;

    @SuppressWarnings("NullAway.Init")
    private HttpRequest request;

    /** Fills a book and serves it. */
    @Setup
    public void serve() throws IOException {
        folder = Files.createTempDirectory("cornerbook-bench");
        book = Book.open(folder);
        var cars = DemoShop.histories(LocalDate.now(CLOCK));
        book.records().addCars(cars);
        server = CornerbookServer.start(
                book, new Assessor(LimitsFile.load()), 0, CLOCK, Letterhead.ofInvented(DemoShop.NAME));
        var car = cars.stream()
                .filter(candidate ->
                        !candidate.visits().getLast().card().workDone().isEmpty())
                .findFirst()
                .orElseThrow();
        var path = page.replace("CAR", car.vehicle().id())
                .replace("VISIT", car.visits().getLast().id());
        request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server.port() + path))
                .build();
    }

    /** Stops the server and removes its book. */
    @TearDown
    public void stop() throws IOException {
        server.stop();
        book.close();
        client.close();
        try (var files = Files.walk(folder)) {
            for (var file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }

    /** One page. */
    @Benchmark
    public byte[] fetch() throws IOException, InterruptedException {
        var response = client.send(request, BodyHandlers.ofByteArray());
        if (response.statusCode() != OK) {
            throw new IllegalStateException("%s answered %d".formatted(page, response.statusCode()));
        }
        return response.body();
    }
}
