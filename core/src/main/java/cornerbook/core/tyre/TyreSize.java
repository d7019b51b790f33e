package cornerbook.core.tyre;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Formula;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import cornerbook.core.tyre.TyreSaid.Input;
import org.jspecify.annotations.Nullable;

/**
 * Size designation of a radial tyre, as "225/55R18 98V", and its design geometry when new:
 * D = d + 2 S Ra/100, with overall diameter D, rim diameter d = 25.4 mm times the rim code, section width S and aspect ratio
 * Ra in per cent (UN R30, 6.1.2). R30 rounds section height and rim diameter to whole mm; here nothing is rounded.
 *
 * @param use letters before the size: "" (metric), "P" (passenger), "LT" (light truck) or "HL" (high load)
 * @param sectionWidthMm S, 100 to 455 mm, on the measuring rim
 * @param aspectRatioPercent Ra, 20 to 100
 * @param rimDiameterCode 10 to 30, in inches of nominal diameter
 * @param commercial whether C for commercial vehicles follows the rim code, as in "205/65R16C 107/105T"
 * @param service null when it is not written
 * @param extraLoad whether XL, for extra load, stands behind the size
 */
public record TyreSize(
        String use,
        int sectionWidthMm,
        int aspectRatioPercent,
        int rimDiameterCode,
        boolean commercial,
        @Nullable ServiceDescription service,
        boolean extraLoad) {
    static final double INCH_MM = 25.4;

    /** Rolling circumference over overall diameter of a radial tyre (ETRTO convention; from memory). */
    static final double ROLLING_FACTOR = 3.05;

    static final Said TURNS_FORMULA = Formula.of("1 km / ({} D)", Amount.exact(ROLLING_FACTOR, ""));

    /** Refuses what no tyre has. */
    public TyreSize {
        if (!use.matches("(P|LT|HL)?")) {
            throw new IllegalArgumentException("use is \"%s\", expected nothing, P, LT or HL".formatted(use));
        }
        check(Input.SECTION_WIDTH, sectionWidthMm, 100, 455, "mm");
        check(Input.ASPECT_RATIO, aspectRatioPercent, 20, 100, "%");
        check(Input.RIM_DIAMETER_CODE, rimDiameterCode, 10, 30, "");
        if (extraLoad && (commercial || use.equals("LT") || use.equals("HL"))) {
            throw new Refused(new TyreSaid.ExtraLoadBeside(commercial ? "C" : use));
        }
        if (commercial && !use.isEmpty()) {
            throw new Refused(new TyreSaid.CommercialBeside(use));
        }
        if (service != null && service.twinLoadIndex() != null && (extraLoad || use.matches("P|HL"))) {
            throw new Refused(
                    new TyreSaid.SecondIndexBeside(service.twinLoadIndex().number(), extraLoad ? "XL" : use));
        }
    }

    /**
     * The size as written on the sidewall; blanks do not matter.
     *
     * @throws IllegalArgumentException with one sentence that says which part does not fit
     */
    public static TyreSize parse(String text) {
        return new SizeReader(text).read();
    }

    /** d: nominal diameter of the rim, mm. */
    public double rimDiameterMm() {
        return rimDiameterCode * INCH_MM;
    }

    /** Height of the section from rim to tread, mm. */
    public double sectionHeightMm() {
        return sectionWidthMm * aspectRatioPercent / 100.0;
    }

    /** D: overall diameter of the new tyre, unloaded, mm. */
    public double overallDiameterMm() {
        return rimDiameterMm() + 2 * sectionHeightMm();
    }

    /** Way of one turn under load when new, mm: 3.05 D, about 3 % less than π D. */
    public double rollingCircumferenceMm() {
        return ROLLING_FACTOR * overallDiameterMm();
    }

    @Override
    public String toString() {
        return "%s%s/%sR%s%s%s%s"
                .formatted(
                        use,
                        sectionWidthMm,
                        aspectRatioPercent,
                        rimDiameterCode,
                        commercial ? "C" : "",
                        service == null ? "" : " " + service,
                        extraLoad ? " XL" : "");
    }
}
