package cornerbook.app.picture.air;

import cornerbook.core.say.Between;
import cornerbook.core.say.Amount;
import cornerbook.app.picture.BandOnScale;
import cornerbook.app.picture.BandOnScale.Band;
import cornerbook.app.picture.BandOnScale.Mark;
import cornerbook.core.air.SensorAge;
import cornerbook.core.air.SensorCheck;
import cornerbook.words.Reader;
import cornerbook.app.picture.Palette;
import java.util.List;

/** A pressure sensor's reading against the gauge, and the age of its battery, each on a scale. */
public final class SensorScales {
    private static final double MOST_YEARS = 12;

    private SensorScales() {}

    /** The band in which a sensor is accurate about the gauge, what it reads, and where the warning comes. */
    public static String of(SensorCheck check, Reader reader) {
        var labels = reader.labels(LoadOverPressure.ROOM);
        double least = Math.min(check.warnsAtKpa(), check.atTyreKpa());
        double most = Math.max(check.gaugeKpa() + SensorCheck.ACCURATE_KPA, check.atTyreKpa());
        double room = 0.1 * (most - least);
        var colour = check.answer() == SensorCheck.Answer.ACCURATE ? Palette.SLATE : Palette.PLUM;
        return BandOnScale.svg(
                labels.of(
                        "gauge",
                        "pressure",
                        Amount.of(check.gaugeKpa(), "kPa"),
                        "error",
                        Amount.of(SensorCheck.ACCURATE_KPA, "kPa")),
                least - room,
                most + room,
                new Band(
                        check.gaugeKpa() - SensorCheck.ACCURATE_KPA,
                        check.gaugeKpa() + SensorCheck.ACCURATE_KPA,
                        Palette.OCHRE),
                List.of(
                        new Mark(check.atTyreKpa(), colour, true, labels.of("sensor", "pressure", Amount.of(check.atTyreKpa(), "kPa"))),
                        new Mark(
                                check.warnsAtKpa(),
                                Palette.PLUM,
                                false,
                                labels.of("warning-below", "pressure", Amount.of(check.warnsAtKpa(), "kPa")))),
                reader);
    }

    /** The years in which such a battery ends, and its age. */
    public static String of(SensorAge age, Reader reader) {
        var labels = reader.labels(LoadOverPressure.ROOM);
        return BandOnScale.svg(
                labels.of("sensor-batteries", "years", new Between(SensorAge.OLD_YEARS, SensorAge.END_YEARS, "", 0)),
                0,
                Math.max(MOST_YEARS, age.years()),
                new Band(SensorAge.OLD_YEARS, SensorAge.END_YEARS, Palette.OCHRE),
                List.of(new Mark(
                        age.years(),
                        age.old() ? Palette.PLUM : Palette.SLATE,
                        true,
                        labels.of("years-old", "years", new Amount(age.years(), "", 1)))),
                reader);
    }
}
