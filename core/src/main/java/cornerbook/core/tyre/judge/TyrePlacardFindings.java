package cornerbook.core.tyre.judge;

import cornerbook.core.say.Said;

import cornerbook.core.car.AxleSpecification;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.Wheel;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Verdict;
import cornerbook.core.tread.judge.TreadFindings;
import cornerbook.core.tyre.LoadIndex;
import cornerbook.core.tyre.ServiceDescription;
import cornerbook.core.tyre.SizeComparison;
import cornerbook.core.tyre.SpeedSymbol;
import cornerbook.core.tyre.TyreSize;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Findings on tyres that are not as the placard asks: load index, speed symbol, and the way of one turn. */
public final class TyrePlacardFindings {
    /** Makers' tyres differ by as much from their size; common practice, no source. */
    private static final double LARGER_PERCENT = 1.5;

    private static final double SHOWN_KMH = 100;
    private static final String PLACARD = "placard, as in the vehicle's specification";

    private final WheelSet set;
    private final Vehicle vehicle;
    private final List<Finding> findings = new ArrayList<>();

    private TyrePlacardFindings(WheelSet set, Vehicle vehicle) {
        this.set = set;
        this.vehicle = vehicle;
    }

    /** One finding for each corner with too low an index or symbol, and for each axle with another size. */
    public static List<Finding> of(WheelSet set, Vehicle vehicle, Map<Corner, String> wheelAt, List<Said> notJudged) {
        var judged = new TyrePlacardFindings(set, vehicle);
        var sized = new TreeMap<Axle, SizeComparison>();
        for (var corner : Corner.values()) {
            var wheel = set.wheels().stream()
                    .filter(each -> each.tag().equals(wheelAt.get(corner)))
                    .findFirst();
            if (wheel.isPresent()) {
                var asked = vehicle.axle(corner.axle());
                var tyre = wheel.get().tyre();
                judged.service(corner, wheel.get(), asked);
                try {
                    var comparison =
                            SizeComparison.of(TyreSize.parse(asked.tyreSize()), TyreSize.parse(tyre.size()), SHOWN_KMH);
                    if (comparison.diameterMm() != 0) {
                        sized.putIfAbsent(corner.axle(), comparison);
                    }
                } catch (IllegalArgumentException e) {
                    notJudged.add(Said.verbatim(
                            "%s against the placard: %s".formatted(wheel.get().tag(), e.getMessage())));
                }
            }
        }
        sized.forEach(judged::size);
        return judged.findings;
    }

    private static Optional<ServiceDescription> read(int loadIndex, String speedSymbol) {
        try {
            return Optional.of(new ServiceDescription(new LoadIndex(loadIndex), SpeedSymbol.parse(speedSymbol)));
        } catch (IllegalArgumentException unread) {
            // The findings on load say so.
            return Optional.empty();
        }
    }

    private void service(Corner corner, Wheel wheel, AxleSpecification axle) {
        var tyre = wheel.tyre();
        var fitted = read(tyre.loadIndex(), tyre.speedSymbol());
        var asked = read(axle.loadIndex(), axle.speedSymbol());
        if (fitted.isPresent() && asked.isPresent()) {
            service(corner, wheel, asked.get(), fitted.get());
        }
    }

