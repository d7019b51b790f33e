package cornerbook.app.web;

import cornerbook.app.book.DeviceLedger;
import cornerbook.app.handover.QrCode;
import io.helidon.http.SetCookie;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.time.Duration;

/** The desk's page of tablets, and the page on which a tablet is paired. */
final class PairingHandler {
    /** Browsers keep no cookie for longer (RFC 6265bis, 400 days). */
    private static final Duration PAIRED_FOR = Duration.ofDays(400);

    private static final int SHORTEST_PIN = 4;

    private final Desk desk;
    private final Pages pages;
    private final Pairing pairing;
    private final Door door;
    private final DeviceLedger ledger;

    PairingHandler(Desk desk, Pages pages, Pairing pairing, Door door) {
        this.desk = desk;
        this.pages = pages;
        this.pairing = pairing;
        this.door = door;
        this.ledger = desk.book().devices();
    }

    void showDevices(ServerRequest request, ServerResponse response) {
        sendDevices(request, response, 200, "");
    }

    void addPerson(ServerRequest request, ServerResponse response) {
        var typed = Form.read(request);
        var name = typed.get("person");
        if (name.isEmpty() || name.length() > 60 || !typed.get("pin").matches("[0-9]{4,12}")) {
            sendDevices(
                    request,
                    response,
                    422,
                    "A person needs a name and a PIN, expected %d to 12 digits.".formatted(SHORTEST_PIN));
            return;
        }
        ledger.putPerson(name, pairing.hashPin(typed.get("pin")));
        Pages.redirect(response, Links.DEVICES);
    }

    void unpair(ServerRequest request, ServerResponse response) {
        ledger.unpair(Form.read(request).get("device"), desk.now());
        Pages.redirect(response, Links.DEVICES);
    }

    void showPair(ServerRequest request, ServerResponse response) {
        sendPair(response, 200, Pages.queryValue(request, "code"), "");
    }

    void pair(ServerRequest request, ServerResponse response) {
        var typed = Form.read(request);
        var name = typed.get("device").isEmpty() ? "Tablet" : typed.get("device");
        try {
            var shown = pairing.pair(typed.get("code"), name, typed.get("person"), typed.get("pin"));
            response.headers()
                    .addCookie(SetCookie.builder(RequestGuard.DEVICE_COOKIE, shown)
                            .path("/")
                            .httpOnly(true)
                            .secure(door.isEncrypted())
                            .sameSite(SetCookie.SameSite.STRICT)
                            .maxAge(PAIRED_FOR)
                            .build());
            Pages.redirect(response, "/bay/visits");
        } catch (IllegalArgumentException e) {
            sendPair(response, 422, "", String.valueOf(e.getMessage()));
        }
    }

    private void sendDevices(ServerRequest request, ServerResponse response, int status, String problem) {
        var address = door.publicAddress(request.localPeer().port()) + Links.PAIR;
        var code = pairing.code();
        pages.send(
                response,
                status,
                "devices",
                new DevicesPage(
                        door.isOpen(),
                        address,
                        code,
                        QrCode.svg(address + "?code=" + code, "QR code that opens the page for pairing"),
                        door.certificateAddress(),
                        fingerprint(),
                        Pairing.CODE_LASTS.toMinutes(),
                        ledger.listPeople(),
                        ledger.listPaired(),
                        problem));
    }

    private String fingerprint() {
        var certificates = door.certificates();
        return certificates == null ? "" : certificates.fingerprint();
    }

    private void sendPair(ServerResponse response, int status, String code, String problem) {
        pages.send(response, status, "pair", new PairPage(code, ledger.listPeople(), problem));
    }
}
