package cornerbook.app.web;

import io.helidon.http.HeaderNames;
import io.helidon.http.Method;
import io.helidon.webserver.http.Filter;
import io.helidon.webserver.http.FilterChain;
import io.helidon.webserver.http.RoutingRequest;
import io.helidon.webserver.http.RoutingResponse;
import io.helidon.webserver.http.ServerResponse;
import java.util.Locale;

/**
 * Lets in only requests that were meant for this server (Host), from this machine or a paired tablet, and changes only from
 * these pages (Origin and Sec-Fetch-Site); each answer forbids the browser everything that does not come from here.
 */
final class RequestGuard implements Filter {
    static final String DEVICE_COOKIE = "device";

    static final String ONLY_HERE = "This program answers only under a name of this machine, as localhost.";

    private static final String CONTENT_SECURITY_POLICY =
            "default-src 'none'; style-src 'self'; script-src 'self'; font-src 'self'; img-src 'self'; "
                    + "connect-src 'self'; worker-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

    private final Door door;
    private final Pairing pairing;

    RequestGuard(Door door, Pairing pairing) {
        this.door = door;
        this.pairing = pairing;
    }

    @Override
    public void filter(FilterChain chain, RoutingRequest request, RoutingResponse response) {
        forbidForeign(response);
        var host = request.headers().first(HeaderNames.HOST).orElse("").toLowerCase(Locale.ROOT);
        if (!door.answersTo(host)) {
            throw new PageException(403, ONLY_HERE);
        }
        var method = request.prologue().method();
        boolean reads = method.equals(Method.GET) || method.equals(Method.HEAD);
        if (!reads) {
            var site = request.headers()
                    .first(HeaderNames.create("Sec-Fetch-Site"))
                    .orElse("same-origin");
            var origin = request.headers().first(HeaderNames.ORIGIN).orElse("http://" + host);
            if (!site.equals("same-origin") || !door.isOrigin(origin, host)) {
                throw new PageException(403, "This change was sent by another site, nothing was stored.");
            }
        }
        var tablet =
                pairing.find(request.headers().cookies().first(DEVICE_COOKIE).asOptional());
        var caller = Caller.of(tablet, request.headers());
        if (isOpen(request, host) || (tablet.isPresent() && !onlyDesk(request))) {
            caller.run(chain::proceed);
        } else if (reads
                && request.headers().first(HeaderNames.ACCEPT).orElse("").contains("text/html")) {
            response.status(303);
            response.header(HeaderNames.LOCATION, Links.PAIR);
            response.send();
        } else {
            throw new PageException(401, "This tablet is not paired; the desk shows the code under Tablets.");
        }
    }

    /** From this machine, or about to be paired. */
    private boolean isOpen(RoutingRequest request, String host) {
        var path = request.path().path();
        return door.isLocal(request.remotePeer().address(), host, request.headers())
                || path.equals(Links.PAIR)
                || path.startsWith("/assets/");
    }

    /** Only this machine pairs and unpairs others. */
    private static boolean onlyDesk(RoutingRequest request) {
        return request.path().path().startsWith(Links.DEVICES);
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
