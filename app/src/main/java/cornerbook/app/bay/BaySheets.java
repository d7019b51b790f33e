package cornerbook.app.bay;

import cornerbook.app.bay.BaySheet.Expected;
import cornerbook.app.bay.BaySheet.Fasteners;
import cornerbook.app.bay.BaySheet.Last;
import cornerbook.app.bay.BaySheet.WheelCard;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.OpenVisit;
import cornerbook.app.desk.PhotoWords;
import cornerbook.app.desk.asked.ToolChoice;
import cornerbook.app.desk.asked.VisitSlots;
import cornerbook.app.desk.asked.WheelProposal;
import cornerbook.app.judge.Judged;
import cornerbook.core.assess.Assessor;
import cornerbook.core.brake.judge.ThicknessPrediction;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.DataGap;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SetOf;
import cornerbook.core.corner.Spot;
import cornerbook.core.finding.ReadingLimit;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Verdict;
import cornerbook.core.lift.judge.LiftFindings;
import cornerbook.core.release.ReleaseRule;
import cornerbook.core.say.Amount;
import cornerbook.core.season.judge.OdometerRange;
import cornerbook.core.torque.TighteningOrder;
import cornerbook.core.torque.WheelFastener;
import cornerbook.core.tread.judge.TreadPrediction;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Makes the sheet of a visit from the book. */
final class BaySheets {
    private static final double ANY_DEPTH_MM = 5;
    private static final String KM = "km";

    /** Whichever wheels go on, they have their places on the sheet: none of these is one that the car came on. */
    private static final Map<Corner, String> NO_WHEEL_YET =
            Arrays.stream(Corner.values()).collect(Collectors.toMap(Function.identity(), corner -> ""));

    private final Desk desk;
    private final Assessor assessor;

    BaySheets(Desk desk) {
        this.desk = desk;
        this.assessor = desk.assessor();
    }

    /** In the language and the units of every person that there can be: who reads it next is not known while it is on a tablet. */
    Map<String, Map<String, BaySheet>> makeForAll(OpenVisit open, String assets) {
        var proposal = new WheelProposal(assessor, open);
        var treads = treads(open);
        var thicknesses = judged(open, assessor::thicknessPredictions);
        var tools = ToolChoice.of(desk.book(), open.visit());
        var limits = limits(open);
        var matters = Matters.of(desk, open);
        var rules = desk.leavingRules(open);
        return BayReader.forAll(
                bay -> make(open, assets, proposal, treads, thicknesses, tools, limits, rules, matters, bay));
    }

    private BaySheet make(
            OpenVisit open,
            String assets,
            WheelProposal proposal,
            List<TreadPrediction> treads,
            List<ThicknessPrediction> thicknesses,
            List<ToolChoice> tools,
            List<ReadingLimit> limits,
            List<ReleaseRule> rules,
            Matters matters,
            BayReader bay) {
        var history = open.history();
        var visit = open.visit();
        var vehicle = history.vehicle();
        var before = history.visits().subList(0, history.visits().indexOf(visit));
        var standing = proposal.standing();
        var imagined = new VisitSlots(vehicle, visit.withLeftOn(NO_WHEEL_YET));
        return new BaySheet(
                visit.id(),
                assets,
                vehicle.name(),
                vehicle.plate(),
                bay.reader().day(visit.date()),
                odometer(history, visit, bay),
                new BaySteps(
                                vehicle,
                                DataGap.of(history),
                                hoists(vehicle, bay),
                                imagined,
                                new FieldMaker(vehicle, before, thicknesses, bay),
                                desk.book().stepOrders().of(vehicle))
                        .list(),
                visit.arrivedOn(),
                standing.wheelAt(),
                bay.say(standing.hint()),
                history.sets().stream()
                        .map(proposal::of)
                        .map(fill -> new BaySheet.Fill(fill.setId(), bay.say(fill.hint()), fill.wheelAt()))
                        .toList(),
                wheels(history, before, treads, bay),
                vehicle.fastener() == null ? null : fasteners(vehicle.fastener(), bay),
                rules.stream()
                        .map(rule -> new BaySheet.Caution(
                                rule.point().key(), bay.say(rule.point()), rule.openedBy(), rule.closedBy()))
                        .toList(),
                Map.of(BaySheet.Seen.CORNER, partsSeen(Corner.LF, bay), BaySheet.Seen.CAR, partsSeen(null, bay)),
                history.visits().stream()
                        .map(each -> each.card().technician())
                        .filter(Objects::nonNull)
                        .distinct()
                        .toList(),
                tools(tools, bay),
                limits.stream().map(bay::limit).toList(),
                matters.in(bay));
    }

