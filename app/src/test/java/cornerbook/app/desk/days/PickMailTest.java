package cornerbook.app.desk.days;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.book.customer.ContactAnswer;
import cornerbook.app.desk.link.CustomerLinks;
import cornerbook.app.desk.link.DayLinks;
import cornerbook.app.door.ServedShop;
import cornerbook.app.mail.Delivery.Outcome;
import cornerbook.app.mail.LoopbackServer;
import cornerbook.app.mail.MailServer;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Customer;
import cornerbook.core.coming.Channel;
import cornerbook.core.coming.Purpose;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The address by which a day is picked goes out by a real server on this machine. Cars, people and addresses are invented. */
class PickMailTest {
    private static final String CAR = "demo-03";
    private static final Pattern SECRET = Pattern.compile("name=\"secret\" value=\"([^\"]+)\"");

    @AutoClose
    private final LoopbackServer loopback = LoopbackServer.open();

    @TempDir
    private Path folder;

    @AutoClose
    private ServedShop shop;

    @BeforeEach
    void open() {
        var car = ServedShop.car(CAR);
        var customer = car.customer();
        shop = new ServedShop(
                folder,
                List.of(new CarHistory(
                        car.vehicle(),
                        new Customer(customer.id(), customer.name(), customer.phone(), "one@example.org", "fr"),
                        car.sets(),
                        car.visits())));
    }

    private void useServer() {
        shop.book()
                .mails()
                .putServer(new MailServer(
                        LoopbackServer.HOST, loopback.port(), MailServer.Security.NONE, "shop@example.com", ""));
    }

    private String page() throws Exception {
        return shop.post(DayLinks.askDay(), Map.of("car", CAR, "work", "WHEELS"))
                .body();
    }

    private static String secretIn(String page) {
        var found = SECRET.matcher(page);
        assertThat(found.find()).isTrue();
        return found.group(1);
    }

    private int send(String id, String secret) throws Exception {
        return shop.post(DayLinks.mailDay(), Map.of("mail", id, "secret", secret))
                .statusCode();
    }

    @Test
    void theAddressIsSentOnceAndTheBookKeepsNoSecret() throws Exception {
        assertThat(page()).as("without a server").doesNotContain("name=\"secret\"");
        useServer();
        var secret = secretIn(page());
        var id = UUID.randomUUID().toString();
        assertThat(send(id, secret)).isEqualTo(303);
        assertThat(send(id, secret)).as("the same form again").isEqualTo(303);
        assertThat(loopback.read())
                .singleElement()
                .satisfies(mail -> assertThat(mail).contains("one@example.org", "Content-Language: fr"));

        assertThat(shop.book().mails().list(0, 10)).singleElement().satisfies(kept -> {
            assertThat(kept.last().outcome()).isEqualTo(Outcome.TAKEN);
            assertThat(kept.letter().text())
                    .startsWith("Bonjour " + ServedShop.car(CAR).customer().name())
                    .contains(DayLinks.PICK + "…", "Répondez ARRÊT");
        });
        assertThat(shop.get(CustomerLinks.sentMail()).body())
                .contains("one@example.org")
                .doesNotContain(secret);
        assertThat(shop.get(DayLinks.PICK + secret).statusCode()).isEqualTo(200);
        shop.close();
        try (var files = Files.walk(folder)) {
            for (var file : files.filter(Files::isRegularFile).toList()) {
                assertThat(new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1))
                        .as(file.toString())
                        .doesNotContain(secret);
            }
        }
    }

    @Test
    void whoDeclinedIsNotWrittenTo() throws Exception {
        useServer();
        var secret = secretIn(page());
        shop.book()
                .contacts()
                .add(
                        "no",
                        ServedShop.car(CAR).customer().id(),
                        List.of(new ContactAnswer(
                                Purpose.SEASON,
                                Channel.E_MAIL,
                                false,
                                "No e-mails",
                                "Ida",
                                ServedShop.CLOCK.instant())));
        assertThat(page()).doesNotContain("name=\"secret\"");
        assertThat(send(UUID.randomUUID().toString(), secret)).isEqualTo(409);
        assertThat(send(UUID.randomUUID().toString(), "unknown")).isEqualTo(404);
        assertThat(loopback.read()).isEmpty();
        assertThat(shop.book().mails().count()).isZero();
    }
}
