package cornerbook.app.bay;

import cornerbook.app.book.Book;
import cornerbook.app.desk.Room;
import cornerbook.app.door.ServedShop;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Visit;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The invented shop with its bay, as tablets meet it. */
final class BayShop implements AutoCloseable, CutVisit.Server {
    static final JsonMapper JSON = new JsonMapper();

    final Book book;
    private final ServedShop shop;

    /** With these cars only. */
    BayShop(Path folder, List<CarHistory> cars) {
        this(folder, cars, null);
    }

    /**
     * With these cars only.
     *
     * @param address under which tablets reach it, null when there are none
     */
    BayShop(Path folder, List<CarHistory> cars, @Nullable String address) {
        shop = new ServedShop(folder, cars, () -> new Room[] {new BayRoom()}, address);
        book = shop.book();
    }

    /** A car of today whose visit has nothing read yet, and which has a stored set of the season to come. */
    static CarHistory untouched(String vehicleId) {
        var car = ServedShop.car(vehicleId);
        var visits = new ArrayList<>(car.visits());
        var today = visits.removeLast();
        visits.add(today.withReadings(List.of()).withLeftOn(Map.of()));
        return new CarHistory(car.vehicle(), car.customer(), car.sets(), visits);
    }

    ServedShop served() {
        return shop;
    }

    void kill() {
        shop.kill();
    }

    @Override
    public void killWithin(int milliseconds) {
        kill();
    }

    @Override
    public void restart() {
        shop.restart();
    }

    @Override
    public String address(String path) {
        return shop.address(path);
    }

    List<Reading> readings(String visitId) {
        return shop.readings(visitId);
    }

    Visit visit(String visitId) {
        return shop.visit(visitId);
    }

    HttpResponse<String> post(String visitId, Object entries, String... headers) throws Exception {
        var request = shop.request("/bay/visits/" + visitId + "/entries")
                .POST(BodyPublishers.ofString(JSON.writeValueAsString(Map.of("entries", entries))));
        return shop.send(headers.length == 0 ? request : request.headers(headers));
    }

    /** A form of the desk. */
    HttpResponse<String> form(String path, Map<String, String> fields) throws Exception {
        return shop.post(path, fields);
    }

    JsonNode get(String path) throws Exception {
        return JSON.readTree(page(path));
    }

    String page(String path) throws Exception {
        return shop.get(path).body();
    }

    @Override
    public void close() {
        shop.close();
    }
}
