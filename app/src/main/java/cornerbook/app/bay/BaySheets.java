package cornerbook.app.bay;

import cornerbook.app.bay.BaySheet.Expected;
import cornerbook.app.bay.BaySheet.Fasteners;
import cornerbook.app.bay.BaySheet.Last;
import cornerbook.app.bay.BaySheet.WheelCard;
import cornerbook.app.web.OpenVisit;
import cornerbook.app.web.Slot;
import cornerbook.app.web.VisitSlots;
import cornerbook.app.web.WheelProposal;
import cornerbook.app.web.Words;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import cornerbook.core.fastener.TighteningOrder;
import cornerbook.core.visit.Assessor;
import cornerbook.core.visit.Measure;
import cornerbook.core.visit.Reading;
import cornerbook.core.visit.TreadPrediction;
import cornerbook.core.visit.Visit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;

/** Makes the sheet of a visit from the book. */
final class BaySheets {
    private static final double ANY_DEPTH_MM = 5;

    private final Assessor assessor;

    BaySheets(Assessor assessor) {
        this.assessor = assessor;
    }

    BaySheet make(OpenVisit open, String assets) {
        var history = open.history();
        var visit = open.visit();
        var vehicle = history.vehicle();
        var before = history.visits().subList(0, history.visits().indexOf(visit));
        var fields = new FieldMaker(before);
        var standing = new WheelProposal(assessor, open).standing();
        var imagined = new VisitSlots(vehicle, visit.withLeftOn(standing.wheelAt()));
        var fastener = vehicle.fastener();
        return new BaySheet(
                visit.id(),
                assets,
                vehicle.name(),
                vehicle.plate(),
                Words.day(visit.date()),
                Words.km(visit.odometerKm()),
                new BaySteps(vehicle, imagined, fields).list(),
                visit.arrivedOn(),
                standing.wheelAt(),
                standing.hint(),
                wheels(open, before),
                new Fasteners(
                        fastener.count(),
                        TighteningOrder.of(fastener.count()).order(),
                        Words.number(fastener.torqueNm()) + " N·m",
                        fastener.thread(),
                        Words.km(fastener.retorqueAfterKm())),
                OpenCautions.all(),
                history.visits().stream()
                        .map(Visit::technician)
                        .filter(Objects::nonNull)
                        .distinct()
                        .toList());
    }

    private Map<String, WheelCard> wheels(OpenVisit open, List<Visit> before) {
        var expected = expected(open);
        var cards = new LinkedHashMap<String, WheelCard>();
        for (var set : open.history().sets()) {
            for (var wheel : set.wheels()) {
                cards.put(
                        wheel.tag(),
                        new WheelCard(
                                Words.season(set.season()).toLowerCase(Locale.ROOT),
                                set.storePlace(),
                                Corners.last(before, wheel.tag()).orElse(null),
                                wheel.tyre().model() + " " + wheel.tyre().size(),
                                last(before, wheel.tag()),
                                expected.getOrDefault(wheel.tag(), Map.of())));
            }
        }
        return cards;
    }

    /** What was read of the wheel last, wherever it stood. */
    private static Map<String, Last> last(List<Visit> before, String tag) {
        var last = new LinkedHashMap<String, Last>();
        for (var visit : before) {
            for (var reading : visit.readings()) {
                if (tag.equals(reading.wheelTag())
                        && new Slot(reading.measure(), reading.corner(), tag, reading.spot())
                                .findIn(visit)
                                .filter(reading::equals)
                                .isPresent()) {
                    last.put(place(reading), new Last(reading.asWritten(), Words.day(visit.date())));
                }
            }
        }
        return last;
    }

    /** What the wear model expects of each groove, as if it were read now: by wheel, then by place. */
    private Map<String, Map<String, Expected>> expected(OpenVisit open) {
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
        var expected = new LinkedHashMap<String, Map<String, Expected>>();
        for (var prediction :
                assessor.predictions(asIfRead.history(), asIfRead.visit().id())) {
            expected.computeIfAbsent(String.valueOf(prediction.reading().wheelTag()), unused -> new LinkedHashMap<>())
                    .put(place(prediction.reading()), expected(prediction));
        }
        return expected;
    }

    private static Expected expected(TreadPrediction prediction) {
        double mean = prediction.expectedMm().mean();
        double within = prediction.credibleWithinMm();
        return new Expected(mean - within, mean + within, Words.sentenceStart(prediction.asks()));
    }

    private static String place(Reading reading) {
        return reading.measure() + "." + (reading.spot() == null ? "" : reading.spot());
    }
}
