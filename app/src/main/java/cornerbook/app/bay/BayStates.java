package cornerbook.app.bay;

import cornerbook.app.bay.BayState.Departed;
import cornerbook.app.bay.BayState.Rival;
import cornerbook.app.bay.BayState.Stored;
import cornerbook.app.bay.BayState.Ticked;
import cornerbook.app.book.bay.BayNotes;
import cornerbook.app.book.bay.Departure;
import cornerbook.app.book.bay.ReadingAuthor;
import cornerbook.app.book.bay.RivalReading;
import cornerbook.app.book.work.StandingTicks;
import cornerbook.app.book.bay.VisitInBay;
import cornerbook.app.book.work.WorkTick;
import cornerbook.app.desk.asked.Slot;
import cornerbook.core.air.judge.AirToSet;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.tool.ShopTool;
import cornerbook.words.Reader;
import java.time.Instant;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Says what the book has of a visit. */
final class BayStates {
    private BayStates() {}

    /**
     * The state of a visit.
     *
     * @param onCar who has its sheet open
     */
    static BayState of(VisitInBay read, List<String> onCar, Instant now) {
        var visit = read.visit();
        var notes = read.notes();
        var standing = new LinkedHashMap<String, Stored>();
        new StandingReadings(visit)
                .all()
                .forEach(reading -> standing.put(
                        key(reading), stored(reading, notes.authors().get(reading.id()))));
        return new BayState(
                now.toString(),
                visit.leftOn(),
                standing,
                notes.rivals().stream().map(rival -> rival(rival, standing)).toList(),
                ticks(notes, visit),
                notes.photos(),
                visit.tools().stream().collect(Collectors.toMap(ShopTool::kind, ShopTool::id)),
                air(visit, read.placardsKpa()),
                onCar,
                notes.departure().map(BayStates::departed).orElse(null));
    }

    private static Map<Corner, Map<String, String>> air(Visit visit, Map<Axle, Double> placardsKpa) {
        var air = new EnumMap<Corner, Map<String, String>>(Corner.class);
        for (var corner : Corner.values()) {
            double placardKpa = Objects.requireNonNull(placardsKpa.get(corner.axle()), corner::name);
            air.put(corner, BayUnits.saidToAll(Reader.DEFAULT.say(AirToSet.of(placardKpa, visit).sentence())));
        }
        return air;
    }

    private static Stored stored(Reading reading, @Nullable ReadingAuthor author) {
        return new Stored(
                reading.id(), shown(reading), BayUnits.shownToAll(reading), author == null ? null : author.person());
    }

    private static Map<String, Ticked> ticks(BayNotes notes, Visit visit) {
        return StandingTicks.of(notes.ticks()).on(visit.leftOn()).stream()
                .collect(Collectors.toMap(
                        WorkTick::tick,
                        tick -> new Ticked(tick.id(), tick.done(), tick.person(), tick.wheelTag(), tick.seen())));
    }

    private static Rival rival(RivalReading rival, Map<String, Stored> standing) {
        var key = key(rival.reading());
        var other = standing.get(key);
        return new Rival(
                rival.reading().id(),
                key,
                shown(rival.reading()),
                rival.person(),
                other == null ? "–" : other.written());
    }

    private static Departed departed(Departure departure) {
        return new Departed(
                departure.person(),
                departure.madeAt().toString(),
                departure.reasons().stream()
                        .map(reason -> reason.sentence() + " " + reason.reason())
                        .toList());
    }

    /** As the field shows it. */
    static String shown(Reading reading) {
        var scale = reading.measure().scale();
        return scale == null ? reading.asWritten() : scale.wordOf(reading.value());
    }

    private static String key(Reading reading) {
        return new Slot(reading.measure(), reading.corner(), reading.wheelTag(), reading.spot()).key();
    }
}
