package cornerbook.app.desk.store;

import cornerbook.app.book.photo.KeptPhoto;
import cornerbook.app.book.photo.Photo;
import cornerbook.app.book.rack.Intake;
import cornerbook.app.book.rack.KeptSet;
import cornerbook.app.book.rack.StorageTerm;
import cornerbook.app.book.store.BookException;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.FreePlaces;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.Typed;
import cornerbook.app.desk.link.StoreLinks;
import cornerbook.app.photo.PhotoIntake;
import cornerbook.app.request.PageException;
import cornerbook.app.request.RequestBody;
import cornerbook.app.request.Told;
import cornerbook.app.sheet.Letterhead;
import cornerbook.app.sheet.store.StoreReceipt;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Visit;
import cornerbook.core.finding.Subject.Part;
import cornerbook.core.say.Refused;
import cornerbook.core.store.Lying;
import io.helidon.http.HeaderNames;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** One set in the store, how it was taken in, and the receipt for it. */
public final class SetHandler {
    private static final int UNFIT = 422;
    private static final int REFUSED = 409;
    /** What photos of a set are about; those that nobody filed are shown as well. */
    private static final Set<Part> OF_WHEELS = EnumSet.of(
            Part.WHEEL_SET,
            Part.TREAD_PATTERN,
            Part.TREAD_DIFFERENCE,
            Part.TYRE_AGE,
            Part.TYRE_DAMAGE,
            Part.RIM,
            Part.PRESSURE_SENSOR,
            Part.TYRE_FITTING);

    private final Desk desk;
    private final Pages pages;
    private final Letterhead letterhead;

    public SetHandler(Desk desk, Pages pages, Letterhead letterhead) {
        this.desk = desk;
        this.pages = pages;
        this.letterhead = letterhead;
    }

    public void show(ServerRequest request, ServerResponse response) {
        send(response, 200, get(Form.ofQuery(request)), Form.EMPTY, "");
    }

    private void send(ServerResponse response, int status, KeptSet set, Form again, String error) {
        pages.send(
                response,
                status,
                "desk/store/kept",
                new SetPage(
                        Shelves.of(desk),
                        set,
                        desk.book().intakes().find(set.key()).orElse(null),
                        desk.book().terms().find(set.key()).orElse(null),
                        desk.book().stock().listMoves(set.key()),
                        photos(desk.getHistory(set.key().vehicleId()), set).stream()
                                .map(KeptPhoto::photo)
                                .toList(),
                        again,
                        error));
    }

    private KeptSet get(Form asked) {
        return desk.book()
                .stock()
                .find(new KeptSet.Key(asked.get("car"), asked.get("set")))
                .orElseThrow(() -> new PageException(404, new StoreSaid.NoSet()));
    }

    /** How it was taken in. */
    public void takeIn(ServerRequest request, ServerResponse response) {
        var typed = Form.read(request);
        var set = get(typed);
        try {
            desk.book()
                    .intakes()
                    .add(
                            typed.identity("id"),
                            set.key(),
                            new Intake(
                                    typed.choice("lies", List.of(Lying.values()))
                                            .orElseThrow(() -> new Refused(new StoreSaid.NoLying())),
                                    typed.get("rims").equals("yes"),
                                    pressureKpa(typed.get("pressure")),
                                    StoreHandler.by(typed, desk)));
        } catch (BookException e) {
            send(response, REFUSED, set, typed, Typed.sentence(e));
            return;
        } catch (IllegalArgumentException e) {
            send(response, UNFIT, set, typed, Typed.sentence(e));
            return;
        }
        Pages.redirect(
                response, StoreLinks.storedSet(set.key().vehicleId(), set.key().setId()));
    }