    /** What it is expected to read goes with it, so that it is asked about without a link too. */
    private static BaySheet.Odometer odometer(CarHistory history, Visit visit, BayReader bay) {
        var units = bay.entry().system();
        return new BaySheet.Odometer(
                bay.labels().of("odometer"),
                units.unitOf(KM),
                0,
                units.in(Visit.HIGHEST_ODOMETER_KM, KM),
                OdometerRange.of(history, visit)
                        .map(range -> new Expected(
                                units.in(range.lowestKm(), KM),
                                units.in(range.highestKm(), KM),
                                bay.say(range.question())))
                        .orElse(null));
    }

    /** All but the pressure to set: it changes with the temperatures, and comes with the state. */
    private List<ReadingLimit> limits(OpenVisit open) {
        return judged(open, assessor::limits).stream()
                .filter(limit -> limit.measure() != Measure.PRESSURE_SET)
                .toList();
    }

    /** The car on each hoist that the shop keeps: its numbers, and what to mind. */
    private List<String> hoists(Vehicle vehicle, BayReader bay) {
        return desk.book().tools().list().stream()
                .flatMap(tool -> LiftFindings.onHoist(vehicle, tool).findings().stream())
                .flatMap(finding -> finding.verdict() == Verdict.HOLDS
                        ? Stream.of(finding.title())
                        : Stream.of(finding.title(), finding.plainWords()))
                .map(bay::say)
                .toList();
    }

    private static List<BaySheet.Tool> tools(List<ToolChoice> choices, BayReader bay) {
        return choices.stream()
                .map(choice -> new BaySheet.Tool(
                        choice.kind(),
                        bay.reader().begin(choice.kind()),
                        BaySteps.of(choice.kind()),
                        choice.options().stream()
                                .map(option -> new BaySheet.Option(option.id(), bay.say(option.label())))
                                .toList()))
                .toList();
    }

    private static Fasteners fasteners(WheelFastener fastener, BayReader bay) {
        return new Fasteners(
                fastener.count(),
                TighteningOrder.of(fastener.count()).order(),
                bay.entry().written(fastener.torqueNm(), Measure.WHEEL_TORQUE),
                bay.unit(Measure.WHEEL_TORQUE),
                fastener.thread(),
                bay.say(Amount.of(fastener.retorqueAfterKm(), KM)));
    }

    private static Map<Subject.Part, String> partsSeen(@Nullable Corner corner, BayReader bay) {
        var words = new LinkedHashMap<Subject.Part, String>();
        PhotoWords.partsSeen(corner).forEach(part -> words.put(part, bay.say(part)));
        return words;
    }

    private static Map<String, WheelCard> wheels(
            CarHistory history, List<Visit> before, List<TreadPrediction> treads, BayReader bay) {
        var cards = new LinkedHashMap<String, WheelCard>();
        for (var set : history.sets()) {
            for (var wheel : set.wheels()) {
                cards.put(
                        wheel.tag(),
                        new WheelCard(
                                set.id(),
                                bay.say(new SetOf(set.season())),
                                bay.say(set.season()),
                                set.storePlace(),
                                Corners.last(before, wheel.tag()).orElse(null),
                                Stream.of(wheel.tyre().model(), wheel.tyre().size())
                                        .filter(Objects::nonNull)
                                        .collect(Collectors.joining(" ")),
                                last(before, wheel.tag(), bay),
                                expected(treads, wheel.tag(), bay)));
            }
        }
        return cards;
    }

    /** What was read of the wheel last, wherever it stood. */
    private static Map<String, Last> last(List<Visit> before, String tag, BayReader bay) {
        var last = new LinkedHashMap<String, Last>();
        for (var visit : before) {
            for (var reading : new StandingReadings(visit).all()) {
                if (tag.equals(reading.wheelTag())) {
                    last.put(place(reading), bay.last(reading, visit));
                }
            }
        }
        // What is found is compared with what was set.
        var set = last.get(Measure.PRESSURE_SET + ".");
        if (set != null) {
            last.put(Measure.PRESSURE_FOUND + ".", set);
        }
        return last;
    }

    private static Map<String, Expected> expected(List<TreadPrediction> treads, String tag, BayReader bay) {
        var expected = new LinkedHashMap<String, Expected>();
        treads.stream()
                .filter(each -> tag.equals(each.reading().wheelTag()))
                .forEach(each -> expected.put(
                        place(each.reading()),
                        bay.expected(
                                Measure.TREAD_DEPTH, each.expectedMm().mean(), each.credibleWithinMm(), each.asks())));
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
