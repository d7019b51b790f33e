package cornerbook.app.bay;

import cornerbook.app.bay.BayState.Advised;
import cornerbook.app.bay.BayState.Air;
import cornerbook.app.bay.BayState.Asking;
import cornerbook.app.bay.BayState.Departed;
import cornerbook.app.bay.BayState.Plan;
import cornerbook.app.bay.BayState.Rival;
import cornerbook.app.bay.BayState.Stored;
import cornerbook.app.bay.BayState.StoredOdometer;
import cornerbook.app.bay.BayState.Ticked;
import cornerbook.app.bay.BayState.Unsafe;
import cornerbook.app.book.bay.BayNotes;
import cornerbook.app.book.bay.Departure;
import cornerbook.app.book.bay.ReadingAuthor;
import cornerbook.app.book.bay.RivalReading;
import cornerbook.app.book.bay.VisitInBay;
import cornerbook.app.book.estimate.WorkOfVisit;
import cornerbook.app.book.visit.VisitState;
import cornerbook.app.book.work.Declined;
import cornerbook.app.book.work.Remark;
import cornerbook.app.book.work.StandingTicks;
import cornerbook.app.book.work.WorkTick;
import cornerbook.app.desk.asked.Slot;
import cornerbook.app.desk.asked.WheelProposal.Fill;
import cornerbook.core.air.judge.AirToSet;
import cornerbook.core.assess.Advice;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Finding;
import cornerbook.core.quantity.Quantities;
import cornerbook.core.release.Release;
import cornerbook.core.say.Amount;
import cornerbook.core.tool.ShopTool;
import cornerbook.words.UnitSystem;
import java.time.Instant;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Says what the book has of a visit. */
final class BayStates {
    private static final String KPA = "kPa";

    private BayStates() {}

    /**
     * The state of a visit.
     *
     * @param whereabouts of its car
     * @param findings on it
     * @param advice what they ask for
     * @param work what was estimated and agreed of it
     * @param asking who is asked about what is not
     * @param fills the sets that were read out of the store, as they may go on
     * @param onCar who has its sheet open
     */
    static BayState of(
            VisitInBay read,
            VisitState whereabouts,
            List<Finding> findings,
            List<Advice> advice,
            WorkOfVisit work,
            @Nullable Asking asking,
            List<Fill> fills,
            List<String> onCar,
            Instant now) {
        var visit = read.visit();
        var notes = read.notes();
        var standing = new LinkedHashMap<String, Stored>();
        new StandingReadings(visit)
                .all()
                .forEach(reading -> standing.put(
                        key(reading), stored(reading, notes.authors().get(reading.id()))));
        return new BayState(
                now.toString(),
                whereabouts,
                odometer(visit),
                visit.leftOn(),
                standing,
                notes.rivals().stream().map(rival -> rival(rival, standing)).toList(),
                ticks(notes, visit),
                notes.photos(),
                visit.card().tools().stream().collect(Collectors.toMap(ShopTool::kind, ShopTool::id)),
                air(visit, read.placardsKpa()),
                Release.unsafe(visit, findings).stream()
                        .map(point -> new Unsafe(point.key(), BayReader.forAll(bay -> bay.say(point))))
                        .toList(),
                onCar,
                notes.departure().map(BayStates::departed).orElse(null),
                notes.remarks().stream().collect(Collectors.toMap(Remark::topic, Remark::words)),
                advice.stream()
                        .filter(Advice::mayBeDeclined)
                        .map(each -> advised(each, notes.declined(), work))
                        .flatMap(Optional::stream)
                        .toList(),
                asking,
                fills.stream()
                        .map(fill ->
                                new Plan(fill.setId(), fill.wheelAt(), BayReader.forAll(bay -> bay.say(fill.hint()))))
                        .toList());
    }

