package cornerbook.app.door;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.component.VEvent;
import cornerbook.app.book.Book;
import cornerbook.app.book.EmptyBook;
import cornerbook.app.book.appointment.Appointment.Because;
import cornerbook.app.book.appointment.AppointmentState;
import cornerbook.app.book.appointment.Plan;
import cornerbook.app.book.store.BookFile;
import cornerbook.app.limits.LimitsFile;
import cornerbook.app.sheet.Letterhead;
import cornerbook.core.assess.Assessor;
import cornerbook.core.days.PlannedWork;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Calendars of strangers, behind a proxy of a shop whose tablets are paired. Cars and people are invented. */
class CalendarTest {
    private static final String CAR = "demo-03";
    private static final String OTHER_CAR = "demo-04";
    private static final LocalDate FRIDAY = ServedShop.TODAY.plusDays(2);
    private static final String OUTSIDE = "https://bay.example";
    private static final Logger LOG = Logger.getLogger(Refusals.class.getName());

    @TempDir
    private Path folder;

    private final HttpClient client = HttpClient.newHttpClient();
    private final List<String> log = new ArrayList<>();
    private final Handler toList = new ToList(log);
    private Book book;
    private CornerbookServer server;
    private String proxied;
    private String desk;

    @BeforeEach
    void open() throws IOException {
        LOG.setLevel(Level.INFO);
        LOG.addHandler(toList);
        book = EmptyBook.open(folder);
        book.records().addCars(List.of(ServedShop.car(CAR), ServedShop.car(OTHER_CAR)));
        book.devices().putPerson("Ines", "no hash");
        var port = ServedShop.twoFreePorts();
        var door = Door.behindProxy(port, null, URI.create(OUTSIDE));
        server = CornerbookServer.start(
                book, new Assessor(LimitsFile.load()), door, ServedShop.CLOCK, Letterhead.of(""));
        proxied = "http://127.0.0.1:" + port;
        desk = door.deskAddress(server.port());
    }

    @AfterEach
    void close() {
        server.stop();
        book.close();
        LOG.removeHandler(toList);
        LOG.setLevel(null);
    }

    @Test
    void onlyWhoKnowsTheSecretReads() throws Exception {
        assertThat(get("/calendar/" + "a".repeat(43) + ".ics").statusCode()).isEqualTo(404);
        var first = make("");
        var answer = get(first);
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.headers().firstValue("Content-Type")).hasValue("text/calendar; charset=utf-8");
        assertThat(answer.headers().firstValue("Cache-Control")).hasValue("no-store");
        for (var wrong :
                List.of(first.replace(".ics", ""), first.replace(".ics", "a.ics"), "/calendar/.ics", "/calendar/")) {
            assertThat(get(wrong).statusCode()).as(wrong).isEqualTo(404);
        }
        assertThat(get("/days").statusCode()).as("not paired").isEqualTo(401);
        assertThat(post(proxied, "/shop/hours/calendar", "").statusCode()).isEqualTo(401);

        var second = make("");
        assertThat(get(first).statusCode()).as("made anew").isEqualTo(404);
        assertThat(get(second).statusCode()).isEqualTo(200);
        var kept = book.calendars().list().getFirst().secretHash();
        assertThat(kept).as("no secret is in the book").doesNotContain(second.substring(10, 20));
        assertThat(post(desk, "/shop/hours/calendar/withdraw", "").statusCode()).isEqualTo(303);
        assertThat(get(second).statusCode()).as("withdrawn").isEqualTo(404);

        var ofInes = make("Ines");
        assertThat(get(ofInes).statusCode()).isEqualTo(200);
        book.devices().removePerson("Ines", ServedShop.CLOCK.instant());
        assertThat(get(ofInes).statusCode()).as("she has left").isEqualTo(404);
        assertThat(post(desk, "/shop/hours/calendar", "Ines").statusCode()).isEqualTo(422);
        assertThat(book.calendars().list()).isEmpty();