    /** Until when its storage is agreed or paid for. */
    public void agree(ServerRequest request, ServerResponse response) {
        var typed = Form.read(request);
        var set = get(typed);
        try {
            desk.book()
                    .terms()
                    .add(
                            typed.identity("id"),
                            set.key(),
                            new StorageTerm(day(typed.get("until")), StoreHandler.by(typed, desk)),
                            desk.today());
        } catch (BookException e) {
            send(response, REFUSED, set, typed, Typed.sentence(e));
            return;
        } catch (IllegalArgumentException e) {
            send(response, UNFIT, set, typed, Typed.sentence(e));
            return;
        }
        Pages.redirect(
                response, StoreLinks.storedSet(set.key().vehicleId(), set.key().setId()));
    }

    private LocalDate day(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw new Refused(new StoreSaid.NoDay(desk.today().toString()));
        }
    }

    /** A photo of how it was taken in; the same one sent again counts once. */
    public void addPhoto(ServerRequest request, ServerResponse response) {
        var asked = Form.ofQuery(request);
        var set = get(asked);
        response.header(HeaderNames.CONTENT_TYPE, "text/plain; charset=UTF-8");
        try {
            var visit = visit(desk.getHistory(set.key().vehicleId()), set)
                    .orElseThrow(() -> new Refused(new StoreSaid.NoVisitOnSet()));
            var jpeg = PhotoIntake.take(
                    RequestBody.read(request, PhotoIntake.LARGEST_BYTES).orElseThrow(PhotoIntake::tooLarge));
            var id = UUID.nameUUIDFromBytes((visit.id() + jpeg.sha256()).getBytes(StandardCharsets.UTF_8));
            var photo = new Photo(
                    id.toString(),
                    null,
                    Part.WHEEL_SET,
                    Objects.requireNonNullElse(asked.person(), ""),
                    desk.now(),
                    true);
            desk.book().photos().add(visit.id(), new KeptPhoto(photo, jpeg));
            response.send("");
        } catch (IllegalArgumentException e) {
            response.status(UNFIT);
            response.send(Typed.sentence(e));
        }
    }

    private static @Nullable Double pressureKpa(String text) {
        return text.isEmpty()
                ? null
                : Typed.valueOf(text, Measure.PRESSURE_SET.unit(), Told.reader().units());
    }

    /** In the customer's language. */
    public void sendReceipt(ServerRequest request, ServerResponse response) {
        var set = get(Form.ofQuery(request));
        var history = desk.getHistory(set.key().vehicleId());
        var stored = history.sets().stream()
                .filter(each -> each.id().equals(set.key().setId()))
                .findFirst()
                .orElseThrow();
        Pages.sendPdf(
                response,
                "receipt-" + desk.today(),
                StoreReceipt.render(
                        history,
                        stored,
                        new StoreReceipt.Storage(
                                desk.book().intakes().find(set.key()).orElse(null),
                                desk.book()
                                        .terms()
                                        .find(set.key())
                                        .filter(term -> !term.until().isBefore(desk.today()))
                                        .orElse(null),
                                FreePlaces.of(desk)
                                        .forLabels(each -> each.key().equals(set.key()))
                                        .get(set.key())),
                        desk.today(),
                        photos(history, set),
                        letterhead,
                        desk.customerReader(history)));
    }

    /** Those chosen for the sheet of the last visit to which the car came on it, as far as they show its wheels. */
    private List<KeptPhoto> photos(CarHistory history, KeptSet set) {
        return visit(history, set).map(visit -> desk.book().photos().listKept(visit.id())).orElse(List.of()).stream()
                .filter(kept ->
                        kept.photo().onSheet() && isOfWheels(kept.photo().part()))
                .toList();
    }

    /** The last one to which the car came on it. */
    private static Optional<Visit> visit(CarHistory history, KeptSet set) {
        return history.visits().reversed().stream()
                .filter(visit -> set.tags().stream().anyMatch(visit.arrivedOn()::containsValue))
                .findFirst();
    }

    private static boolean isOfWheels(@Nullable Part part) {
        return part == null || OF_WHEELS.contains(part);
    }
}
