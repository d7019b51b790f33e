package cornerbook.app.picture.air;

import cornerbook.app.picture.BandOnScale;
import cornerbook.app.picture.BandOnScale.Band;
import cornerbook.app.picture.BandOnScale.Mark;
import cornerbook.core.air.SensorAge;
import cornerbook.core.air.SensorCheck;
import cornerbook.words.Shown;
import cornerbook.app.picture.Palette;
import java.util.List;

/** A pressure sensor's reading against the gauge, and the age of its battery, each on a scale. */
public final class SensorScales {
    private static final double MOST_YEARS = 12;

    private SensorScales() {}

    /** The band in which a sensor is accurate about the gauge, what it reads, and where the warning comes. */
    public static String of(SensorCheck check, Shown shown) {
        double least = Math.min(check.warnsAtKpa(), check.atTyreKpa());
        double most = Math.max(check.gaugeKpa() + SensorCheck.ACCURATE_KPA, check.atTyreKpa());
        double room = 0.1 * (most - least);
        var colour = check.answer() == SensorCheck.Answer.ACCURATE ? Palette.SLATE : Palette.PLUM;
        return BandOnScale.svg(
                "Gauge %s, accurate within ±%s"
                        .formatted(shown.show(check.gaugeKpa(), "kPa"), shown.show(SensorCheck.ACCURATE_KPA, "kPa")),
                least - room,
                most + room,
                new Band(
                        check.gaugeKpa() - SensorCheck.ACCURATE_KPA,
                        check.gaugeKpa() + SensorCheck.ACCURATE_KPA,
                        Palette.OCHRE),
                List.of(
                        new Mark(check.atTyreKpa(), colour, true, "sensor " + shown.show(check.atTyreKpa(), "kPa")),
                        new Mark(
                                check.warnsAtKpa(),
                                Palette.PLUM,
                                false,
                                "warning below " + shown.show(check.warnsAtKpa(), "kPa"))));
    }

    /** The years in which such a battery ends, and its age. */
    public static String of(SensorAge age) {
        return BandOnScale.svg(
                "Batteries of sensors end at %.0f to %.0f years".formatted(SensorAge.OLD_YEARS, SensorAge.END_YEARS),
                0,
                Math.max(MOST_YEARS, age.years()),
                new Band(SensorAge.OLD_YEARS, SensorAge.END_YEARS, Palette.OCHRE),
                List.of(new Mark(
                        age.years(),
                        age.old() ? Palette.PLUM : Palette.SLATE,
                        true,
                        "%.1f years old".formatted(age.years()))));
    }
}
