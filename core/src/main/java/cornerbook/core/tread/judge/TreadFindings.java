package cornerbook.core.tread.judge;

import cornerbook.core.car.WheelSet;
import cornerbook.core.finding.Evidence;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Subject;
import cornerbook.core.finding.Verdict;
import cornerbook.core.season.Dates;
import cornerbook.core.tread.judge.SetForecast.DepthReading;
import cornerbook.core.tread.judge.SetForecast.GrooveForecast;
import cornerbook.core.tread.judge.SetForecast.TyreForecast;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Findings on a set's tread: will it hold. */
public final class TreadFindings {
    /** What is said where the model expects nothing to be left. */
    private static final String WORN_OUT = "worn out";

    private TreadFindings() {}

    public static Finding ofSet(SetForecast forecast, String limitSource, @Nullable Evidence atFitting) {
        var weakest = weakest(forecast);
        var groove = lowest(weakest);
        boolean goingOn = forecast.role() == SetForecast.Role.GOING_ON;
        var verdict = verdict(forecast, groove);
        var name = seasonWord(forecast.set()) + " set";
        double newDepthMm = weakest.wheel().tyre().newDepthMm();
        double lifeLeft = Math.clamp((groove.depthMm() - forecast.limitMm()) / (newDepthMm - forecast.limitMm()), 0, 1);
        var evidence = new ArrayList<Evidence>();
        evidence.add(new Evidence(
                "lowest groove",
                "%s %s, %s: %s"
                        .formatted(
                                weakest.corner(),
                                weakest.wheel().tag(),
                                word(groove),
                                groove.depthMm() > 0
                                        ? "%.1f ± %.1f mm".formatted(groove.depthMm(), groove.depthSdMm())
                                        : WORN_OUT + " by the distance that it ran"),
                "corner-rate model, all readings of this set"));
        evidence.add(new Evidence(
                "wear there",
                "%.2f ± %.2f mm per 1000 km".formatted(groove.rateMmPer1000Km(), groove.rateSdMmPer1000Km()),
                "corner-rate model; readings in this groove: "
                        + groove.readings().size()));
        evidence.add(new Evidence(
                "distance",
                "%.0f ± %.0f km per day".formatted(forecast.kmPerDay(), forecast.kmPerDaySd()),
                forecast.distanceBasis()));
        evidence.add(new Evidence("wear to start from", forecast.wearStart(), forecast.wearBasis()));
        evidence.add(new Evidence(
                "season's minimum",
                "%.1f mm (legal %.1f mm)".formatted(forecast.limitMm(), forecast.legalLimitMm()),
                limitSource));
        if (atFitting != null) {
            evidence.add(atFitting);
        }
        evidence.addAll(grown(forecast));
        evidence.add(new Evidence(
                "chance that every groove holds until " + Dates.written(forecast.until()),
                percent(forecast.probabilityHolds()),
                "integrated over depth and distance; asked: " + percent(forecast.confidence())));
        return new Finding(
                new Subject(Subject.Part.WHEEL_SET, null, null, forecast.set().id()),
                verdict,
                "%s (%s): lowest %s, %s to hold until %s"
                        .formatted(
                                capital(name),
                                goingOn ? "on the car" : "coming off",
                                depth(groove),
                                percent(forecast.probabilityHolds()),
                                Dates.written(forecast.until())),
                plainWords(forecast, verdict, name, groove, goingOn),
                forecast.horizon(),
                forecast.probabilityHolds(),
                lifeLeft,
                evidence,
                limitSource);
    }

    /** What was measured last counts as it is: a model must not talk a reading below the limit away. */
    private static Verdict verdict(SetForecast forecast, GrooveForecast groove) {
        double lowestMm = Math.min(groove.depthMm(), lowestReadingMm(forecast));
        if (lowestMm < forecast.legalLimitMm()) {
            return Verdict.UNSAFE;
        }
        if (lowestMm < forecast.limitMm() || forecast.probabilityHolds() < 0.5) {
            return Verdict.SPENT;
        }
        return forecast.probabilityHolds() < forecast.confidence() ? Verdict.RUNS_OUT : Verdict.HOLDS;
    }

