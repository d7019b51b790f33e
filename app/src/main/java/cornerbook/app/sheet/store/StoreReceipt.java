package cornerbook.app.sheet.store;

import cornerbook.app.book.photo.KeptPhoto;
import cornerbook.app.book.rack.Intake;
import cornerbook.app.book.rack.StorageTerm;
import cornerbook.app.sheet.Letterhead;
import cornerbook.app.sheet.PhotosSection;
import cornerbook.app.sheet.SheetPage;
import cornerbook.app.sheet.SheetPdf;
import cornerbook.app.sheet.SheetStyle;
import cornerbook.app.sheet.SheetTable;
import cornerbook.app.sheet.SheetTemplates;
import cornerbook.app.sheet.SheetText;
import cornerbook.app.sheet.TreadAcross;
import cornerbook.app.sheet.label.StorePlace;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Visit;
import cornerbook.core.car.Wheel;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.SetOf;
import cornerbook.core.corner.Spot;
import cornerbook.core.say.Amount;
import cornerbook.words.Labels;
import cornerbook.words.Reader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What a customer is given for a set that is stored: whose it is, each wheel as it was read last, how it lies, and photos. */
public final class StoreReceipt {
    private static final String ROOM = "app/sheet/store";
    private static final String NOT_READ = "–";

    private final CarHistory history;
    private final WheelSet set;
    private final Storage storage;
    private final LocalDate day;
    private final List<KeptPhoto> photos;
    private final Letterhead letterhead;
    private final Reader reader;
    private final Labels labels;

    private StoreReceipt(
            CarHistory history,
            WheelSet set,
            Storage storage,
            LocalDate day,
            List<KeptPhoto> photos,
            Letterhead letterhead,
            Reader reader) {
        this.history = history;
        this.set = set;
        this.storage = storage;
        this.day = day;
        this.photos = List.copyOf(photos);
        this.letterhead = letterhead;
        this.reader = reader;
        this.labels = reader.labels(ROOM);
    }

    /**
     * How a set is stored.
     *
     * @param intake how it was said to be; null where nobody said so
     * @param term until when it is stored; null when nothing was agreed, or what was is over
     * @param place where it lies or is to be laid; null where nobody knows
     */
    public record Storage(
            @Nullable Intake intake,
            @Nullable StorageTerm term,
            @Nullable StorePlace place) {}

    /**
     * The receipt of a set.
     *
     * @param storage what is known of how it is stored
     * @param day of the receipt
     * @param photos that show it
     */
    public static byte[] render(
            CarHistory history,
            WheelSet set,
            Storage storage,
            LocalDate day,
            List<KeptPhoto> photos,
            Letterhead letterhead,
            Reader reader) {
        try {
            return SheetPdf.of(SheetTemplates.fill(
                    "receipt", new StoreReceipt(history, set, storage, day, photos, letterhead, reader)));
        } catch (IOException e) {
            throw new UncheckedIOException("the receipt could not be made", e);
        }
    }

    public Labels labels() {
        return labels;
    }

    /** The labels of all sheets. */
    public Labels common() {
        return reader.labels(SheetPage.ROOM);
    }

    public String language() {
        return reader.language().tag();
    }

    public String css() {
        return SheetStyle.css(common());
    }

    public String shop() {
        return SheetText.name(letterhead.shopName());
    }

    public String shopReached() {
        return letterhead.reached();
    }

    public boolean invented() {
        return letterhead.invented();
    }

    public String customer() {
        return SheetText.name(history.customer().name());
    }

    public String title() {
        return labels.of("title", "set", new SetOf(set.season()));
    }

    public List<SheetPage.Fact> facts() {
        return List.of(
                new SheetPage.Fact(labels.of("customer"), customer()),
                new SheetPage.Fact(
                        labels.of("car"), SheetText.name(history.vehicle().name())),
                new SheetPage.Fact(
                        labels.of("plate"), SheetText.name(history.vehicle().plate())),
                new SheetPage.Fact(labels.of("day"), reader.day(day)));
    }

    /** Each wheel as it was read last. */
    public SheetTable wheels() {
        return new SheetTable(
                Stream.of("tag", "tyre", "made", "tread", "pressure")
                        .map(labels::of)
                        .toList(),
                set.wheels().stream().map(this::row).toList());
    }

    private List<String> row(Wheel wheel) {
        return List.of(
                SheetText.name(wheel.tag()),
                SheetText.name(wheel.tyre().size()),
                Objects.requireNonNullElse(wheel.tyre().tin(), NOT_READ),
                TreadAcross.words(
                        Stream.of(Spot.OUTER, Spot.CENTRE, Spot.INNER)
                                .map(spot -> last(wheel, List.of(Measure.TREAD_DEPTH), spot)
                                        .map(read -> OptionalDouble.of(read.value()))
                                        .orElseGet(OptionalDouble::empty))
                                .toList(),
                        reader),
                last(wheel, List.of(Measure.PRESSURE_SET, Measure.PRESSURE_FOUND), null)
                        .map(read -> reader.say(Amount.of(read.value(), Measure.PRESSURE_SET.unit())))
                        .orElse(NOT_READ));
    }

    /** What was read of a wheel at the latest visit at which it was read. */
    private Optional<Reading> last(Wheel wheel, List<Measure> measures, @Nullable Spot spot) {
        return history.visits().reversed().stream()
                .flatMap(visit -> measures.stream().flatMap(measure -> of(visit, wheel, measure, spot)))
                .findFirst();
    }

    private static Stream<Reading> of(Visit visit, Wheel wheel, Measure measure, @Nullable Spot spot) {
        return new StandingReadings(visit)
                .all().stream()
                        .filter(reading -> reading.measure() == measure
                                && reading.spot() == spot
                                && wheel.tag().equals(reading.wheelTag()));
    }

    /** How it lies, in sentences. */
    public List<String> lying() {
        return Stream.of(place(), how(), until()).flatMap(List::stream).toList();
    }

    private List<String> place() {
        var place = storage.place();
        return place == null
                ? List.of()
                : List.of(labels.of(
                        place.isProposed() ? "is-laid-at" : "lies-at", "place", SheetText.name(place.name())));
    }

    private List<String> how() {
        var intake = storage.intake();
        if (intake == null) {
            return List.of();
        }
        var kpa = intake.pressureKpa();
        return List.of(labels.of(
                "lies",
                "how",
                intake.lies(),
                "rims",
                intake.onRims(),
                "pressure",
                kpa == null ? null : Amount.of(kpa, "kPa")));
    }

    private List<String> until() {
        var term = storage.term();
        return term == null ? List.of() : List.of(labels.of("until", "day", term.until()));
    }

    public PhotosSection photos() {
        return PhotosSection.of(photos, reader);
    }
}
