package cornerbook.app.door;

import static java.nio.charset.StandardCharsets.UTF_8;

import cornerbook.app.book.people.CalendarAddress;
import cornerbook.app.book.people.Secret;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.days.CalendarFeed;
import cornerbook.app.desk.link.DayLinks;
import cornerbook.app.request.PageException;
import cornerbook.words.Reader;
import cornerbook.words.UnitSystem;
import io.helidon.http.HeaderNames;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.util.Optional;

/** Gives appointments to calendars, which pair with nothing: who knows the secret in the address may read them, and nothing else. */
final class CalendarHandler {
    private static final int WEEKS_BACK = 8;
    private static final int YEARS_AHEAD = 2;

    private final Desk desk;
    private final Refusals refusals;

    CalendarHandler(Desk desk, Refusals refusals) {
        this.desk = desk;
        this.refusals = refusals;
    }

    void show(ServerRequest request, ServerResponse response) {
        var address = find(Pages.pathValue(request, "file")).orElseThrow(() -> {
            refusals.count(Refusals.Reason.UNKNOWN_CALENDAR);
            return new PageException(404, new DoorSaid.NoPage());
        });
        response.header(HeaderNames.CACHE_CONTROL, "no-store");
        Pages.sendPacked(
                response, "text/calendar; charset=utf-8", write(address).getBytes(UTF_8));
    }

    /** Each that there is is compared, so that the time tells nothing of them. */
    private Optional<CalendarAddress> find(String file) {
        var hash = Secret.hash(
                file.endsWith(DayLinks.CALENDAR_FILE)
                        ? file.substring(0, file.length() - DayLinks.CALENDAR_FILE.length())
                        : "");
        return desk.book().calendars().list().stream()
                .filter(address -> Secret.isSame(address.secretHash(), hash))
                .findFirst();
    }

    private String write(CalendarAddress address) {
        var zone = desk.clock().getZone();
        var reader = new Reader(address.language(), UnitSystem.METRIC, zone);
        var labels = reader.labels("app/door");
        boolean ofShop = address.whose().equals(CalendarAddress.SHOP);
        return CalendarFeed.of(
                ofShop ? labels.of("calendar-of-shop") : labels.of("calendar-of-person", "person", address.whose()),
                desk
                        .book()
                        .appointments()
                        .list(desk.today().minusWeeks(WEEKS_BACK), desk.today().plusYears(YEARS_AHEAD))
                        .stream()
                        .filter(each ->
                                ofShop || address.whose().equals(each.plan().worker()))
                        .toList(),
                zone,
                reader);
    }
}
