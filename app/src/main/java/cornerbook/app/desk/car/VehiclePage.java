package cornerbook.app.desk.car;

import cornerbook.app.book.appointment.Appointment;
import cornerbook.app.book.visit.CancelledVisit;
import cornerbook.app.picture.CornerLabel;
import cornerbook.app.picture.brake.PadsOverVisits;
import cornerbook.app.picture.car.CarFromAbove;
import cornerbook.app.picture.tyre.DepthOverDistance;
import cornerbook.app.picture.tyre.TreadSection;
import cornerbook.app.request.Told;
import cornerbook.core.assess.Assessment;
import cornerbook.core.car.CarHistory;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.SetSpan;
import cornerbook.core.finding.Subject;
import cornerbook.core.tread.judge.SetForecast;
import cornerbook.core.tread.judge.SetForecast.GrooveForecast;
import cornerbook.core.tread.judge.SetForecast.TyreForecast;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A car: its corners, its sets, its visits, its specification.
 *
 * @param cancelled visits that count nowhere, earliest first
 * @param appointments of the car, the latest day first
 * @param person who works on the tablet that asks; null where the name is typed
 * @param assessment of the latest visit; null when there is none, or it could not be judged
 * @param faultId of the fault that kept it from being judged; null when there was none
 */
public record VehiclePage(
        CarHistory history,
        List<CancelledVisit> cancelled,
        List<Appointment> appointments,
        @Nullable String person,
        @Nullable Assessment assessment,
        @Nullable String faultId) {
    private static final int GRAVEST = 5;

    public VehiclePage {
        cancelled = List.copyOf(cancelled);
        appointments = List.copyOf(appointments);
    }

    public List<SetForecast> forecasts() {
        return assessment == null ? List.of() : assessment.forecasts();
    }

    public List<Finding> findings() {
        return assessment == null ? List.of() : assessment.findings();
    }

    /** The gravest, and what asks for something before what only holds; how a wheel wears across stands with its set. */
    public List<Finding> gravest() {
        return findings().stream()
                .filter(finding -> finding.subject().part() != Subject.Part.TREAD_PATTERN)
                .filter(finding -> !finding.subject().part().isOfShop())
                .sorted(Comparator.comparing(finding -> finding.todo() == null))
                .limit(GRAVEST)
                .toList();
    }

    /** The car from above; each corner with its lowest groove and the gravest of what was found there. */
    public String carPicture() {
        var labels = new EnumMap<Corner, CornerLabel>(Corner.class);
        forecasts().stream().findFirst().ifPresent(forecast -> {
            for (var tyre : forecast.tyres()) {
                var lowest = lowestMm(tyre);
                if (lowest.isEmpty()) {
                    continue;
                }
                labels.put(
                        tyre.corner(),
                        gravestAt(tyre, forecast)
                                .map(finding -> CornerLabel.ofDepth(finding, lowest.get(), Told.reader()))
                                .orElseGet(() -> CornerLabel.ofDepth(lowest.get(), Told.reader())));
            }
        });
        return CarFromAbove.svg(labels, Told.reader());
    }

    public String treadPicture(SetForecast forecast, TyreForecast tyre) {
        return TreadSection.svg(tyre, forecast.limitMm(), tyre.wheel().tyre().newDepthOrUsualMm(), Told.reader());
    }

    public String depthPicture(SetForecast forecast, TyreForecast tyre) {
        return DepthOverDistance.svg(tyre, forecast.limitMm(), Told.reader());
    }

    /** The corners whose pads were read at two visits or more, each with its picture. */
    public Map<Corner, String> padPictures() {
        var pictures = new EnumMap<Corner, String>(Corner.class);
        for (var corner : Corner.values()) {
            var svg = PadsOverVisits.svg(history, corner, Told.reader());
            if (!svg.isEmpty()) {
                pictures.put(corner, svg);
            }
        }
        return pictures;
    }

    public boolean isOnTheCar(SetForecast forecast) {
        return forecast.role() == SetSpan.Role.GOING_ON;
    }

    /** The set's own finding counts at the corner with the lowest groove: it is that one that decides. */
    private Optional<Finding> gravestAt(TyreForecast tyre, SetForecast forecast) {
        var decides = forecast.tyres().stream()
                .filter(other -> lowestMm(other).isPresent())
                .min(Comparator.comparing(other -> lowestMm(other).orElseThrow()))
                .filter(tyre::equals)
                .isPresent();
        return findings().stream()
                .filter(finding -> finding.subject().corner() == tyre.corner()
                        || (decides
                                && forecast.set().id().equals(finding.subject().setId())))
                .max(Comparator.comparing(Finding::verdict)
                        .thenComparing(Comparator.comparing(Finding::lifeLeft).reversed()));
    }

    private static Optional<Double> lowestMm(TyreForecast tyre) {
        return tyre.grooves().stream().map(GrooveForecast::depthMm).min(Double::compare);
    }
}