        server.stop();
        assertThat(log.stream()
                        .flatMap(line -> Pattern.compile("([0-9]+) unknown calendar")
                                .matcher(line)
                                .results())
                        .mapToInt(found -> Integer.parseInt(found.group(1)))
                        .sum())
                .as("refused")
                .isEqualTo(7);
    }

    @Test
    void aMovedAppointmentIsTheSameAndOneCalledOffIsCancelled() throws Exception {
        var calendar = make("");
        make("a", CAR, AppointmentState.ASKED, null);
        var asked = read(calendar).getFirst();
        assertThat(asked.getStatus().isTentative()).isTrue();
        assertThat(asked.getSequence().getValue()).isZero();
        assertThat(asked.getDateStart().getValue().toInstant()).isEqualTo("2026-11-27T09:30:00Z");

        var later = new Plan(FRIDAY.plusDays(4), null, PlannedWork.BRAKES, 90, null, null, "");
        book.appointments().change("b", "a", 0, later, because(), ServedShop.TODAY);
        book.appointments().confirm("c", "a", 1, because());
        assertThat(read(calendar)).singleElement().satisfies(moved -> {
            assertThat(moved.getUid()).isEqualTo(asked.getUid());
            assertThat(moved.getSequence().getValue()).isEqualTo(2);
            assertThat(moved.getStatus().isConfirmed()).isTrue();
            assertThat(moved.getDateStart().getValue().hasTime()).isFalse();
        });
        book.appointments().callOff("d", "a", 2, because());
        assertThat(read(calendar)).singleElement().satisfies(off -> {
            assertThat(off.getUid()).isEqualTo(asked.getUid());
            assertThat(off.getSequence().getValue()).isEqualTo(3);
            assertThat(off.getStatus().isCancelled()).isTrue();
        });
    }

    @Test
    void aPersonReadsWhatThatPersonIsToDoAndNobodyReadsOfTheCustomer() throws Exception {
        make("a", CAR, AppointmentState.BOOKED, "Ines");
        make("b", OTHER_CAR, AppointmentState.BOOKED, null);
        var ofShop = make("");
        assertThat(read(ofShop)).hasSize(2);
        assertThat(read(make("Ines")))
                .singleElement()
                .satisfies(event -> assertThat(event.getSummary().getValue())
                        .isEqualTo(ServedShop.car(CAR).vehicle().plate() + " wheels changed"));
        var text = get(ofShop).body().replace("\r\n ", "");
        for (var car : List.of(CAR, OTHER_CAR)) {
            var customer = ServedShop.car(car).customer();
            var vehicle = ServedShop.car(car).vehicle();
            assertThat(Stream.of(
                                    customer.id(),
                                    customer.name(),
                                    customer.phone(),
                                    customer.email(),
                                    vehicle.vin(),
                                    vehicle.id(),
                                    vehicle.name())
                            .filter(Objects::nonNull))
                    .hasSizeGreaterThan(4)
                    .allSatisfy(personal -> assertThat(text).doesNotContain(personal));
        }
        assertThat(text).doesNotContain("call her husband", "asked by telephone", "Ines");
    }

    @Test
    void aFaultTellsTheLogNoSecret() throws Exception {
        var calendar = make("");
        try (var file = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve(BookFile.NAME));
                var damage = file.createStatement()) {
            assertThat(damage.executeUpdate("update calendar_address set made_at = 'soon'"))
                    .isEqualTo(1);
        }
        var faults = Logger.getLogger("cornerbook");
        faults.addHandler(toList);
        try {
            assertThat(get(calendar).statusCode()).isEqualTo(500);
            assertThat(log)
                    .singleElement()
                    .satisfies(line -> assertThat(line).endsWith("while answering GET /calendar/"));
        } finally {
            faults.removeHandler(toList);
        }
    }

    private void make(String id, String car, AppointmentState state, @Nullable String worker) {
        var plan = new Plan(FRIDAY, LocalTime.of(9, 30), PlannedWork.WHEELS, 35, null, worker, "call her husband");
        book.appointments().make(id, car, state, plan, because(), ServedShop.TODAY);
    }

    private static Because because() {
        return new Because("asked by telephone", "Ines", ServedShop.CLOCK.instant());
    }

    /** The path behind an address that the desk makes. */
    private String make(String whose) throws Exception {
        var page = post(desk, "/shop/hours/calendar", whose).body();
        var shown = Pattern.compile(Pattern.quote(OUTSIDE) + "(/calendar/[A-Za-z0-9_-]{43}\\.ics)")
                .matcher(page);
        assertThat(shown.find()).isTrue();
        return shown.group(1);
    }

    private List<VEvent> read(String path) throws Exception {
        return Biweekly.parse(get(path).body()).first().getEvents();
    }

    private HttpResponse<String> get(String path) throws Exception {
        return client.send(HttpRequest.newBuilder(URI.create(proxied + path)).build(), BodyHandlers.ofString());
    }

    private HttpResponse<String> post(String base, String path, String whose) throws Exception {
        return client.send(
                ServedShop.form(HttpRequest.newBuilder(URI.create(base + path)), Map.of("whose", whose))
                        .build(),
                BodyHandlers.ofString());
    }

    /** Keeps what was logged. */
    private static final class ToList extends Handler {
        private final List<String> lines;

        ToList(List<String> lines) {
            this.lines = lines;
        }

        @Override
        public void publish(LogRecord line) {
            lines.add(line.getMessage());
        }

        @Override
        public void flush() {}

        @Override
        public void close() {}
    }
}
