package cornerbook.app.door;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import cornerbook.app.book.Book;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.asked.Slot;
import cornerbook.app.desk.link.CarLinks;
import cornerbook.app.desk.link.VisitLinks;
import cornerbook.app.desk.plan.PlanRules;
import cornerbook.app.limits.LimitsFile;
import cornerbook.app.request.Told;
import cornerbook.app.sheet.Letterhead;
import cornerbook.core.assess.Assessor;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Customer;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.VehicleDetails;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.wheelplan.Rule;
import java.net.InetAddress;
import java.net.Socket;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PagesTest {
    @AutoClose
    private ServedShop shop;

    private CarHistory car;
    private String visitId;
    private Book book;

    @BeforeEach
    void start(@TempDir Path folder) {
        var cars = ServedShop.cars();
        // A car whose latest visit is of today and whose wheels have not left yet.
        var open = cars.stream()
                .filter(history -> history.visits().getLast().date().equals(ServedShop.TODAY)
                        && history.visits().getLast().leftOn().isEmpty())
                .findFirst()
                .orElseThrow();
        car = new CarHistory(
                open.vehicle(),
                new Customer(open.customer().id(), "<script>alert(1)</script> & Sons", null, null),
                open.sets(),
                open.visits());
        visitId = car.visits().getLast().id();
        shop = new ServedShop(folder, List.of(car));
        book = shop.book();
    }

    @Test
    void everyPageAnswersWithWhatItIsFor() throws Exception {
        assertThat(shop.get("/").body())
                .contains(
                        "Today, 25 Nov 2026",
                        car.vehicle().name(),
                        car.vehicle().plate(),
                        "Re-torques still open");
        assertThat(shop.get(CarLinks.car(car.vehicle().id())).body())
                .contains("Car from above", "Depth over distance", "cut across", "Specification");
        assertThat(shop.get(CarLinks.newVisit(car.vehicle().id())).body())
                .contains("New visit", "Odometer", "Technician");
        assertThat(shop.get(VisitLinks.visit(visitId)).body())
                .contains("Tread outer", "Wheels leaving on", "Pad movement inner");
        assertThat(shop.get(VisitLinks.findings(visitId)).body()).contains("Why", "Source:", "Hand-over sheet");
        var sheet = shop.get(VisitLinks.handover(visitId));
        assertThat(sheet.headers().firstValue("Content-Type")).contains("application/pdf");
        assertThat(sheet.body()).startsWith("%PDF");
    }

    @Test
    void planSaysWhoMovesWhatItGainsAndWhy() throws Exception {
        var plan = new Assessor(LimitsFile.load()).plan(car, visitId).orElseThrow();
        var page = shop.get(VisitLinks.plan(visitId)).body();
        assertThat(page)
                .contains(
                        "Car from above, front up: wheels move",
                        "Seasons to come",
                        Told.amount(plan.plan().distanceKm(), "km"),
                        Told.amount(plan.plan().gains().getFirst().likelyKm(), "km"),
                        Told.day(plan.seasons().dayAt(plan.plan().distanceKm())),
                        "Each wheel left where it ran",
                        "The rules and what they cost",
                        "common practice, no source",
                        "New tyres",
                        "odometer history",
                        "the proven best of all sequences");
        for (var path : List.of(
                VisitLinks.visit(visitId),
                VisitLinks.findings(visitId),
                CarLinks.car(car.vehicle().id()))) {
            assertThat(shop.get(path).body()).contains("href=\"" + VisitLinks.plan(visitId) + "\"");
        }
    }

    @Test
    void planWithoutARuleSaysSoAndPrintsNoTags() throws Exception {
        var page = shop.get(PlanRules.planWithout(visitId, Set.of(Rule.SAME_AXLE)));
        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.body())
                .contains("This plan leaves out", "Nothing is stored", "left out, as asked", "Plan with it")
                .doesNotContain(VisitLinks.tags(visitId));
        assertThat(shop.get(VisitLinks.plan(visitId)).body())
                .contains(PlanRules.planWithout(visitId, Set.of(Rule.SAME_AXLE)));
        says(
                shop.get(VisitLinks.plan(visitId) + "?without=gravity"),
                400,
                "without \"gravity\", expected one of directional");
    }

    @Test
    void planPageOfAVisitWithoutOneSaysWhatIsMissing() throws Exception {
        var bare = new Visit("bare", ServedShop.TODAY, 10, Map.of(), Map.of(), List.of());
        var like = car.vehicle();
        var vehicle = new Vehicle(
                "bare",
                "Nothing (invented)",
                "QX 0001",
                null,
                like.drive(),
                like.electric(),
                like.jurisdiction(),
                like.front(),
                like.rear(),
                like.fastener(),
                like.battery(),
                null,
                VehicleDetails.NOT_KNOWN);
        book.records()
                .addCar(new CarHistory(
                        vehicle, new Customer("bare", "Nobody (invented)", null, null), List.of(), List.of(bare)));
        assertThat(shop.get(VisitLinks.plan("bare")).body())
                .contains("There is no plan: it needs a set of four wheels");
        says(shop.get(VisitLinks.tags("bare")), 404, "there are no wheel tags");
    }

    @Test
    void tagsComeForTheRollAndForA4() throws Exception {
        for (var address : List.of(VisitLinks.tags(visitId), VisitLinks.tagsOnA4(visitId))) {
            var tags = shop.get(address);
            assertThat(tags.headers().firstValue("Content-Type")).contains("application/pdf");
            assertThat(tags.body()).startsWith("%PDF");
        }
    }

    @Test
    void tagsOfASetAVisitAndADayComeOnLabelPaper() throws Exception {
        var wheel = ServedShop.encode(car.sets().getFirst().wheels().getFirst().tag());
        var day = car.visits().getLast().date();
        for (var which : List.of("wheel=" + wheel, "visit=" + ServedShop.encode(visitId), "day=" + day)) {
            var tags = shop.get("/wheel-tags.pdf?paper=A4_3_BY_8&first=5&" + which);
            assertThat(tags.headers().firstValue("Content-Type")).as(which).contains("application/pdf");
        }
        says(shop.get("/wheel-tags.pdf?paper=A4_3_BY_8&day=soon"), 422, "\"soon\" is no day");
        says(shop.get("/wheel-tags.pdf?paper=A4_3_BY_8&day=1999-01-01"), 404, "There is no wheel to be tagged");
        says(shop.get("/wheel-tags.pdf?paper=none&day=" + day), 422, "no label paper");
    }

    @Test
    void everyAnswerKeepsTheBrowserToThisProgram() throws Exception {
        var page = shop.get("/");
        assertThat(page.headers().firstValue("Content-Security-Policy").orElseThrow())
                .contains("default-src 'none'", "frame-ancestors 'none'");
        assertThat(page.headers().firstValue("Cache-Control")).contains("no-store");
        assertThat(page.body()).doesNotContain("style=", "onclick", "//fonts", "https://");
    }

    @Test
    void nameOfCustomerIsNeverMarkup() throws Exception {
        for (var path : List.of(
                "/",
                "/?q=Sons",
                CarLinks.car(car.vehicle().id()),
                CarLinks.newVisit(car.vehicle().id()))) {
            assertThat(shop.get(path).body())
                    .contains("&lt;script&gt;alert(1)&lt;/script&gt; &amp; Sons")
                    .doesNotContain("<script>alert");
        }
        assertThat(shop.get("/?q=" + ServedShop.encode("\"><script>x")).body()).doesNotContain("<script>x");
    }

    @Test
    void plateIsFoundWhateverStandsBetweenItsLetters() throws Exception {
        var typed = car.vehicle().plate().toLowerCase(java.util.Locale.ROOT).replace(" ", "-");
        assertThat(shop.get("/?q=" + ServedShop.encode(typed)).body())
                .contains(CarLinks.car(car.vehicle().id()));
        assertThat(shop.get("/?q=nobody").body()).contains("No car matches");
    }

    @Test
    void whatIsNotThereAndWhatIsNotADateAreSaidPlainly() throws Exception {
        assertThat(shop.get("/nowhere")).satisfies(answer -> says(answer, 404, "There is no page at this address."));
        assertThat(shop.get("/cars/none"))
                .satisfies(answer -> says(answer, 404, "The book has no car with this address."));
        assertThat(shop.get("/visits/none")).satisfies(answer -> says(answer, 404, "The book has no visit"));
        assertThat(shop.get("/?date=soon")).satisfies(answer -> says(answer, 400, "expected one as 2026-11-25"));
    }

    @Test
    void typedReadingIsStoredOnceWithItsUnit() throws Exception {
        var slot = emptySlot();
        var fields = new LinkedHashMap<>(Map.of("form", UUID.randomUUID().toString(), slot.key(), "24 °C"));
        assertThat(shop.post(VisitLinks.visit(visitId), fields).statusCode()).isEqualTo(303);
        assertThat(shop.post(VisitLinks.visit(visitId), fields).statusCode()).isEqualTo(303);
        assertThat(readings().stream().filter(reading -> reading.measure() == slot.measure()))
                .singleElement()
                .satisfies(reading -> {
                    assertThat(reading.value()).isEqualTo(24);
                    assertThat(reading.asWritten()).isEqualTo("24 °C");
                });
    }

    @Test
    void badReadingComesBackBesideItsFieldAndNothingIsStored() throws Exception {
        var before = readings();
        var slot = emptySlot();
        var depth = new Slot(
                Measure.TREAD_DEPTH,
                Corner.LF,
                car.getVisit(visitId).arrivedOn().get(Corner.LF),
                Spot.INNER);
        var answer = shop.post(
                VisitLinks.visit(visitId),
                Map.of(
                        "form",
                        "f",
                        slot.key(),
                        "21 °C",
                        depth.key(),
                        "-3 mm",
                        "reason." + depth.key(),
                        "typed wrongly"));
        says(answer, 422, "expected 0 to 25\u00a0mm");
        assertThat(answer.body()).contains("value=\"21 °C\"", "value=\"-3 mm\"", "aria-invalid=\"true\"");
        says(
                shop.post(VisitLinks.visit(visitId), Map.of("form", "f", slot.key(), "12 parsecs")),
                422,
                "nothing was stored");
        says(
                shop.post(
                        VisitLinks.visit(visitId),
                        Map.of("form", "f", depth.key(), "15", "reason." + depth.key(), "again")),
                422,
                "deeper than new");
        assertThat(readings()).isEqualTo(before);
    }

    @Test
    void incredibleDepthIsAskedAboutAndStoredOnceItStands() throws Exception {
        var before = readings();
        var slot = emptySlot();
        var fields = new LinkedHashMap<>(
                Map.of("form", "f", slot.key(), "21", rearDepth().key(), "2.1"));
        fields.put("reason." + rearDepth().key(), "gauge was not zeroed");
        var answer = shop.post(VisitLinks.visit(visitId), fields);
        says(answer, 422, "LR centre groove reads 2.1\u00a0mm, expected");
        assertThat(answer.body())
                .contains("Read again: these readings stand", "value=\"21\"", "value=\"2.1\"")
                .doesNotContain("aria-invalid");
        assertThat(readings()).isEqualTo(before);
        fields.put("again", between(answer.body(), "name=\"again\" value=\"", "\""));
        fields.put(rearDepth().key(), "2.0");
        says(shop.post(VisitLinks.visit(visitId), fields), 422, "reads 2.0\u00a0mm");
        fields.put(rearDepth().key(), "2.1");
        assertThat(shop.post(VisitLinks.visit(visitId), fields).statusCode()).isEqualTo(303);
        assertThat(readings())
                .hasSize(before.size() + 2)
                .extracting(Reading::asWritten)
                .contains("2.1 mm");
        assertThat(shop.get(VisitLinks.findings(visitId)).body())
                .contains("Read again?", "LR centre groove reads 2.1\u00a0mm");
        assertThat(shop.get(VisitLinks.visit(visitId)).body()).doesNotContain("these readings stand");
    }

    @Test
    void incredibleDepthIsAskedAboutWhenTheWheelsAreRecordedToo() throws Exception {
        var before = readings();
        var fields = new LinkedHashMap<>(Map.of("form", "f", rearDepth().key(), "2.1"));
        fields.put("reason." + rearDepth().key(), "gauge was not zeroed");
        car.getVisit(visitId).arrivedOn().forEach((corner, tag) -> fields.put(corner.name(), tag));
        var answer = shop.post(VisitLinks.leaving(visitId), fields);
        says(answer, 422, "LR centre groove reads 2.1\u00a0mm, expected");
        assertThat(readings()).isEqualTo(before);
        fields.put("again", between(answer.body(), "name=\"again\" value=\"", "\""));
        assertThat(shop.post(VisitLinks.leaving(visitId), fields).statusCode()).isEqualTo(303);
        assertThat(readings()).hasSize(before.size() + 1);
    }

    private Slot rearDepth() {
        return new Slot(
                Measure.TREAD_DEPTH,
                Corner.LR,
                car.getVisit(visitId).arrivedOn().get(Corner.LR),
                Spot.CENTRE);
    }

    private static String between(String text, String before, String after) {
        int start = text.indexOf(before) + before.length();
        return text.substring(start, text.indexOf(after, start));
    }

    @Test
    void storedReadingChangesOnlyWithAReason() throws Exception {
        var slot = emptySlot();
        shop.post(VisitLinks.visit(visitId), Map.of("form", "a", slot.key(), "21"));
        var first = readings().getLast();
        var change = new LinkedHashMap<>(Map.of("form", "b", slot.key(), "22", "was." + slot.key(), first.id()));
        says(shop.post(VisitLinks.visit(visitId), change), 422, "21 °C is stored; say why it changes.");
        says(
                shop.post(
                        VisitLinks.visit(visitId),
                        Map.of("form", "b", slot.key(), "", "was." + slot.key(), first.id())),
                422,
                "A reading is never deleted");
        change.put("reason." + slot.key(), "thermometer in the sun");
        assertThat(shop.post(VisitLinks.visit(visitId), change).statusCode()).isEqualTo(303);
        assertThat(readings()).contains(first);
        assertThat(readings().getLast()).satisfies(reading -> {
            assertThat(reading.value()).isEqualTo(22);
            assertThat(reading.corrects()).isEqualTo(first.id());
            assertThat(reading.reason()).isEqualTo("thermometer in the sun");
        });
        assertThat(shop.get(VisitLinks.visit(visitId)).body()).contains("value=\"22\"");
    }

    @Test
    void untouchedFormStoresNothing() throws Exception {
        var before = readings();
        var fields = new LinkedHashMap<String, String>();
        for (var reading : before) {
            var slot = new Slot(reading.measure(), reading.corner(), reading.wheelTag(), reading.spot());
            var scale = reading.measure().scale();
            fields.put(slot.key(), scale == null ? reading.asWritten() : scale.wordOf(reading.value()));
            fields.put("was." + slot.key(), reading.id());
        }
        assertThat(shop.post(VisitLinks.visit(visitId), fields)
                        .headers()
                        .firstValue("Location")
                        .orElseThrow())
                .endsWith("?saved=0");
        assertThat(readings()).isEqualTo(before);
    }

    @Test
    void wheelsLeaveOnlyOnFourDifferentCornersAndOpenTheRetorque() throws Exception {
        var stored = car.sets().stream()
                .filter(set -> set.wheels().stream()
                        .noneMatch(wheel -> car.getVisit(visitId).arrivedOn().containsValue(wheel.tag())))
                .findFirst()
                .orElseThrow();
        var fields = new LinkedHashMap<String, String>();
        for (var corner : Corner.values()) {
            fields.put(corner.name(), stored.wheels().get(corner.ordinal()).tag());
        }
        assertThat(shop.get(VisitLinks.visit(visitId) + "?set=" + stored.id()).body())
                .contains("Filled in as the wheel plan has the");
        var twice = new LinkedHashMap<>(fields);
        twice.put("RF", fields.getOrDefault("LF", ""));
        says(shop.post(VisitLinks.leaving(visitId), twice), 422, "at once");
        says(shop.post(VisitLinks.leaving(visitId), Map.of("LF", fields.getOrDefault("LF", ""))), 422, "four wheels");
        assertThat(shop.post(VisitLinks.leaving(visitId), fields).statusCode()).isEqualTo(303);
        assertThat(shop.get(VisitLinks.visit(visitId)).body()).contains("Pressure set", "Record the re-torque");
        assertThat(shop.get("/").body()).contains(car.vehicle().name(), "#retorque");
        says(
                shop.post(VisitLinks.retorque(visitId), Map.of("date", "2026-12-24", "odometer", "1", "torque", "100")),
                422,
                "lies in the future");
        assertThat(book.retorques().listOpen()).hasSize(1);
    }

    @Test
    void visitIsOpenedOnceAndAnOdometerThatRunsBackwardsIsAskedAbout() throws Exception {
        var fields = new LinkedHashMap<>(Map.of(
                "visit",
                UUID.randomUUID().toString(),
                "date",
                "2026-11-25",
                "odometer",
                "1 km",
                "technician",
                "Ansel"));
        var path = CarLinks.newVisit(car.vehicle().id());
        says(shop.post(path, fields), 422, "Yes, it is 1");
        fields.put("odometer", "many");
        says(shop.post(path, fields), 422, "value=\"many\"");
        fields.put("odometer", (car.visits().getLast().odometerKm() + 10) + " km");
        assertThat(shop.post(path, fields).statusCode()).isEqualTo(303);
        assertThat(shop.post(path, fields).statusCode()).isEqualTo(303);
        assertThat(book.cars().find(car.vehicle().id()).orElseThrow().visits())
                .hasSize(car.visits().size() + 1);
    }

    @Test
    void changeFromAnotherSiteIsRefused() throws Exception {
        var before = readings();
        var fields = Map.of("form", "f", emptySlot().key(), "21");
        says(shop.post(VisitLinks.visit(visitId), fields, "Origin", "http://elsewhere.example"), 403, "another site");
        says(shop.post(VisitLinks.visit(visitId), fields, "Origin", "null"), 403, "another site");
        says(shop.post(VisitLinks.visit(visitId), fields, "Sec-Fetch-Site", "cross-site"), 403, "another site");
        assertThat(readings()).isEqualTo(before);
    }

    @Test
    void hostThatIsNotThisMachineIsRefused() throws Exception {
        try (var socket = new Socket(InetAddress.getLoopbackAddress(), shop.port())) {
            socket.getOutputStream()
                    .write("GET / HTTP/1.1\r\nHost: rebound.example\r\nConnection: close\r\n\r\n"
                            .getBytes(StandardCharsets.US_ASCII));
            assertThat(new String(socket.getInputStream().readNBytes(12), StandardCharsets.US_ASCII))
                    .isEqualTo("HTTP/1.1 403");
        }
    }

    @Test
    void formThatIsFarTooLargeIsRefused() throws Exception {
        var answer = shop.post(VisitLinks.visit(visitId), Map.of("form", "x".repeat(Form.LARGEST_BYTES)));
        assertThat(answer.statusCode()).isEqualTo(413);
    }

    @Test
    void portInUseIsOneSentence() {
        assertThatThrownBy(() -> CornerbookServer.start(
                        book, new Assessor(LimitsFile.load()), shop.port(), ServedShop.CLOCK, Letterhead.of("")))
                .isInstanceOfSatisfying(
                        DoorException.class,
                        refused -> assertThat(refused.said())
                                .isEqualTo(new DoorSaid.PortInUse(String.valueOf(shop.port()))));
    }

    private Slot emptySlot() {
        return new Slot(Measure.BATTERY_TEMPERATURE, null, null, null);
    }

    private List<Reading> readings() {
        return shop.readings(visitId);
    }

    private static void says(HttpResponse<String> answer, int status, String words) {
        assertThat(answer.statusCode()).isEqualTo(status);
        assertThat(answer.body()).contains(words);
    }
}
