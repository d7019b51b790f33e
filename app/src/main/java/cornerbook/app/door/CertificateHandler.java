package cornerbook.app.door;

import cornerbook.app.certificate.ShopCertificates;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.Problems;
import cornerbook.app.desk.link.ShopLinks;
import cornerbook.app.request.Caller;
import cornerbook.app.request.PageException;
import io.helidon.http.HeaderNames;
import io.helidon.webserver.http.HttpRouting;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.util.Locale;
import java.util.Optional;

/** The only pages that tablets get without TLS: the shop's certificate and how it is put on a tablet. */
final class CertificateHandler {
    private static final String FILE = "/cornerbook.crt";

    private final Pages pages;
    private final Door door;
    private final ShopCertificates certificates;

    CertificateHandler(Pages pages, Door door, ShopCertificates certificates) {
        this.pages = pages;
        this.door = door;
        this.certificates = certificates;
    }

    void route(HttpRouting.Builder routing) {
        routing.addFilter((chain, request, response) -> {
                    RequestGuard.forbidForeign(response);
                    if (!door.answersTo(
                            request.headers().first(HeaderNames.HOST).orElse("").toLowerCase(Locale.ROOT))) {
                        throw new PageException(403, new DoorSaid.OnlyHere());
                    }
                    Caller.of(Optional.empty(), request.headers()).run(chain::proceed);
                })
                .get("/", this::show)
                .get(FILE, this::send)
                .get("/assets/{digest}/{name}", pages::sendAsset)
                .any((request, response) -> Pages.redirect(response, "/"));
        Problems.route(routing, pages);
    }

    private void show(ServerRequest request, ServerResponse response) {
        pages.send(
                response,
                200,
                "door/certificate",
                new CertificatePage(
                        certificates.fingerprint(),
                        door.publicAddress(request.localPeer().port()) + ShopLinks.PAIR));
    }

    private void send(ServerRequest request, ServerResponse response) {
        response.header(HeaderNames.CONTENT_TYPE, "application/x-x509-ca-cert");
        response.header(HeaderNames.CACHE_CONTROL, "no-store");
        response.send(certificates.file());
    }
}
