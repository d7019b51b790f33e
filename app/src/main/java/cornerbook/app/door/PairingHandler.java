package cornerbook.app.door;

import cornerbook.app.book.people.DeviceLedger;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.Room;
import cornerbook.app.desk.link.ShopLinks;
import cornerbook.app.picture.QrCode;
import cornerbook.app.request.Told;
import cornerbook.core.say.Refused;
import io.helidon.http.SetCookie;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.time.Duration;
import java.util.List;

/** The desk's page of tablets, and the page on which a tablet is paired. */
final class PairingHandler {
    /** Browsers keep no cookie for longer (RFC 6265bis, 400 days). */
    private static final Duration PAIRED_FOR = Duration.ofDays(400);

    private static final int LONGEST_NAME = 60;

    private final Desk desk;
    private final Pages pages;
    private final Pairing pairing;
    private final Door door;
    private final List<Room> rooms;
    private final DeviceLedger ledger;

    PairingHandler(Desk desk, Pages pages, Pairing pairing, Door door, List<Room> rooms) {
        this.desk = desk;
        this.pages = pages;
        this.pairing = pairing;
        this.door = door;
        this.rooms = List.copyOf(rooms);
        this.ledger = desk.book().devices();
    }

    void showDevices(ServerRequest request, ServerResponse response) {
        sendDevices(request, response, 200, "");
    }

    void addPerson(ServerRequest request, ServerResponse response) {
        var typed = Form.read(request);
        var name = typed.get("person");
        if (name.isEmpty() || name.length() > LONGEST_NAME) {
            sendDevices(request, response, 422, Told.say(new DoorSaid.PersonNeedsName(LONGEST_NAME)));
            return;
        }
        var problem = Pin.problem(typed.get("pin"));
        if (problem.isPresent()) {
            sendDevices(request, response, 422, Told.say(problem.get()));
            return;
        }
        ledger.putPerson(name, pairing.hashPin(typed.get("pin")));
        Pages.redirect(response, ShopLinks.DEVICES);
    }

    /** Tablets that the person works on are theirs no more, and nobody's until they are paired anew. */
    void removePerson(ServerRequest request, ServerResponse response) {
        ledger.removePerson(Form.read(request).get("person"), desk.now()).forEach(this::endStreams);
        Pages.redirect(response, ShopLinks.DEVICES);
    }

    void unpair(ServerRequest request, ServerResponse response) {
        var device = Form.read(request).get("device");
        ledger.unpair(device, desk.now());
        endStreams(device);
        Pages.redirect(response, ShopLinks.DEVICES);
    }

    private void endStreams(String deviceId) {
        rooms.forEach(room -> room.unpaired(deviceId));
    }

    void showPair(ServerRequest request, ServerResponse response) {
        sendPair(response, 200, Pages.queryValue(request, "code"), "");
    }

    void pair(ServerRequest request, ServerResponse response) {
        var typed = Form.read(request);
        var name = typed.get("device").isEmpty() ? Told.labels("app/door").of("tablet") : typed.get("device");
        if (name.length() > LONGEST_NAME) {
            sendPair(response, 422, typed.get("code"), Told.say(new DoorSaid.TabletNameTooLong(LONGEST_NAME)));
            return;
        }
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
        } catch (Refused e) {
            sendPair(response, 422, "", Told.say(e.said()));
        }
    }

    private void sendDevices(ServerRequest request, ServerResponse response, int status, String problem) {
        var address = door.publicAddress(request.localPeer().port()) + ShopLinks.PAIR;
        var code = pairing.code();
        var certificates = door.certificates();
        pages.send(
                response,
                status,
                "door/devices",
                new DevicesPage(
                        door.isOpen(),
                        address,
                        code,
                        QrCode.svg(
                                address + "?code=" + code,
                                Told.labels("app/door").of("code-picture")),
                        certificates == null
                                ? null
                                : new DevicesPage.Certificate(door.certificateAddress(), certificates.fingerprint()),
                        ledger.listPeople(),
                        ledger.listPaired(),
                        problem));
    }

    private void sendPair(ServerResponse response, int status, String code, String problem) {
        pages.send(response, status, "door/pair", new PairPage(code, problem));
    }
}
