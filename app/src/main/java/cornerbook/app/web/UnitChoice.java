package cornerbook.app.web;

import cornerbook.app.unit.UnitSystem;
import io.helidon.http.HeaderNames;
import io.helidon.http.SetCookie;
import io.helidon.webserver.http.Filter;
import io.helidon.webserver.http.FilterChain;
import io.helidon.webserver.http.RoutingRequest;
import io.helidon.webserver.http.RoutingResponse;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.net.URI;
import java.time.Duration;

/** The units that this browser has chosen, kept in a cookie and known to everything that answers one request. */
public final class UnitChoice implements Filter {
    private static final String COOKIE = "units";
    private static final Duration KEPT = Duration.ofDays(3650);
    private static final ScopedValue<UnitSystem> CURRENT = ScopedValue.newInstance();

    /** The units of the request that is being answered; metric outside of one. */
    public static UnitSystem current() {
        return CURRENT.orElse(UnitSystem.METRIC);
    }

    @Override
    public void filter(FilterChain chain, RoutingRequest request, RoutingResponse response) {
        var chosen = request.headers().cookies().first(COOKIE).asOptional().flatMap(UnitSystem::find);
        ScopedValue.where(CURRENT, chosen.orElse(UnitSystem.METRIC)).run(chain::proceed);
    }

    /** Keeps the choice and goes back to the page that it was made on. */
    static void choose(ServerRequest request, ServerResponse response) {
        var chosen = UnitSystem.find(Form.read(request).get("units"))
                .orElseThrow(() -> new PageException(400, "The units are not known, expected metric or us."));
        response.headers()
                .addCookie(SetCookie.builder(COOKIE, chosen.word())
                        .path("/")
                        .maxAge(KEPT)
                        .httpOnly(true)
                        .sameSite(SetCookie.SameSite.STRICT)
                        .build());
        Pages.redirect(response, cameFrom(request));
    }

    /** Path and query alone, so that nobody is sent elsewhere. */
    private static String cameFrom(ServerRequest request) {
        var referrer = request.headers().first(HeaderNames.REFERER).orElse("/");
        try {
            var address = URI.create(referrer);
            var path = address.getRawPath();
            if (path == null || !path.startsWith("/") || path.startsWith("//")) {
                return "/";
            }
            return address.getRawQuery() == null ? path : path + "?" + address.getRawQuery();
        } catch (IllegalArgumentException e) {
            return "/";
        }
    }
}
