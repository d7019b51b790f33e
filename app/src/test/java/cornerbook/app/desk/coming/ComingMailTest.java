package cornerbook.app.desk.coming;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import cornerbook.app.book.coming.ComingCustomer;
import cornerbook.app.book.coming.ComingLedger.Days;
import cornerbook.app.book.customer.ContactAnswer;
import cornerbook.app.book.mail.KeptMail;
import cornerbook.app.book.visit.CallAnswer;
import cornerbook.app.desk.link.CustomerLinks;
import cornerbook.app.desk.link.ShopLinks;
import cornerbook.app.door.Chromium;
import cornerbook.app.door.ServedShop;
import cornerbook.app.mail.Delivery.Outcome;
import cornerbook.app.mail.LoopbackServer;
import cornerbook.app.mail.MailServer;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Customer;
import cornerbook.core.coming.Channel;
import cornerbook.core.coming.Purpose;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** E-mails to those who are to come back, to a real server on this machine. Cars, people and addresses are invented. */
class ComingMailTest {
    private static final Days DAYS = Days.until(Days.usualUntil(ServedShop.TODAY), ServedShop.TODAY);

    @RegisterExtension
    private final Chromium chromium = new Chromium();

    @AutoClose
    private final LoopbackServer loopback = LoopbackServer.open();

    @AutoClose
    private ServedShop shop;

    @BeforeEach
    void open(@TempDir Path folder) throws InterruptedException {
        shop = new ServedShop(
                folder,
                ServedShop.cars().stream().map(ComingMailTest::addressed).toList());
        shop.waitUntilJudged();
        useServer();
    }

    private void useServer() {
        shop.book()
                .mails()
                .putServer(new MailServer(
                        LoopbackServer.HOST, loopback.port(), MailServer.Security.NONE, "shop@example.com", ""));
    }

    /** The server knows no mailbox of the second's name, and loses the line after the third's e-mail. */
    private static CarHistory addressed(CarHistory car) {
        var customer = car.customer();
        var address = switch (car.vehicle().id()) {
            case "demo-03" -> "nobody@example.org";
            case "demo-07" -> "lost@example.org";
            default -> customer.email();
        };
        return new CarHistory(
                car.vehicle(),
                new Customer(customer.id(), customer.name(), customer.phone(), address, "fr"),
                car.sets(),
                car.visits());
    }

    private List<ComingCustomer> all() {
        return shop.book().coming().list(DAYS, 0, 100).list();
    }

