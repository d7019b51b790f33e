package cornerbook.app.desk.shop;

import cornerbook.app.book.people.CalendarAddress;
import cornerbook.app.book.people.Secret;
import cornerbook.app.book.shop.Absence;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.DeskSaid;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.Typed;
import cornerbook.app.desk.link.DayLinks;
import cornerbook.app.request.PageException;
import cornerbook.app.request.Told;
import cornerbook.core.days.Skill;
import cornerbook.core.days.WorkHours;
import cornerbook.core.say.Refused;
import io.helidon.http.HeaderNames;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** When people work, when the shop is closed, and which calendars may read the appointments. */
public final class HoursHandler {
    public static final String PAGE = "/shop/hours";
    private static final int LONGEST_REASON = 80;

    private final Desk desk;
    private final Pages pages;
    private final IntFunction<String> publicAddress;

    /** @param publicAddress of the server, by the port that it was asked at */
    public HoursHandler(Desk desk, Pages pages, IntFunction<String> publicAddress) {
        this.desk = desk;
        this.pages = pages;
        this.publicAddress = publicAddress;
    }

    public void show(ServerRequest request, ServerResponse response) {
        send(response, 200, Form.EMPTY, "");
    }

    /** The hours of one person. */
    public void save(ServerRequest request, ServerResponse response) {
        var typed = Form.read(request);
        var person = typed.get("who");
        requirePerson(person);
        try {
            desk.book().hours().put(person, read(typed));
            desk.book()
                    .skills()
                    .put(
                            person,
                            Arrays.stream(Skill.values())
                                    .filter(skill -> typed.has(skill.name()))
                                    .collect(Collectors.toSet()),
                            typed.person(),
                            desk.now());
            Pages.redirect(response, PAGE);
        } catch (IllegalArgumentException e) {
            send(response, 422, typed, Typed.sentence(e));
        }
    }

    private void requirePerson(String person) {
        if (!desk.book().devices().listPeople().contains(person)) {
            throw new PageException(422, new ShopSaid.NobodyOfThatName(person));
        }
    }

    private static Map<DayOfWeek, WorkHours> read(Form typed) {
        var hours = new EnumMap<DayOfWeek, WorkHours>(DayOfWeek.class);
        for (var weekday : DayOfWeek.values()) {
            try {
                hours.put(weekday, WorkHours.parse(typed.get(weekday.name())));
            } catch (Refused e) {
                throw new Refused(new ShopSaid.HoursOf(HoursPage.nameOf(weekday), e.said()));
            }
        }
        return hours;
    }

    public void close(ServerRequest request, ServerResponse response) {
        var typed = Form.read(request);
        try {
            var day = day(typed);
            if (typed.get("why").length() > LONGEST_REASON) {
                throw new Refused(new ShopSaid.ReasonTooLong(LONGEST_REASON));
            }
            desk.book().hours().close(day, typed.get("why"));
            Pages.redirect(response, PAGE);
        } catch (IllegalArgumentException e) {
            send(response, 422, typed, Typed.sentence(e));
        }
    }

    public void open(ServerRequest request, ServerResponse response) {
        try {
            desk.book().hours().open(day(Form.read(request)));
            Pages.redirect(response, PAGE);
        } catch (IllegalArgumentException e) {
            send(response, 422, Form.EMPTY, Typed.sentence(e));
        }
    }

    /** Somebody is not there on some days; without a last day, on one. */
    public void away(ServerRequest request, ServerResponse response) {
        var typed = Form.read(request);
        try {
            var person = typed.get("person-away");
            requirePerson(person);
            var first = day(typed.get("first"));
            var last = typed.get("last").isEmpty() ? first : day(typed.get("last"));
            if (last.isBefore(desk.today())) {
                throw new Refused(new ShopSaid.AwayIsOver(last));
            }
            desk.book().hours().away(new Absence(typed.get("id"), person, first, last), typed.person(), desk.now());
            Pages.redirect(response, PAGE + "#away");
        } catch (IllegalArgumentException e) {
            send(response, 422, typed, Typed.sentence(e));
        }
    }

    public void back(ServerRequest request, ServerResponse response) {
        var typed = Form.read(request);
        desk.book().hours().back(typed.get("id"), typed.person(), desk.now());
        Pages.redirect(response, PAGE + "#away");
    }

    /** A new address for the calendar of a person or of the shop. It is shown in this answer and never again. */
    public void makeCalendar(ServerRequest request, ServerResponse response) {
        var whose = whose(request);
        var secret = Secret.make();
        desk.book()
                .calendars()
                .put(new CalendarAddress(
                        whose, Secret.hash(secret), Told.reader().language(), desk.now()));
        response.header(HeaderNames.CACHE_CONTROL, "no-store");
        send(
                response,
                200,
                Form.EMPTY,
                "",
                new HoursPage.MadeCalendar(
                        whose,
                        publicAddress.apply(request.localPeer().port())
                                + DayLinks.CALENDAR
                                + secret
                                + DayLinks.CALENDAR_FILE));
    }

    /** What reads the calendar of a person or of the shop gets nothing any more. */
    public void withdrawCalendar(ServerRequest request, ServerResponse response) {
        desk.book().calendars().withdraw(whose(request));
        Pages.redirect(response, PAGE);
    }

    private String whose(ServerRequest request) {
        var whose = Form.read(request).get("whose");
        if (!whose.equals(CalendarAddress.SHOP)) {
            requirePerson(whose);
        }
        return whose;
    }

    private LocalDate day(Form typed) {
        return day(typed.get("day"));
    }

    private LocalDate day(String typed) {
        try {
            return LocalDate.parse(typed);
        } catch (DateTimeParseException e) {
            throw new Refused(new DeskSaid.NoDay(desk.today().toString()));
        }
    }

    private void send(ServerResponse response, int status, Form typed, String error) {
        send(response, status, typed, error, null);
    }

    private void send(
            ServerResponse response, int status, Form typed, String error, HoursPage.@Nullable MadeCalendar made) {
        var hours = desk.book().hours();
        pages.send(
                response,
                status,
                "desk/shop/hours",
                new HoursPage(
                        desk.today(),
                        desk.book().devices().listPeople(),
                        new HoursPage.Kept(
                                hours.list(), desk.book().skills().list().of(), hours.listAway(desk.today())),
                        hours.listClosed(desk.today()),
                        desk.book().calendars().list(),
                        made,
                        typed,
                        error));
    }
}
