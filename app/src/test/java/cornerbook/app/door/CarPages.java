package cornerbook.app.door;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.bench.Question;
import cornerbook.app.bench.Questions;
import cornerbook.app.desk.asked.Slot;
import cornerbook.app.desk.link.BenchLinks;
import cornerbook.app.desk.link.CarLinks;
import cornerbook.app.desk.link.VisitLinks;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Reading;
import java.net.http.HttpRequest.BodyPublishers;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Every page of a car, and what is typed into them. */
final class CarPages {
    private static final JsonMapper JSON = new JsonMapper();

    private final ServedShop shop;

    CarPages(ServedShop shop) {
        this.shop = shop;
    }

    /** Addresses of the pages of a car; of its visits those of one. */
    static List<String> addresses(CarHistory car, String visitId) {
        var id = car.vehicle().id();
        var addresses = new ArrayList<>(List.of("/", CarLinks.car(id), CarLinks.carData(id), CarLinks.newVisit(id)));
        Questions.ALL.stream().map(Question::name).forEach(name -> addresses.add(BenchLinks.bench(name, id)));
        addresses.addAll(List.of(
                VisitLinks.visit(visitId),
                VisitLinks.findings(visitId),
                VisitLinks.plan(visitId),
                VisitLinks.burnish(visitId)));
        car.sets().stream()
                .flatMap(set -> set.wheels().stream())
                .limit(1)
                .forEach(wheel -> addresses.add(CarLinks.wheel(wheel.tag())));
        addresses.addAll(List.of(VisitLinks.bay(visitId) + "/sheet.json", VisitLinks.bay(visitId) + "/state.json"));
        return addresses;
    }

    /** Every page answers, and none says that the program has failed. */
    void assertAnswer(CarHistory car, String visitId, String as) throws Exception {
        for (var address : addresses(car, visitId)) {
            assertAnswers(address, as);
        }
    }

    void assertAnswers(String address, String as) throws Exception {
        assertThat(shop.get(address).statusCode())
                .as("%s after %s", address, as)
                .isLessThan(500);
    }

    /** Whether a form was taken; no form may bring the program to fail. */
    static boolean accepted(int status) {
        assertThat(status).isLessThan(500);
        return status == 303;
    }

    /**
     * Types one reading into the form of the desk, where a reading may stand already.
     *
     * @return whether it was stored
     */
    boolean typeAtDesk(String visitId, Slot slot, String text) throws Exception {
        var shown = slot.findIn(shop.visit(visitId));
        var fields = new HashMap<>(Map.of("form", UUID.randomUUID().toString(), slot.key(), text));
        shown.ifPresent(reading -> {
            fields.put("was." + slot.key(), reading.id());
            fields.put("reason." + slot.key(), "A slip, read again");
        });
        var answer = shop.post(VisitLinks.visit(visitId), fields);
        if (answer.statusCode() == 422 && answer.body().contains("name=\"again\"")) {
            var asked = answer.body().replaceFirst("(?s).*name=\"again\" value=\"([^\"]*)\".*", "$1");
            fields.put("again", asked);
            return accepted(shop.post(VisitLinks.visit(visitId), fields).statusCode());
        }
        return accepted(answer.statusCode());
    }

    /** Sends one reading as a tablet does, which shows what stands there; gives what was answered. */
    String typeAtBay(String visitId, Slot slot, String text) throws Exception {
        var entry = entry("reading", slot.findIn(shop.visit(visitId)).orElse(null));
        entry.put("measure", slot.measure().name());
        entry.put("written", text);
        put(entry, "corner", slot.corner());
        put(entry, "wheel", slot.wheelTag());
        put(entry, "spot", slot.spot());
        return send(visitId, entry);
    }

    /** Sends one entry as a tablet does; gives what was answered. */
    String send(String visitId, Map<String, Object> entry) throws Exception {
        var request = shop.request(VisitLinks.bay(visitId) + "/entries")
                .POST(BodyPublishers.ofString(JSON.writeValueAsString(Map.of("entries", List.of(entry)))));
        var answer = shop.send(request);
        assertThat(answer.statusCode()).as("%s of %s", answer.body(), entry).isEqualTo(200);
        JsonNode json = JSON.readTree(answer.body());
        return json.path("answers").path(0).path("status").stringValue();
    }

    static Map<String, Object> entry(String kind, @Nullable Reading shown) {
        var entry = new HashMap<String, Object>(Map.of(
                "id", UUID.randomUUID().toString(), "kind", kind, "person", "Ada", "at", "2026-11-25T10:00:00Z"));
        put(entry, "shown", shown == null ? null : shown.id());
        return entry;
    }

    private static void put(Map<String, Object> entry, String name, @Nullable Object value) {
        if (value != null) {
            entry.put(name, value.toString());
        }
    }
}