    /** Empty for what nobody has to answer before the next visit. */
    private static Optional<Advised> advised(Advice advice, List<Declined> declined, WorkOfVisit work) {
        var asked = advice.asked();
        var standing = work.of(advice.key());
        boolean agreed = standing.stream().anyMatch(WorkOfVisit.Standing::isAgreed);
        boolean refused = standing.stream().anyMatch(WorkOfVisit.Standing::isDeclined);
        var declinedBy = declined.stream()
                .filter(each -> Advice.isSameWork(each.advice(), advice.key()))
                .map(Declined::saidBy)
                .findFirst()
                .orElse(null);
        if (advice.isForNextVisit() && !refused && declinedBy == null) {
            return Optional.empty();
        }
        return Optional.of(new Advised(
                advice.key(),
                BayReader.forAll(bay -> bay.reader().begin(asked)),
                declinedBy,
                advice.findings().stream()
                        .map(finding -> finding.subject().corner())
                        .filter(Objects::nonNull)
                        .distinct()
                        .toList(),
                agreed || work.estimates().isEmpty()
                        ? null
                        : BayReader.forAll(bay -> bay.say(new BaySaid.NotAgreed(refused, asked)))));
    }

    private static StoredOdometer odometer(Visit visit) {
        return new StoredOdometer(
                Quantities.write(visit.odometerKm(), "km"),
                Arrays.stream(UnitSystem.values())
                        .collect(Collectors.toMap(UnitSystem::word, units -> units.field(visit.odometerKm(), "km"))));
    }

    private static Map<Corner, Map<String, Map<String, Air>>> air(Visit visit, Map<Axle, Double> placardsKpa) {
        var air = new EnumMap<Corner, Map<String, Map<String, Air>>>(Corner.class);
        for (var corner : Corner.values()) {
            var placardKpa = placardsKpa.get(corner.axle());
            if (placardKpa == null) {
                continue;
            }
            var toSet = AirToSet.of(placardKpa, visit);
            var see = new BaySaid.AirToSee(Amount.of(toSet.gaugeKpa(), KPA));
            var from = from(toSet, visit);
            var limit = toSet.limit(corner);
            air.put(corner, BayReader.forAll(bay -> new Air(bay.say(see), bay.say(from), bay.limit(limit))));
        }
        return air;
    }

    private static BaySaid.AirFrom from(AirToSet air, Visit visit) {
        var readings = new StandingReadings(visit);
        double offsetKpa = air.gaugeKpa() - air.trueKpa();
        var offset = Amount.of(Math.abs(offsetKpa), KPA);
        return new BaySaid.AirFrom(
                Amount.of(air.placardKpa(), KPA),
                air.warmed() ? celsius(readings, Measure.OUTSIDE_TEMPERATURE) : null,
                air.warmed() ? celsius(readings, Measure.TYRE_TEMPERATURE) : null,
                offsetKpa > 0 ? offset : null,
                offsetKpa < 0 ? offset : null);
    }

    private static @Nullable Amount celsius(StandingReadings readings, Measure measure) {
        return readings.ofVehicle(measure)
                .map(reading -> Amount.of(reading.value(), measure.unit()))
                .orElse(null);
    }

    private static Stored stored(Reading reading, @Nullable ReadingAuthor author) {
        return new Stored(
                reading.id(), written(reading), BayReader.shownToAll(reading), author == null ? null : author.person());
    }

    private static Map<String, Ticked> ticks(BayNotes notes, Visit visit) {
        return StandingTicks.of(notes.ticks()).on(visit.leftOn()).stream()
                .collect(Collectors.toMap(
                        WorkTick::tick,
                        tick -> new Ticked(
                                tick.id(), tick.done(), tick.person(), tick.wheelTag(), tick.seen(), tick.reason())));
    }

    private static Rival rival(RivalReading rival, Map<String, Stored> standing) {
        var key = key(rival.reading());
        var other = standing.get(key);
        return new Rival(
                rival.reading().id(),
                key,
                written(rival.reading()),
                rival.person(),
                other == null ? null : other.written());
    }

    private static Departed departed(Departure departure) {
        return new Departed(departure.person(), departure.madeAt().toString(), departure.reasons());
    }

    /** As the person wrote it, or by the name of the word that was chosen. */
    static String written(Reading reading) {
        var scale = reading.measure().scale();
        return scale == null ? reading.asWritten() : scale.wordOf(reading.value());
    }

    private static String key(Reading reading) {
        return new Slot(reading.measure(), reading.corner(), reading.wheelTag(), reading.spot()).key();
    }
}
