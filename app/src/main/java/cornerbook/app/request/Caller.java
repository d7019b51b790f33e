package cornerbook.app.request;

import cornerbook.app.book.people.TabletAtWork;
import cornerbook.app.preference.Look;
import cornerbook.app.preference.Preferences;
import cornerbook.words.Language;
import cornerbook.words.Reader;
import cornerbook.words.UnitSystem;
import io.helidon.http.HeaderNames;
import io.helidon.http.ServerRequestHeaders;
import java.time.ZoneOffset;
import java.util.Optional;

/**
 * Who asks: the paired tablet with the person who works on it, or else a browser of this machine; known to everything that
 * answers one request.
 *
 * @param preferences of the person, or else of the browser, which keeps them in cookies
 * @param unpacks whether the browser takes answers in gzip form (RFC 1952)
 */
public record Caller(Optional<TabletAtWork> tablet, Preferences preferences, boolean unpacks) {
    public static final String UNITS_COOKIE = "units";
    public static final String LANGUAGE_COOKIE = "language";
    public static final String LOOK_COOKIE = "look";
    public static final String WALK_COOKIE = "walk";

    private static final ScopedValue<Caller> CURRENT = ScopedValue.newInstance();
    private static final Caller NOBODY = new Caller(Optional.empty(), Preferences.DEFAULT, false);

    /** Of the request that is being answered; nobody outside of one. */
    public static Caller current() {
        return CURRENT.orElse(NOBODY);
    }

    public static Caller of(Optional<TabletAtWork> tablet, ServerRequestHeaders headers) {
        return new Caller(
                tablet,
                tablet.map(TabletAtWork::preferences).orElseGet(() -> ofBrowser(headers)),
                headers.first(HeaderNames.ACCEPT_ENCODING).orElse("").contains("gzip"));
    }

    /** Who turns what is said into words for this person. */
    public Reader reader() {
        return new Reader(preferences.language(), preferences.units(), ZoneOffset.UTC);
    }

    public void run(Runnable answer) {
        ScopedValue.where(CURRENT, this).run(answer);
    }

    private static Preferences ofBrowser(ServerRequestHeaders headers) {
        var usual = Preferences.DEFAULT;
        return new Preferences(
                cookie(headers, UNITS_COOKIE).flatMap(UnitSystem::find).orElse(usual.units()),
                cookie(headers, LOOK_COOKIE).flatMap(Look::find).orElse(usual.look()),
                cookie(headers, WALK_COOKIE).flatMap(Preferences::findWalk).orElse(usual.walk()),
                cookie(headers, LANGUAGE_COOKIE)
                        .or(() -> headers.first(HeaderNames.ACCEPT_LANGUAGE))
                        .flatMap(Language::find)
                        .orElse(usual.language()));
    }

    private static Optional<String> cookie(ServerRequestHeaders headers, String name) {
        return headers.cookies().first(name).asOptional();
    }
}