    private void service(Corner corner, Wheel wheel, ServiceDescription asked, ServiceDescription fitted) {
        double halfKg = vehicle.axle(corner.axle()).axleLoadKg() / 2;
        double fittedKg = fitted.loadIndex().capacityKg();
        // What carries less than half of the axle's load is a finding of its own.
        if (fittedKg < asked.loadIndex().capacityKg() && fittedKg >= halfKg) {
            add(
                    corner,
                    wheel,
                    Verdict.SPENT,
                    "%s at %s has load index %d, the placard asks %d"
                            .formatted(
                                    wheel.tag(),
                                    corner,
                                    fitted.loadIndex().number(),
                                    asked.loadIndex().number()),
                    "The tyre at %s is made for less load than the car's placard asks. Have it replaced by one with enough load capacity."
                            .formatted(corner),
                    asked,
                    fitted,
                    "UN R30, load-capacity indices; " + PLACARD);
        }
        double fittedKmh = fitted.speedSymbol().highestKmh();
        if (fittedKmh < asked.speedSymbol().highestKmh()) {
            boolean winter = set.season() == SeasonKind.WINTER;
            add(
                    corner,
                    wheel,
                    winter ? Verdict.HOLDS : Verdict.SPENT,
                    "%s at %s has speed symbol %s, the placard asks %s"
                            .formatted(wheel.tag(), corner, fitted.speedSymbol(), asked.speedSymbol()),
                    winter
                            ? "The winter tyre at %s is made for %.0f km/h at most. Where the law lets winter tyres be slower than the placard, this speed is shown to the driver."
                                    .formatted(corner, fittedKmh)
                            : "The tyre at %s is made for %.0f km/h at most, less than the car's placard asks. Have it replaced."
                                    .formatted(corner, fittedKmh),
                    asked,
                    fitted,
                    "UN R30, speed symbols; slower winter tyres: Directive 92/23/EEC, from memory; " + PLACARD);
        }
    }

    private void add(
            Corner corner,
            Wheel wheel,
            Verdict verdict,
            String title,
            String plainWords,
            ServiceDescription asked,
            ServiceDescription fitted,
            String source) {
        findings.add(new Finding(
                new Subject(Subject.Part.TYRE_LOAD, corner, wheel.tag(), set.id()),
                verdict,
                title,
                plainWords,
                null,
                null,
                verdict == Verdict.HOLDS ? 1 : 0,
                List.of(
                        described("tyre", fitted, "sidewall; UN R30, tables"),
                        described("placard asks", asked, PLACARD)),
                source));
    }

    private static Evidence described(String what, ServiceDescription service, String source) {
        return new Evidence(
                what,
                "%s: %.0f kg, %.0f km/h"
                        .formatted(
                                service,
                                service.loadIndex().capacityKg(),
                                service.speedSymbol().highestKmh()),
                source);
    }

    /** The speedometer must never show less than the true speed, so that only a larger tyre is put right. */
    private void size(Axle axle, SizeComparison comparison) {
        boolean larger = comparison.circumferencePercent() > LARGER_PERCENT;
        var name = axle == Axle.FRONT ? "front" : "rear";
        findings.add(
                new Finding(
                        new Subject(Subject.Part.WHEEL_FIT, null, null, set.id()),
                        larger ? Verdict.SPENT : Verdict.HOLDS,
                        "%s tyres are %s, the placard has %s: %s %% in circumference"
                                .formatted(
                                        TreadFindings.capital(name),
                                        comparison.other(),
                                        comparison.placard(),
                                        signed(comparison.circumferencePercent())),
                        larger
                                ? "The %s tyres are larger than the car's placard has them, and the speedometer may show less than the true speed. Have it looked at before driving fast, or have tyres of the placard's size fitted."
                                        .formatted(name)
                                : "The %s tyres have another size than the placard; at %.0f km/h shown the car does %.0f km/h."
                                        .formatted(name, SHOWN_KMH, comparison.trueKmh()),
                        null,
                        null,
                        larger ? 0 : 1,
                        List.of(
                                new Evidence(
                                        "overall diameter",
                                        "%.0f mm, the placard's %.0f mm"
                                                .formatted(
                                                        comparison.other().overallDiameterMm(),
                                                        comparison.placard().overallDiameterMm()),
                                        "UN R30, 6.1.2: D = d + 2 S Ra/100"),
                                new Evidence(
                                        "true speed",
                                        "%.1f km/h when %.0f km/h are shown".formatted(comparison.trueKmh(), SHOWN_KMH),
                                        "shown × D tyre/D placard"),
                                new Evidence(
                                        "larger by at most",
                                        "%s %%".formatted(signed(LARGER_PERCENT)),
                                        "as makers' tyres differ; common practice, no source")),
                        "UN R39, from memory: a speedometer never shows less than the true speed; sizes that the vehicle manufacturer permits outrank this"));
    }

    private static String signed(double percent) {
        return String.format(Locale.ROOT, "%+.1f", percent).replace('-', '−');
    }
}
