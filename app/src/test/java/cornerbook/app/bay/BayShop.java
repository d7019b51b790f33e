package cornerbook.app.bay;

import cornerbook.app.book.Book;
import cornerbook.app.demo.DemoShop;
import cornerbook.app.limits.LimitsFile;
import cornerbook.app.web.CornerbookServer;
import cornerbook.core.visit.Assessor;
import cornerbook.core.visit.CarHistory;
import cornerbook.core.visit.Reading;
import cornerbook.core.visit.Visit;
import java.io.IOException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The invented shop with its server, which can be killed and started again at the same address. */
final class BayShop implements AutoCloseable {
    static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    static final JsonMapper JSON = new JsonMapper();

    final Book book;
    private final int port;
    private final HttpClient client = HttpClient.newHttpClient();
    private CornerbookServer server;

    /** With these cars only. */
    BayShop(Path folder, List<CarHistory> cars) {
        book = Book.open(folder);
        book.addAll(cars);
        port = freePort();
        server = serve();
    }

    static List<CarHistory> cars() {
        return DemoShop.histories(TODAY);
    }

    /** A car of today whose visit has nothing read yet, and which has a stored set of the season to come. */
    static CarHistory untouched(String vehicleId) {
        var car = cars().stream()
                .filter(history -> history.vehicle().id().equals(vehicleId))
                .findFirst()
                .orElseThrow();
        var visits = new java.util.ArrayList<>(car.visits());
        var today = visits.removeLast();
        visits.add(today.withReadings(List.of()).withLeftOn(Map.of()));
        return new CarHistory(car.vehicle(), car.customer(), car.sets(), visits);
    }

    private CornerbookServer serve() {
        Clock clock = Clock.fixed(TODAY.atTime(LocalTime.NOON).toInstant(ZoneOffset.UTC), ZoneOffset.UTC);
        return CornerbookServer.start(book, new Assessor(LimitsFile.load()), port, clock, "", new BayRoom());
    }

    void kill() {
        server.stop();
    }

    void restart() {
        server = serve();
    }

    String address(String path) {
        return "http://127.0.0.1:" + port + path;
    }

    List<Reading> readings(String visitId) {
        return visit(visitId).readings();
    }

    Visit visit(String visitId) {
        return book.findHistoryOfVisit(visitId).orElseThrow().getVisit(visitId);
    }

    HttpResponse<String> post(String visitId, Object entries, String... headers) throws Exception {
        var request = HttpRequest.newBuilder(URI.create(address("/bay/visits/" + visitId + "/entries")))
                .POST(BodyPublishers.ofString(JSON.writeValueAsString(Map.of("entries", entries))));
        for (int i = 0; i < headers.length; i += 2) {
            request.header(headers[i], headers[i + 1]);
        }
        return client.send(request.build(), BodyHandlers.ofString());
    }

    JsonNode get(String path) throws Exception {
        var answer =
                client.send(HttpRequest.newBuilder(URI.create(address(path))).build(), BodyHandlers.ofString());
        return JSON.readTree(answer.body());
    }

    @Override
    public void close() {
        server.stop();
        book.close();
    }

    private static int freePort() {
        try (var probe = new ServerSocket(0)) {
            return probe.getLocalPort();
        } catch (IOException e) {
            throw new IllegalStateException("no port is free", e);
        }
    }
}
