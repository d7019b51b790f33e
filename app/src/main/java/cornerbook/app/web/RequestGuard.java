package cornerbook.app.web;

import io.helidon.http.HeaderNames;
import io.helidon.http.Method;
import io.helidon.webserver.http.Filter;
import io.helidon.webserver.http.FilterChain;
import io.helidon.webserver.http.RoutingRequest;
import io.helidon.webserver.http.RoutingResponse;
import java.util.Locale;
import java.util.Set;

/**
 * Lets in only requests that were meant for this machine (Host), and changes only from these pages (Origin and
 * Sec-Fetch-Site); each answer forbids the browser everything that does not come from here.
 */
final class RequestGuard implements Filter {
    private static final Set<String> LOOPBACK_NAMES = Set.of("localhost", "127.0.0.1", "[::1]");
    private static final String CONTENT_SECURITY_POLICY =
            "default-src 'none'; style-src 'self'; script-src 'self'; font-src 'self'; img-src 'self'; "
                    + "connect-src 'self'; worker-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

    @Override
    public void filter(FilterChain chain, RoutingRequest request, RoutingResponse response) {
        response.header("Content-Security-Policy", CONTENT_SECURITY_POLICY);
        response.header("X-Content-Type-Options", "nosniff");
        response.header("Referrer-Policy", "same-origin");
        response.header("Cross-Origin-Opener-Policy", "same-origin");
        response.header("Cross-Origin-Resource-Policy", "same-origin");
        var host = request.headers().first(HeaderNames.HOST).orElse("").toLowerCase(Locale.ROOT);
        if (!LOOPBACK_NAMES.contains(host.replaceFirst(":[0-9]+$", ""))) {
            throw new PageException(403, "This program answers only under a name of this machine, as localhost.");
        }
        var method = request.prologue().method();
        if (!method.equals(Method.GET) && !method.equals(Method.HEAD)) {
            var site = request.headers()
                    .first(HeaderNames.create("Sec-Fetch-Site"))
                    .orElse("same-origin");
            var origin = request.headers().first(HeaderNames.ORIGIN).orElse("http://" + host);
            if (!site.equals("same-origin") || !origin.equals("http://" + host)) {
                throw new PageException(403, "This change was sent by another site, nothing was stored.");
            }
        }
        chain.proceed();
    }
}
