package cornerbook.app.door;

import cornerbook.app.book.people.DeviceLedger;
import cornerbook.app.book.people.TabletAtWork;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.Pages;
import cornerbook.app.preference.Look;
import cornerbook.app.preference.Preferences;
import cornerbook.app.request.Caller;
import cornerbook.app.request.PageException;
import cornerbook.app.request.Told;
import cornerbook.core.say.Refused;
import cornerbook.words.Language;
import cornerbook.words.UnitSystem;
import io.helidon.http.HeaderNames;
import io.helidon.http.SetCookie;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** What a person chooses for the pages, and who works on a paired tablet from now on. */
final class PersonHandler {
    private static final Duration KEPT = Duration.ofDays(400);

    private final Pairing pairing;
    private final DeviceLedger ledger;

    PersonHandler(Desk desk, Pairing pairing) {
        this.pairing = pairing;
        this.ledger = desk.book().devices();
    }

    /** Keeps what was chosen, by person on a paired tablet and else in the browser, and goes back to where that was. */
    void prefer(ServerRequest request, ServerResponse response) {
        var typed = Form.read(request);
        var caller = Caller.current();
        var chosen = chosen(typed, caller.preferences());
        caller.tablet()
                .ifPresentOrElse(
                        tablet -> ledger.putPreferences(chooser(typed, tablet), chosen), () -> keep(response, chosen));
        answer(request, response);
    }

    /** The one who works on the tablet, or one who did and whose choice arrives late. */
    private String chooser(Form typed, TabletAtWork tablet) {
        var name = typed.get("person");
        return ledger.listWorkers(tablet.deviceId()).contains(name) ? name : tablet.person();
    }

    private static Preferences chosen(Form typed, Preferences before) {
        return before.withUnits(chosen(typed, "units", UnitSystem::find, before.units(), DoorSaid.Unknown.UNITS))
                .withLook(chosen(typed, "look", Look::find, before.look(), DoorSaid.Unknown.LOOK))
                .withWalk(chosen(typed, "walk", Preferences::findWalk, before.walk(), DoorSaid.Unknown.WALK))
                .withLanguage(chosen(typed, "language", Language::find, before.language(), DoorSaid.Unknown.LANGUAGE));
    }

    private static <T> T chosen(
            Form typed, String name, Function<String, Optional<T>> find, T before, DoorSaid.Unknown unknown) {
        return typed.has(name)
                ? find.apply(typed.get(name)).orElseThrow(() -> new PageException(400, unknown))
                : before;
    }

    private static void keep(ServerResponse response, Preferences chosen) {
        Map.of(
                        Caller.UNITS_COOKIE, chosen.units().word(),
                        Caller.LOOK_COOKIE, chosen.look().word(),
                        Caller.WALK_COOKIE, chosen.walkWords(),
                        Caller.LANGUAGE_COOKIE, chosen.language().tag())
                .forEach((name, value) -> response.headers()
                        .addCookie(SetCookie.builder(name, value)
                                .path("/")
                                .maxAge(KEPT)
                                .httpOnly(true)
                                .sameSite(SetCookie.SameSite.STRICT)
                                .build()));
    }

    /** Another person takes the tablet; asks for the PIN. */
    void takeOver(ServerRequest request, ServerResponse response) {
        var tablet = Caller.current().tablet().orElseThrow(() -> new PageException(400, new DoorSaid.OnlyOnTablet()));
        var typed = Form.read(request);
        try {
            pairing.takeOver(tablet.deviceId(), typed.get("person"), typed.get("pin"));
            answer(request, response);
        } catch (Refused e) {
            response.status(422);
            response.header(HeaderNames.CONTENT_TYPE, "text/plain; charset=utf-8");
            response.send(Told.say(e.said()).getBytes(StandardCharsets.UTF_8));
        }
    }

    /** A page is shown anew; a module that sent it goes on by itself. */
    private static void answer(ServerRequest request, ServerResponse response) {
        if (request.headers().first(HeaderNames.ACCEPT).orElse("").contains("text/html")) {
            Pages.redirect(response, cameFrom(request));
        } else {
            response.status(204);
            response.send();
        }
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
