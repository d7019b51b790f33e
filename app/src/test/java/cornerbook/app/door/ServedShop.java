package cornerbook.app.door;

import cornerbook.app.book.Book;
import cornerbook.app.demo.DemoShop;
import cornerbook.app.desk.Room;
import cornerbook.app.limits.LimitsFile;
import cornerbook.app.sheet.Letterhead;
import cornerbook.core.assess.Assessor;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Visit;
import java.io.IOException;
import java.net.BindException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** A book of invented cars behind a server on this machine, which can be killed and started again at the same address. */
public final class ServedShop implements AutoCloseable {
    /** The day that the invented shop has today. */
    public static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    public static final Clock CLOCK =
            Clock.fixed(TODAY.atTime(LocalTime.NOON).toInstant(ZoneOffset.UTC), ZoneOffset.UTC);

    private static final List<CarHistory> CARS = DemoShop.histories(TODAY);

    private final Book book;
    private final int port = freePort();
    private final Door door;
    private final Supplier<Room[]> rooms;
    private final Assessor assessor;
    private final HttpClient client = HttpClient.newHttpClient();
    private CornerbookServer server;

    /** With these cars only; its rooms are made anew at each start. */
    public ServedShop(Path folder, List<CarHistory> cars, Supplier<Room[]> rooms) {
        this(folder, cars, rooms, (String) null);
    }

    /** The same, judged by this assessor. */
    ServedShop(Path folder, List<CarHistory> cars, Supplier<Room[]> rooms, Assessor assessor) {
        this(folder, cars, rooms, null, assessor);
    }

    /**
     * The same in the shop's network.
     *
     * @param address under which tablets reach it, null when there are none
     */
    public ServedShop(Path folder, List<CarHistory> cars, Supplier<Room[]> rooms, @Nullable String address) {
        this(folder, cars, rooms, address, new Assessor(LimitsFile.load()));
    }

    private ServedShop(
            Path folder, List<CarHistory> cars, Supplier<Room[]> rooms, @Nullable String address, Assessor assessor) {
        this.rooms = rooms;
        this.assessor = assessor;
        this.door = new Door(port, address, null, null);
        WrittenBooks.place(folder, cars);
        book = Book.open(folder);
        server = serve();
    }

    /** With these cars and the pages of the desk only. */
    public ServedShop(Path folder, List<CarHistory> cars) {
        this(folder, cars, () -> new Room[0]);
    }

    public static List<CarHistory> cars() {
        return CARS;
    }

    public static CarHistory car(String vehicleId) {
        return cars().stream()
                .filter(history -> history.vehicle().id().equals(vehicleId))
                .findFirst()
                .orElseThrow();
    }

    private CornerbookServer serve() {
        return CornerbookServer.start(book, assessor, door, CLOCK, Letterhead.ofInvented(DemoShop.NAME), rooms.get());
    }

    public void kill() {
        server.stop();
    }

    public void restart() {
        server = serve();
    }

    public Book book() {
        return book;
    }

    /** Waits until the background has judged what is old. */
    public void waitUntilJudged() throws InterruptedException {
        for (int i = 0; i < 2400 && !book.verdicts().listOld(1).isEmpty(); i++) {
            Thread.sleep(50);
        }
    }

    public int port() {
        return port;
    }

    public Visit visit(String visitId) {
        return book.visits().find(visitId).orElseThrow();
    }

    public List<Reading> readings(String visitId) {
        return visit(visitId).readings();
    }

    public String address(String path) {
        return "http://127.0.0.1:" + port + path;
    }

    public HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create(address(path)));
    }

    public HttpResponse<String> send(HttpRequest.Builder request) throws IOException, InterruptedException {
        return client.send(request.build(), BodyHandlers.ofString());
    }

    /** Headers are name and value in turn. */
    public HttpResponse<String> get(String path, String... headers) throws IOException, InterruptedException {
        var request = request(path);
        return send(headers.length == 0 ? request : request.headers(headers));
    }

    public byte[] getBytes(String path) throws IOException, InterruptedException {
        return client.send(request(path).build(), BodyHandlers.ofByteArray()).body();
    }

    /** Sends a form; headers are name and value in turn. */
    public HttpResponse<String> post(String path, Map<String, String> fields, String... headers)
            throws IOException, InterruptedException {
        return send(form(request(path), fields, headers));
    }

    static HttpRequest.Builder form(HttpRequest.Builder request, Map<String, String> fields, String... headers) {
        var body = fields.entrySet().stream()
                .map(field -> encode(field.getKey()) + "=" + encode(field.getValue()))
                .collect(Collectors.joining("&"));
        request.header("Content-Type", "application/x-www-form-urlencoded").POST(BodyPublishers.ofString(body));
        return headers.length == 0 ? request : request.headers(headers);
    }

    static String encode(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    @Override
    public void close() {
        server.stop();
        book.close();
    }

    /** A free port whose successor is free too. */
    public static int twoFreePorts() throws IOException {
        while (true) {
            try (var first = new ServerSocket(0);
                    var second = new ServerSocket(first.getLocalPort() + 1)) {
                return second.getLocalPort() - 1;
            } catch (BindException | IllegalArgumentException e) {
                // The one after it is taken, or there is none.
            }
        }
    }

    private static int freePort() {
        try (var probe = new ServerSocket(0)) {
            return probe.getLocalPort();
        } catch (IOException e) {
            throw new IllegalStateException("no port is free", e);
        }
    }
}