    private KeptMail to(String address) {
        return shop.book().mails().list(0, 100).stream()
                .filter(mail -> mail.letter().address().equals(address))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theDaysEMailsAreShownAndSentAndKeptWithWhatTheServerSaid() throws Exception {
        int expected = all().size();
        var page = chromium.open(shop.address(CustomerLinks.coming()), 1180);
        page.getByText("E-mails to send").click();
        page.locator("blockquote").first().waitFor();
        assertThat(page.locator("blockquote").count()).isEqualTo(expected);
        assertThat(page.locator("blockquote").first().innerText()).contains("Bonjour ", "Répondez ARRÊT");
        assertThat(loopback.read()).as("nothing goes before a person sends it").isEmpty();
        page.getByText("Send those chosen").click();
        page.getByText("E-mails written", new Page.GetByTextOptions().setExact(true))
                .first()
                .waitFor();
        page.getByText("5.1.1 no such mailbox here").waitFor();
        page.getByText("not known whether it was sent").waitFor();

        assertThat(loopback.taken()).hasSize(expected - 2);
        assertThat(to("nobody@example.org").last().outcome()).isEqualTo(Outcome.REFUSED);
        assertThat(to("lost@example.org").last().outcome()).isEqualTo(Outcome.UNKNOWN);
        var first = all().getFirst();
        assertThat(first.last())
                .hasValueSatisfying(answer -> assertThat(answer.kind()).isEqualTo(CallAnswer.Kind.WRITTEN));
        var kept = to(String.valueOf(first.customer().email()));
        assertThat(kept.letter().text())
                .startsWith("Bonjour " + first.customer().name());
        assertThat(shop.get(CustomerLinks.customer(first.customer().id())).body())
                .contains(kept.letter().subject());

        assertThat(shop.get(CustomerLinks.comingMail()).body())
                .as("who was written to lately is not chosen again")
                .contains("written to about this on 25 Nov 2026");
    }

    /** By its number the server of the receiver knows the second as the first (RFC 5322, section 3.6.4). */
    @Test
    void whatMayHaveArrivedGoesAgainOnRequestAsTheSameEMail() throws Exception {
        assertThat(send("demo-customer-07")).isEqualTo(303);
        var first = to("lost@example.org");
        assertThat(first.mayGoAgain()).isTrue();
        assertThat(again(first, first.events())).isEqualTo(303);
        assertThat(again(first, first.events())).as("a second tap").isEqualTo(409);
        assertThat(loopback.read()).hasSize(2);
        assertThat(loopback.read())
                .extracting(ComingMailTest::number)
                .containsOnly(number(loopback.read().getFirst()));
        decline("demo-customer-07");
        var then = to("lost@example.org");
        assertThat(again(then, then.events())).as("declined since").isEqualTo(409);
        assertThat(loopback.read()).hasSize(2);
    }

    private static String number(String received) {
        return Arrays.stream(received.split("\r\n", -1))
                .filter(line -> line.startsWith("Message-ID:"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theSameFormTwiceSendsOnce() throws Exception {
        var form = form("demo-customer-12");
        assertThat(shop.post(CustomerLinks.comingMail(), form).statusCode()).isEqualTo(303);
        assertThat(shop.post(CustomerLinks.comingMail(), form).statusCode()).isEqualTo(303);
        assertThat(loopback.taken()).hasSize(1);
        assertThat(shop.book().mails().count()).isEqualTo(1);
        var taken = shop.book().mails().list(0, 1).getFirst();
        assertThat(again(taken, taken.events()))
                .as("what was sent is not sent again")
                .isEqualTo(409);
    }

    /** What was shown and what is sent are the same, or nothing is. */
    @Test
    void whatHasChangedSinceItWasShownIsNotSent() throws Exception {
        var form = form("demo-customer-12");
        decline("demo-customer-12");
        var answer = shop.post(CustomerLinks.comingMail(), form);
        assertThat(answer.statusCode()).isEqualTo(409);
        assertThat(answer.body()).contains("has changed since").doesNotContain("Exception");
        assertThat(shop.post(CustomerLinks.comingMail(), Map.of()).body()).contains("Choose at least one e-mail.");
        shop.book().mails().removeServer();
        assertThat(shop.post(CustomerLinks.comingMail(), form).body()).contains("No server for e-mails is known");
        assertThat(loopback.read()).isEmpty();
        assertThat(shop.book().mails().count()).isZero();
    }

    /** The rest waits: the server is as far away for them. */
    @Test
    void aServerThatIsNotReachedIsAskedOnceAndTheEMailGoesWhenItIsThere() throws Exception {
        shop.book()
                .mails()
                .putServer(new MailServer(
                        LoopbackServer.HOST,
                        ServedShop.twoFreePorts(),
                        MailServer.Security.NONE,
                        "shop@example.com",
                        ""));
        var form = new HashMap<>(form("demo-customer-12"));
        form.putAll(form("demo-customer-09"));
        assertThat(shop.post(CustomerLinks.comingMail(), form).statusCode()).isEqualTo(303);
        assertThat(shop.book().mails().list(0, 9))
                .singleElement()
                .satisfies(mail -> assertThat(mail.last().outcome()).isEqualTo(Outcome.NOT_SENT));
        useServer();
        var waiting = shop.book().mails().list(0, 1).getFirst();
        assertThat(again(waiting, waiting.events())).isEqualTo(303);
        assertThat(loopback.taken()).hasSize(1);
    }

    @Test
    void theServerIsEnteredAndItsPasswordIsNeitherAskedForNorShown() throws Exception {
        var fields = Map.of(
                "host",
                "mail.example.com",
                "port",
                "587",
                "security",
                "STARTTLS",
                "sender",
                "a@example.com",
                "login",
                "a");
        assertThat(shop.post(ShopLinks.mailServer(), fields).statusCode()).isEqualTo(303);
        assertThat(shop.get(ShopLinks.mailServer()).body())
                .contains("mail.example.com", "CORNERBOOK_MAIL_PASSWORD")
                .doesNotContain("type=\"password\"");
        assertThat(shop.post(CustomerLinks.comingMail(), form("demo-customer-12"))
                        .body())
                .contains("The server asks for a password, and none is known");
        for (var wrong : List.of(
                Map.of("host", ""), Map.of("port", "0"), Map.of("sender", "shop"), Map.of("security", "NONE"))) {
            var typed = new HashMap<>(fields);
            typed.putAll(wrong);
            assertThat(shop.post(ShopLinks.mailServer(), typed).statusCode())
                    .as("%s", wrong)
                    .isEqualTo(422);
        }
        var elsewhere = new HashMap<>(fields);
        elsewhere.putAll(Map.of("security", "NONE", "login", ""));
        assertThat(shop.post(ShopLinks.mailServer(), elsewhere).body())
                .as("names and addresses of customers would go over the line for all to read")
                .contains("Without encryption the server is one on this machine");
        for (var here : List.of("localhost", "127.0.0.1", "::1")) {
            elsewhere.put("host", here);
            assertThat(shop.post(ShopLinks.mailServer(), elsewhere).statusCode())
                    .as(here)
                    .isEqualTo(303);
        }
        assertThat(shop.post(ShopLinks.mailServer(), fields).statusCode()).isEqualTo(303);
        assertThat(shop.book().mails().findServer())
                .hasValueSatisfying(server -> assertThat(server.login()).isEqualTo("a"));
        assertThat(shop.post(ShopLinks.mailServer() + "/remove", Map.of()).statusCode())
                .isEqualTo(303);
        assertThat(shop.book().mails().findServer()).isEmpty();
    }

    private int send(String customerId) throws Exception {
        return shop.post(CustomerLinks.comingMail(), form(customerId)).statusCode();
    }

    /** What the page shows of a customer, as its form sends it. */
    private Map<String, String> form(String customerId) throws Exception {
        var body = shop.get(CustomerLinks.comingMail()).body();
        return Map.of(
                "send." + customerId,
                "yes",
                "id." + customerId,
                value(body, "id." + customerId),
                "seen." + customerId,
                value(body, "seen." + customerId),
                "person",
                "Ida");
    }

    private static String value(String body, String name) {
        var found = Pattern.compile("name=\"" + Pattern.quote(name) + "\" value=\"([^\"]*)\"")
                .matcher(body);
        assertThat(found.find()).as(name).isTrue();
        return found.group(1);
    }

    private int again(KeptMail mail, int seen) throws Exception {
        return shop.post(CustomerLinks.sentMail(), Map.of("mail", mail.letter().id(), "events", Integer.toString(seen)))
                .statusCode();
    }

    private void decline(String customerId) {
        shop.book()
                .contacts()
                .add(
                        UUID.randomUUID().toString(),
                        customerId,
                        Arrays.stream(Purpose.values())
                                .map(purpose -> new ContactAnswer(
                                        purpose,
                                        Channel.E_MAIL,
                                        false,
                                        "Answered STOP",
                                        "Ida",
                                        ServedShop.CLOCK.instant()))
                                .toList());
    }
}
