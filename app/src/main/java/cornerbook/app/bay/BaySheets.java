package cornerbook.app.bay;

import cornerbook.app.request.Told;
import cornerbook.app.bay.BaySheet.Expected;
import cornerbook.app.bay.BaySheet.Fasteners;
import cornerbook.app.bay.BaySheet.Last;
import cornerbook.app.bay.BaySheet.WheelCard;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.OpenVisit;
import cornerbook.app.desk.Words;
import cornerbook.app.desk.asked.Slot;
import cornerbook.app.desk.asked.ToolChoice;
import cornerbook.app.desk.asked.VisitSlots;
import cornerbook.app.desk.asked.WheelProposal;
import cornerbook.app.desk.asked.WheelProposal.Fill;
import cornerbook.app.judge.Judged;
import cornerbook.core.assess.Assessor;
import cornerbook.core.brake.judge.ThicknessPrediction;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Visit;
import cornerbook.words.UnitSystem;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.torque.TighteningOrder;
import cornerbook.core.finding.Subject;
import cornerbook.core.tread.judge.TreadPrediction;
import cornerbook.core.torque.WheelFastener;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;

/** Makes the sheet of a visit from the book. */
final class BaySheets {
    private static final double ANY_DEPTH_MM = 5;

    private final Desk desk;
    private final Assessor assessor;
    private final boolean secondCheck;

    BaySheets(Desk desk) {
        this.desk = desk;
        this.assessor = desk.assessor();
        this.secondCheck = desk.book().rules().asksSecondCheck();
    }

    /** In the units of every person that there can be: who reads it next is not known while it is on a tablet. */
    Map<String, BaySheet> makeInEachUnits(OpenVisit open, String assets) {
        var standing = new WheelProposal(assessor, open).standing();
        var treads = treads(open);
        var thicknesses = judged(open, assessor::thicknessPredictions);
        var sheets = new LinkedHashMap<String, BaySheet>();
        for (var system : UnitSystem.values()) {
            sheets.put(system.word(), make(open, assets, standing, treads, thicknesses, BayUnits.of(system)));
        }
        return sheets;
    }

    private BaySheet make(
            OpenVisit open,
            String assets,
            Fill standing,
            List<TreadPrediction> treads,
            List<ThicknessPrediction> thicknesses,
            BayUnits units) {
        var history = open.history();
        var visit = open.visit();
        var vehicle = history.vehicle();
        var before = history.visits().subList(0, history.visits().indexOf(visit));
        var imagined = new VisitSlots(vehicle, visit.withLeftOn(standing.wheelAt()));
        return new BaySheet(
                visit.id(),
                assets,
                vehicle.name(),
                vehicle.plate(),
                Words.day(visit.date()),
                units.sentence(Words.km(visit.odometerKm())),
                new BaySteps(vehicle, imagined, new FieldMaker(before, thicknesses, units)).list(),
                visit.arrivedOn(),
                standing.wheelAt(),
                units.sentence(standing.hint()),
                wheels(history, before, treads, units),
                fasteners(vehicle.fastener(), units),
                OpenCautions.all(secondCheck),
                Map.of(BaySheet.Seen.CORNER, partsSeen(Corner.LF), BaySheet.Seen.CAR, partsSeen(null)),
                history.visits().stream()
                        .map(Visit::technician)
                        .filter(Objects::nonNull)
                        .distinct()
                        .toList(),
                tools(visit));
    }

    private List<BaySheet.Tool> tools(Visit visit) {
        return ToolChoice.of(desk.book(), visit).stream()
                .map(choice -> new BaySheet.Tool(
                        choice.kind(), Told.begin(choice.kind()), BaySteps.of(choice.kind()), choice.options()))
                .toList();
    }

    private static Fasteners fasteners(WheelFastener fastener, BayUnits units) {
        return new Fasteners(
                fastener.count(),
                TighteningOrder.of(fastener.count()).order(),
                units.entry().written(fastener.torqueNm(), Measure.WHEEL_TORQUE),
                units.entry().label(Measure.WHEEL_TORQUE),
                fastener.thread(),
                units.sentence(Words.km(fastener.retorqueAfterKm())));
    }

    private static Map<Subject.Part, String> partsSeen(@Nullable Corner corner) {
        var words = new LinkedHashMap<Subject.Part, String>();
        Words.partsSeen(corner).forEach(part -> words.put(part, Words.part(part)));
        return words;
    }

    private static Map<String, WheelCard> wheels(
            CarHistory history, List<Visit> before, List<TreadPrediction> treads, BayUnits units) {
        var cards = new LinkedHashMap<String, WheelCard>();
        for (var set : history.sets()) {
            for (var wheel : set.wheels()) {
                cards.put(
                        wheel.tag(),
                        new WheelCard(
                                Words.season(set.season()).toLowerCase(Locale.ROOT),
                                set.storePlace(),
                                Corners.last(before, wheel.tag()).orElse(null),
                                wheel.tyre().model() + " " + wheel.tyre().size(),
                                last(before, wheel.tag(), units),
                                expected(treads, wheel.tag(), units)));
            }
        }
        return cards;
    }

    /** What was read of the wheel last, wherever it stood. */
    private static Map<String, Last> last(List<Visit> before, String tag, BayUnits units) {
        var last = new LinkedHashMap<String, Last>();
        for (var visit : before) {
            for (var reading : visit.readings()) {
                if (tag.equals(reading.wheelTag())
                        && new Slot(reading.measure(), reading.corner(), tag, reading.spot())
                                .findIn(visit)
                                .filter(reading::equals)
                                .isPresent()) {
                    last.put(place(reading), units.last(reading, visit));
                }
            }
        }
        return last;
    }

    private static Map<String, Expected> expected(List<TreadPrediction> treads, String tag, BayUnits units) {
        var expected = new LinkedHashMap<String, Expected>();
        treads.stream()
                .filter(each -> tag.equals(each.reading().wheelTag()))
                .forEach(each -> expected.put(
                        place(each.reading()),
                        units.expected(
                                each.reading().measure(),
                                each.expectedMm().mean(),
                                each.credibleWithinMm(),
                                Told.say(each.asks()))));
        return expected;
    }

    /** What the wear model expects of each groove of every wheel, as if it were read now. */
    private List<TreadPrediction> treads(OpenVisit open) {
        var imagined = new ArrayList<Reading>();
        for (var set : open.history().sets()) {
            for (var wheel : set.wheels()) {
                for (var spot : Spot.values()) {
                    imagined.add(new Reading(
                            wheel.tag() + spot,
                            Measure.TREAD_DEPTH,
                            Corner.LF,
                            wheel.tag(),
                            spot,
                            ANY_DEPTH_MM,
                            "",
                            null,
                            null));
                }
            }
        }
        var asIfRead = open.with(open.visit().withReadings(imagined));
        return judged(asIfRead, assessor::predictions);
    }

    /** Nothing is expected where it cannot be judged: the sheet is worked all the same. */
    private static <T> List<T> judged(OpenVisit open, BiFunction<CarHistory, String, List<T>> predictions) {
        var visitId = open.visit().id();
        return Judged.of("visit " + visitId, () -> predictions.apply(open.history(), visitId))
                .orElse(List.of());
    }

    private static String place(Reading reading) {
        return reading.measure() + "." + (reading.spot() == null ? "" : reading.spot());
    }
}
