package cornerbook.bench.bay;

import cornerbook.app.bay.BayRoom;
import cornerbook.app.book.Book;
import cornerbook.app.demo.DemoShop;
import cornerbook.app.door.CornerbookServer;
import cornerbook.app.limits.LimitsFile;
import cornerbook.app.sheet.Letterhead;
import cornerbook.core.assess.Assessor;
import cornerbook.core.car.CarHistory;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;

/**
 * Tablets that save readings into one book over HTTP, each at its own pace: what is timed is from sending to the answer
 * that says that the reading is on the disk. A tablet corrects its own reading again and again, on cars of its own choice.
 */
public final class TabletsOnOneBook {
    private static final List<String> CORNERS = List.of("LF", "RF", "LR", "RR");
    private static final List<String> MEASURES = List.of("DISC_LIP", "PISTON_RETURN");
    private static final int OK = 200;
    private static final int WARM = 3;
    private static final double MILLION = 1e6;

    private final HttpClient client = HttpClient.newHttpClient();
    private final String address;

    private TabletsOnOneBook(String address) {
        this.address = address;
    }

    /**
     * Prints median, 99th percentile and maximum.
     *
     * @param arguments tablets, readings of each, milliseconds between two readings of a tablet
     */
    public static void main(String[] arguments) throws Exception {
        int tablets = Integer.parseInt(arguments[0]);
        int readings = Integer.parseInt(arguments[1]);
        int paceMs = Integer.parseInt(arguments[2]);
        var folder = Files.createTempDirectory("cornerbook-bench");
        try (var book = Book.open(folder)) {
            var clock = Clock.systemUTC();
            var cars = DemoShop.histories(LocalDate.now(ZoneOffset.UTC));
            book.records().addCars(cars);
            var server = CornerbookServer.start(
                    book, new Assessor(LimitsFile.load()), 0, clock, Letterhead.of(""), new BayRoom());
            try {
                new TabletsOnOneBook("http://127.0.0.1:" + server.port()).run(cars, tablets, readings, paceMs);
            } finally {
                server.stop();
            }
        }
    }

    private void run(List<CarHistory> cars, int tablets, int readings, int paceMs) throws Exception {
        try (var executor = Executors.newVirtualThreadPerTaskExecutor()) {
            var runs = IntStream.range(0, tablets)
                    .mapToObj(tablet -> executor.submit(
                            () -> timesMs(cars.get(tablet % cars.size()), tablet / cars.size(), readings, paceMs)))
                    .toList();
            var times = new double[tablets * readings];
            for (int tablet = 0; tablet < tablets; tablet++) {
                System.arraycopy(runs.get(tablet).get(), 0, times, tablet * readings, readings);
            }
            Arrays.sort(times);
            System.out.printf(
                    "%d tablets, %d readings, one each %d ms: median %.1f ms, 99th percentile %.1f ms, most %.1f ms%n",
                    tablets,
                    times.length,
                    paceMs,
                    times[times.length / 2],
                    times[(int) (times.length * 0.99)],
                    times[times.length - 1]);
        }
    }

    private double[] timesMs(CarHistory car, int place, int readings, int paceMs)
            throws IOException, InterruptedException {
        var visitId = car.visits().getLast().id();
        var times = new double[readings];
        String shown = null;
        // Tablets do not start at one beat.
        Thread.sleep((long) (Math.random() * paceMs));
        for (int i = -WARM; i < readings; i++) {
            var id = UUID.randomUUID().toString();
            var body =
                    "{\"entries\":[{\"id\":\"%s\",\"kind\":\"reading\",\"measure\":\"%s\",\"corner\":\"%s\",\"written\":\"%.2f\",\"person\":\"Ada\",\"at\":\"2026-11-25T10:00:00Z\"%s}]}"
                            .formatted(
                                    id,
                                    MEASURES.get(place / CORNERS.size()),
                                    CORNERS.get(place % CORNERS.size()),
                                    1 + (i + WARM) / 100.0,
                                    shown == null ? "" : ",\"shown\":\"" + shown + "\"");
            long start = System.nanoTime();
            var answer = client.send(
                    HttpRequest.newBuilder(URI.create(address + "/bay/visits/" + visitId + "/entries"))
                            .POST(BodyPublishers.ofString(body))
                            .build(),
                    BodyHandlers.ofString());
            if (answer.statusCode() != OK || !answer.body().contains("\"stored\"")) {
                throw new IllegalStateException("not stored: " + answer.body());
            }
            if (i >= 0) {
                times[i] = (System.nanoTime() - start) / MILLION;
            }
            shown = id;
            Thread.sleep((long) (paceMs * (0.5 + Math.random())));
        }
        return times;
    }
}
