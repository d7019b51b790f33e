package cornerbook.app.door;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.InstanceOfAssertFactories.STRING;

import cornerbook.app.InEnglish;
import cornerbook.app.book.Book;
import cornerbook.app.book.EmptyBook;
import cornerbook.app.certificate.ShopCertificates;
import cornerbook.app.limits.LimitsFile;
import cornerbook.app.sheet.Letterhead;
import cornerbook.core.assess.Assessor;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.KeyStore;
import java.security.cert.X509Certificate;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLHandshakeException;
import javax.net.ssl.TrustManagerFactory;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PairingTest {
    private static final Clock CLOCK = Clock.systemUTC();
    /** Enough to be right: what a shop pays for one PIN, these tests would pay a hundred times. */
    private static final int FEW_ROUNDS = 1000;

    private final HttpClient client = HttpClient.newHttpClient();
    private Book book;
    private Pairing pairing;

    @BeforeEach
    void open(@TempDir Path folder) {
        book = EmptyBook.open(folder);
        pairing = new Pairing(book.devices(), CLOCK, new Refusals(CLOCK), FEW_ROUNDS);
        book.devices().putPerson("Ada", pairing.hashPin("4711"));
    }

    @AfterEach
    void close() {
        book.close();
    }

    /** Test vectors for PBKDF2 with HMAC-SHA-256: RFC 7914, section 11, first 32 octets of each (from memory). */
    @Test
    void pinIsDerivedAsPublished() {
        assertThat(HexFormat.of().formatHex(Pairing.derive("passwd", "salt".getBytes(StandardCharsets.UTF_8), 1)))
                .isEqualTo("55ac046e56e3089fec1691c22544b605f94185216dde0465e68b9d57c20dacbc");
        assertThat(HexFormat.of()
                        .formatHex(Pairing.derive("Password", "NaCl".getBytes(StandardCharsets.UTF_8), 80_000)))
                .isEqualTo("4ddcd8f60b98be21830cee5ef22701f9641a4418d04c0414aeff08876b34ab56");
    }

    /** 600 000 rounds (OWASP's password storage cheat sheet, from memory), noted with each PIN and its salt. */
    @Test
    void aShopPaysAllRoundsForAPin() {
        var kept = new Pairing(book.devices(), CLOCK, new Refusals(CLOCK)).hashPin("4711");
        assertThat(kept).matches("600000\\$[0-9a-f]{32}\\$[0-9a-f]{64}");
        book.devices().putPerson("Bo", kept);
        assertThat(pairing.pair(pairing.code(), "Tablet", "Bo", "4711"))
                .as("by the rounds that stand with the PIN")
                .isNotEmpty();
        assertThat(pairing.hashPin("4711"))
                .as("with a salt of its own")
                .matches("1000\\$.*")
                .isNotEqualTo(pairing.hashPin("4711"));
    }

    @Test
    void codePairsOneTabletWithTheRightPin() {
        var code = pairing.code();
        assertThatThrownBy(() -> pairing.pair(code, "Tablet", "Ada", "0000"))
                .extracting(InEnglish::told, STRING)
                .contains("not right");
        assertThatThrownBy(() -> pairing.pair("123", "Tablet", "Ada", "4711"))
                .extracting(InEnglish::told, STRING)
                .contains("not right");
        var shown = pairing.pair(code, "Tablet", "Ada", "4711");
        assertThat(pairing.find(Optional.of(shown))).isPresent();
        assertThat(pairing.find(Optional.of(shown + "x"))).isEmpty();
        assertThat(pairing.find(Optional.empty())).isEmpty();
        assertThatThrownBy(() -> pairing.pair(code, "Other", "Ada", "4711"))
                .as("the code is used up")
                .isNotNull();
        assertThat(book.devices().listPaired())
                .singleElement()
                .satisfies(device -> assertThat(device.person()).isEqualTo("Ada"));
        book.devices().unpair(book.devices().listPaired().getFirst().id(), CLOCK.instant());
        assertThat(pairing.find(Optional.of(shown))).as("lost").isEmpty();
    }

    @Test
    void whoHasNoPinYetPairsNothing() {
        book.devices().putPerson("Cy", "");
        for (var pin : List.of("", "4711")) {
            assertThatThrownBy(() -> pairing.pair(pairing.code(), "Tablet", "Cy", pin))
                    .extracting(InEnglish::told, STRING)
                    .contains("not right");
        }
        book.devices().putPerson("Cy", pairing.hashPin("2580"));
        assertThat(pairing.pair(pairing.code(), "Tablet", "Cy", "2580")).isNotEmpty();
    }

    @Test
    void strangersWhoGuessCodesEndNothing() {
        var code = pairing.code();
        for (int i = 0; i < 50; i++) {
            assertThatThrownBy(() -> pairing.pair("000000000000", "Tablet", "Ada", "4711"))
                    .extracting(InEnglish::told, STRING)
                    .contains("not right");
        }
        assertThat(pairing.code()).isEqualTo(code).matches("[0-9]{12}");
        assertThat(pairing.find(Optional.of(pairing.pair(code, "Tablet", "Ada", "4711"))))
                .isPresent();
    }

    @Test
    void whoHasTheCodeMayTryFivePins() {
        var code = pairing.code();
        for (int i = 0; i < 5; i++) {
            assertThatThrownBy(() -> pairing.pair(code, "Tablet", "Ada", "0000"))
                    .extracting(InEnglish::told, STRING)
                    .contains("not right");
        }
        assertThatThrownBy(() -> pairing.pair(code, "Tablet", "Ada", "4711"))
                .extracting(InEnglish::told, STRING)
                .contains("not right");
        assertThat(pairing.code()).isNotEqualTo(code);
    }

    @Test
    void codeEndsWhenItIsTooOld() {
        var then = new Pairing(book.devices(), Clock.offset(CLOCK, Duration.ofMinutes(-11)), new Refusals(CLOCK));
        var code = then.code();
        assertThat(new Pairing(book.devices(), CLOCK, new Refusals(CLOCK)).code())
                .isNotEqualTo(code);
    }

    @Test
    void wrongPinsCountForTheTabletAndKeepNothingOfNames() {
        var tablet = pairing.find(Optional.of(pairing.pair(pairing.code(), "Tablet", "Ada", "4711")))
                .orElseThrow()
                .deviceId();
        var other = pairing.find(Optional.of(pairing.pair(pairing.code(), "Other", "Ada", "4711")))
                .orElseThrow()
                .deviceId();
        for (int i = 0; i < 5; i++) {
            var name = "x".repeat(125_000) + i;
            assertThatThrownBy(() -> pairing.takeOver(tablet, name, "4711"))
                    .extracting(InEnglish::told, STRING)
                    .contains("not right");
        }
        assertThatThrownBy(() -> pairing.takeOver(tablet, "Ada", "4711"))
                .extracting(InEnglish::told, STRING)
                .isEqualTo("A PIN was wrong 5 times on this tablet; wait 10 minutes.");
        pairing.takeOver(other, "ADA", "4711");
        assertThat(book.devices().listWorkers(other)).containsExactly("Ada");
    }

    @Test
    void whoHasLeftCannotSignInAndIsNotOfferedButStaysInWhatWasDone() {
        book.devices().putPerson("Bo", pairing.hashPin("2580"));
        var shown = pairing.pair(pairing.code(), "Trolley", "Bo", "2580");
        var tablet = pairing.find(Optional.of(shown)).orElseThrow().deviceId();
        pairing.takeOver(tablet, "Ada", "4711");
        assertThat(book.devices().removePerson("Bo", CLOCK.instant()))
                .as("Ada works on it now")
                .isEmpty();
        assertThat(book.devices().listPeople()).containsExactly("Ada");
        assertThat(book.devices().listWorkers(tablet)).containsExactly("Ada");
        assertThatThrownBy(() -> pairing.takeOver(tablet, "Bo", "2580"))
                .extracting(InEnglish::told, STRING)
                .contains("not right");
        assertThat(book.devices().removePerson("Ada", CLOCK.instant())).containsExactly(tablet);
        assertThat(pairing.find(Optional.of(shown))).isEmpty();
        book.devices().putPerson("Bo", pairing.hashPin("3690"));
        assertThat(book.devices().listWorkers(tablet))
                .as("of the same name, and not yet on this tablet")
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"0000", "1234", "9876", "7890", "111111", "1984", "2031", "123", "12a4", "0123456789"})
    void weakPinsAreRefused(String pin) {
        assertThat(Pin.problem(pin)).isPresent();
    }

    @ParameterizedTest
    @ValueSource(strings = {"4711", "0815", "2580", "19840", "1243"})
    void othersAreTaken(String pin) {
        assertThat(Pin.problem(pin)).isEmpty();
    }

    @Test
    void nothingThatComesThroughAProxyIsThisMachine() throws Exception {
        var port = ServedShop.twoFreePorts();
        var door = Door.behindProxy(port, null, URI.create("https://bay.example"));
        var server = CornerbookServer.start(book, new Assessor(LimitsFile.load()), door, CLOCK, Letterhead.of(""));
        try {
            // As of a proxy that keeps neither Host nor says that it is one.
            var proxied = "http://127.0.0.1:" + port;
            assertThat(get(client, proxied + "/devices", "").statusCode()).isEqualTo(303);
            assertThat(post(client, proxied + "/devices/people", Map.of("person", "Eve", "pin", "4712"))
                            .statusCode())
                    .isEqualTo(401);
            assertThat(get(client, proxied + "/pair", "").body())
                    .contains("Pair this tablet")
                    .doesNotContain("Ada");
            assertThat(book.devices().listPeople()).containsExactly("Ada");
            var desk = door.deskAddress(server.port());
            assertThat(desk).isEqualTo("http://127.0.0.1:" + (port + 1));
            assertThat(get(client, desk + "/devices", "").body()).contains("https://bay.example/pair");
            assertThat(post(client, desk + "/devices/people", Map.of("person", "Cy", "pin", "4712"))
                            .statusCode())
                    .isEqualTo(303);
            assertThat(post(client, desk + "/devices/people/remove", Map.of("person", "Cy"))
                            .statusCode())
                    .isEqualTo(303);
            assertThat(post(client, desk + "/devices/people", Map.of("person", "Di", "pin", "1234"))
                            .body())
                    .contains("guessed too easily");
            assertThat(book.devices().listPeople()).containsExactly("Ada");
        } finally {
            server.stop();
        }
    }

    @Test
    void tabletsAreServedByTlsAndSeeOnlyThePageThatPairsUntilTheyArePaired(@TempDir Path folder) throws Exception {
        // Loopback under another name counts as another machine: a proxy would come from there.
        var address = "127.0.0.2";
        var certificates = ShopCertificates.of(folder, address, LocalDate.now(CLOCK));
        var port = ServedShop.twoFreePorts();
        var server = CornerbookServer.start(
                book,
                new Assessor(LimitsFile.load()),
                Door.forTablets(port, address, certificates),
                CLOCK,
                Letterhead.of(""));
        var tablet = trusting(certificates.authority());
        try {
            var base = "https://" + address + ":" + (port + 1);
            assertThat(get(tablet, base + "/", "").statusCode()).isEqualTo(303);
            assertThat(get(tablet, base + "/pair", "").body())
                    .contains("Pair this tablet")
                    .doesNotContain("Ada");
            assertThat(get(tablet, base + "/devices", "").statusCode()).isEqualTo(303);
            assertThatThrownBy(() -> get(client, base + "/pair", ""))
                    .as("who does not trust the shop")
                    .isInstanceOf(SSLHandshakeException.class);
            var devices =
                    get(client, "http://127.0.0.1:" + port + "/devices", "").body();
            assertThat(devices).contains(certificates.fingerprint(), base + "/pair");
            assertThat(devices)
                    .as("where the owner of the tablet finds it")
                    .contains("Install anyway", "Certificate Trust Settings", "When the certificate is renewed");
            var code = devices.replaceAll("(?s).*class=\"code\">([0-9 ]+)<.*", "$1");
            assertThat(pair(tablet, base, code, "1").statusCode()).isEqualTo(422);
            var paired = pair(tablet, base, code, "4711");
            assertThat(paired.statusCode()).isEqualTo(303);
            var cookie = paired.headers().firstValue("Set-Cookie").orElseThrow();
            assertThat(cookie).contains("HttpOnly", "SameSite=Strict", "Secure");
            var device = cookie.replaceFirst(";.*", "");
            assertThat(get(tablet, base + "/", device).body()).contains("Today");
            assertThat(get(tablet, base + "/devices", device).statusCode())
                    .as("only the desk")
                    .isEqualTo(303);
            assertThat(get(tablet, base + "/shop/out", device).statusCode())
                    .as("only the desk")
                    .isEqualTo(303);
            book.devices().unpair(book.devices().listPaired().getFirst().id(), CLOCK.instant());
            assertThat(get(tablet, base + "/", device).statusCode()).isEqualTo(303);
        } finally {
            server.stop();
        }
    }

    @Test
    void withoutTlsTabletsGetNothingButTheCertificate(@TempDir Path folder) throws Exception {
        var certificates = ShopCertificates.of(folder, "127.0.0.2", LocalDate.now(CLOCK));
        var door = Door.forTablets(ServedShop.twoFreePorts(), "127.0.0.2", certificates);
        var server = CornerbookServer.start(book, new Assessor(LimitsFile.load()), door, CLOCK, Letterhead.of(""));
        try {
            var plain = door.certificateAddress();
            assertThat(get(client, plain + "/", "").body())
                    .contains(certificates.fingerprint(), door.publicAddress(0) + "/pair")
                    .contains("Install anyway", "Certificate Trust Settings", "When the certificate is renewed");
            var file = client.send(
                    HttpRequest.newBuilder(URI.create(plain + "/cornerbook.crt"))
                            .build(),
                    BodyHandlers.ofByteArray());
            assertThat(file.body()).isEqualTo(certificates.authority().getEncoded());
            for (var path : List.of("/pair", "/devices", "/cars/x", "/bay/visits")) {
                var answer = get(client, plain + path, "");
                assertThat(answer.statusCode()).as(path).isEqualTo(303);
                assertThat(answer.headers().firstValue("Location")).as(path).contains("/");
            }
            assertThat(pair(client, plain, pairing.code(), "4711").statusCode()).isEqualTo(303);
            assertThat(book.devices().listPaired()).isEmpty();
        } finally {
            server.stop();
        }
    }

    private HttpResponse<String> pair(HttpClient tablet, String base, String code, String pin) throws Exception {
        return post(tablet, base + "/pair", Map.of("code", code, "device", "Trolley", "person", "Ada", "pin", pin));
    }

    /** A client that trusts an authority and nobody else. */
    private static HttpClient trusting(X509Certificate authority) throws Exception {
        var trusted = KeyStore.getInstance(KeyStore.getDefaultType());
        trusted.load(null, null);
        trusted.setCertificateEntry("shop", authority);
        var managers = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
        managers.init(trusted);
        var context = SSLContext.getInstance("TLS");
        context.init(null, managers.getTrustManagers(), null);
        return HttpClient.newBuilder().sslContext(context).build();
    }

    private HttpResponse<String> get(HttpClient from, String address, String cookie) throws Exception {
        var request = HttpRequest.newBuilder(URI.create(address)).header("Accept", "text/html");
        if (!cookie.isEmpty()) {
            request.header("Cookie", cookie);
        }
        return from.send(request.build(), BodyHandlers.ofString());
    }

    private HttpResponse<String> post(HttpClient from, String address, Map<String, String> fields) throws Exception {
        return from.send(
                ServedShop.form(HttpRequest.newBuilder(URI.create(address)), fields)
                        .build(),
                BodyHandlers.ofString());
    }
}