    private static String plainWords(
            SetForecast forecast, Verdict verdict, String name, GrooveForecast groove, boolean goingOn) {
        var depth = "lowest tread %s, minimum %.1f mm".formatted(depth(groove), forecast.limitMm());
        return switch (verdict) {
            case UNSAFE -> "The %s is below the legal minimum (%s). It must not be driven on.".formatted(name, depth);
            case SPENT ->
                goingOn
                        ? groove.depthMm() < forecast.limitMm() || forecast.horizon() == null
                                ? "The %s is used up (%s). Replace it now.".formatted(name, depth)
                                : "The %s will most likely not last until the next visit: sure only until %s (%s). Replace it now or come back before then."
                                        .formatted(name, Dates.written(forecast.horizon()), depth)
                        : "The %s is not likely to last its next season (%s). Order tyres before it goes on again."
                                .formatted(name, depth);
            case RUNS_OUT ->
                goingOn
                        ? "The %s may not last until the next visit (%s). Have the tread measured again before it runs out."
                                .formatted(name, depth)
                        : "The %s may not last its next season (%s). Plan for new tyres.".formatted(name, depth);
            case HOLDS ->
                goingOn
                        ? "The %s is good until the next visit (%s).".formatted(name, depth)
                        : "The stored %s is good for its next season (%s).".formatted(name, depth);
        };
    }

    /** Grooves whose last reading is deeper than one before by more than the gauge may err. */
    private static List<Evidence> grown(SetForecast forecast) {
        var grown = new ArrayList<Evidence>();
        for (var tyre : forecast.tyres()) {
            for (var groove : tyre.grooves()) {
                var least = groove.readings().stream().min(Comparator.comparingDouble(DepthReading::depthMm));
                if (least.isEmpty()) {
                    continue;
                }
                var last = groove.readings().getLast();
                if (last.depthMm() > least.get().depthMm() + StoredWheelCheck.GAUGE_ERROR_MM) {
                    grown.add(
                            new Evidence(
                                    "contradicts wear",
                                    "%s %s, %s: %.1f mm on %s after %.1f mm on %s"
                                            .formatted(
                                                    tyre.corner(),
                                                    tyre.wheel().tag(),
                                                    word(groove),
                                                    last.depthMm(),
                                                    Dates.written(last.date()),
                                                    least.get().depthMm(),
                                                    Dates.written(least.get().date())),
                                    "a tread does not grow: read it again, or is it another wheel? Until then wear is held above nothing"));
                }
            }
        }
        return grown;
    }

    private static String depth(GrooveForecast groove) {
        return groove.depthMm() > 0 ? "%.1f mm".formatted(groove.depthMm()) : WORN_OUT;
    }

    static GrooveForecast lowest(TyreForecast tyre) {
        return tyre.grooves().stream()
                .min(Comparator.comparingDouble(GrooveForecast::depthMm))
                .orElseThrow();
    }

    private static double lowestReadingMm(SetForecast forecast) {
        return forecast.tyres().stream()
                .flatMap(tyre -> tyre.grooves().stream())
                .filter(groove -> !groove.readings().isEmpty())
                .mapToDouble(groove -> groove.readings().getLast().depthMm())
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    private static TyreForecast weakest(SetForecast forecast) {
        return forecast.tyres().stream()
                .min(Comparator.comparingDouble(tyre -> lowest(tyre).depthMm()))
                .orElseThrow();
    }

    public static String seasonWord(WheelSet set) {
        return set.season().name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    private static String word(GrooveForecast groove) {
        return groove.groove().name().toLowerCase(Locale.ROOT);
    }

    static String percent(double share) {
        return share > 0.99 ? "over 99 %" : share < 0.01 ? "under 1 %" : "%.0f %%".formatted(share * 100);
    }
}
