package cornerbook.app.door;

import cornerbook.app.desk.link.DayLinks;
import cornerbook.app.desk.link.MoneyLinks;
import cornerbook.app.desk.link.ShopLinks;
import cornerbook.app.request.Caller;
import cornerbook.app.request.Connections;
import cornerbook.app.request.PageException;
import cornerbook.app.text.PlainText;
import io.helidon.http.HeaderNames;
import io.helidon.http.Method;
import io.helidon.webserver.http.Filter;
import io.helidon.webserver.http.FilterChain;
import io.helidon.webserver.http.RoutingRequest;
import io.helidon.webserver.http.RoutingResponse;
import io.helidon.webserver.http.ServerResponse;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * Lets in only requests that were meant for this server (Host), from this machine or a paired tablet, and changes only from
 * these pages (Origin and Sec-Fetch-Site); each answer forbids the browser everything that does not come from here.
 */
final class RequestGuard implements Filter {
    static final String DEVICE_COOKIE = "device";

    private static final String CONTENT_SECURITY_POLICY =
            "default-src 'none'; style-src 'self'; script-src 'self'; font-src 'self'; img-src 'self'; "
                    + "connect-src 'self'; worker-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

    private final Door door;
    private final Pairing pairing;
    private final Connections connections;
    private final Refusals refusals;

    RequestGuard(Door door, Pairing pairing, Connections connections, Refusals refusals) {
        this.door = door;
        this.pairing = pairing;
        this.connections = connections;
        this.refusals = refusals;
    }

    @Override
    public void filter(FilterChain chain, RoutingRequest request, RoutingResponse response) {
        connections.answer(request, () -> admit(chain, request, response));
    }

    private void admit(FilterChain chain, RoutingRequest request, RoutingResponse response) {
        forbidForeign(response);
        requirePlainAddress(request);
        var host = request.headers().first(HeaderNames.HOST).orElse("").toLowerCase(Locale.ROOT);
        if (!door.answersTo(host)) {
            refusals.count(Refusals.Reason.ANOTHER_NAME);
            throw new PageException(403, new DoorSaid.OnlyHere());
        }
        var method = request.prologue().method();
        boolean reads = method.equals(Method.GET) || method.equals(Method.HEAD);
        if (!reads) {
            var site = request.headers()
                    .first(HeaderNames.create("Sec-Fetch-Site"))
                    .orElse("same-origin");
            var origin = request.headers().first(HeaderNames.ORIGIN).orElse("http://" + host);
            if (!site.equals("same-origin") || !door.isOrigin(origin, host)) {
                refusals.count(Refusals.Reason.ANOTHER_SITE);
                throw new PageException(403, new DoorSaid.AnotherSite());
            }
        }
        var tablet =
                pairing.find(request.headers().cookies().first(DEVICE_COOKIE).asOptional());
        var caller = Caller.of(tablet, request.headers());
        request.context().register(caller);
        if (isOpen(request, host) || (tablet.isPresent() && !onlyDesk(request))) {
            caller.run(chain::proceed);
            return;
        }
        refusals.count(Refusals.Reason.NOT_PAIRED);
        if (reads && request.headers().first(HeaderNames.ACCEPT).orElse("").contains("text/html")) {
            response.status(303);
            response.header(HeaderNames.LOCATION, ShopLinks.PAIR);
            response.send();
        } else {
            throw new PageException(401, new DoorSaid.NotPaired());
        }
    }

    /** Names of cars, visits and photos stand in addresses, and what a page is asked behind the question mark. */
    private static void requirePlainAddress(RoutingRequest request) {
        var names = request.query().names();
        var values = names.stream().flatMap(name -> request.query().all(name).stream());
        Stream.of(Stream.of(request.path().path()), names.stream(), values)
                .flatMap(each -> each)
                .flatMap(each -> PlainText.findUnfitInLines(each).stream())
                .findFirst()
                .ifPresent(unfit -> {
                    throw new PageException(400, new DoorSaid.UnfitAddress(unfit));
                });
    }

    /** From this machine, about to be paired, or a calendar or a customer, whose address proves it. */
    private boolean isOpen(RoutingRequest request, String host) {
        var path = request.path().path();
        return door.isLocal(request.localPeer(), request.remotePeer(), host, request.headers())
                || path.equals(ShopLinks.PAIR)
                || path.startsWith(DayLinks.CALENDAR)
                || path.startsWith(MoneyLinks.AGREE)
                || path.startsWith(DayLinks.PICK)
                || path.startsWith("/assets/");
    }

    /** Only this machine pairs and unpairs others, and takes the whole book out. */
    private static boolean onlyDesk(RoutingRequest request) {
        var path = request.path().path();
        return path.startsWith(ShopLinks.DEVICES) || path.startsWith(ShopLinks.out());
    }

    /** Tells the browser to load, frame and guess nothing else than what comes from here. */
    static void forbidForeign(ServerResponse response) {
        response.header("Content-Security-Policy", CONTENT_SECURITY_POLICY);
        response.header("X-Content-Type-Options", "nosniff");
        response.header("Referrer-Policy", "same-origin");
        response.header("Cross-Origin-Opener-Policy", "same-origin");
        response.header("Cross-Origin-Resource-Policy", "same-origin");
    }
}
