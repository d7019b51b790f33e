package cornerbook.core.tyre;

import static cornerbook.core.quantity.Range.check;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Formula;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import cornerbook.core.tyre.TyreSaid.Input;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Size designation of a tyre, as "225/55R18 98V", and its design geometry when new:
 * D = d + 2 S Ra/100, with overall diameter D, rim diameter d = 25.4 mm times the rim code, section width S and aspect ratio
 * Ra in per cent (UN R30, 6.1.2). R30 rounds section height and rim diameter to whole mm; here nothing is rounded.
 *
 * @param use letters before the size: "" (metric), "P" (passenger), "LT" (light truck), "HL" (high load) or "T" (temporary spare)
 * @param sectionWidthMm S, nominal, 100 to 455 mm
 * @param aspectRatioPercent Ra, 20 to 100
 * @param construction "R" radial; of temporary spares also "D" diagonal or "B" bias-belted
 * @param rimDiameterCode 10 to 30, in inches of nominal diameter
 * @param commercial whether C for commercial vehicles follows the rim code, as in "205/65R16C 107/105T"
 * @param service null when it is not written
 * @param extraLoad whether XL, for extra load, stands behind the size
 */
public record TyreSize(
        String use,
        int sectionWidthMm,
        int aspectRatioPercent,
        String construction,
        int rimDiameterCode,
        boolean commercial,
        @Nullable ServiceDescription service,
        boolean extraLoad) {
    static final double INCH_MM = 25.4;

    private static final String LIGHT_TRUCK = "LT";
    private static final String TEMPORARY = "T";
    private static final Set<String> USES = Set.of("", "P", LIGHT_TRUCK, "HL", TEMPORARY);
    private static final String RADIAL = "R";
    private static final Set<String> CONSTRUCTIONS_OF_SPARES = Set.of(RADIAL, "D", "B");
    private static final Set<String> NEVER_EXTRA_LOAD = Set.of(LIGHT_TRUCK, "HL", TEMPORARY);
    private static final Set<String> NEVER_TWIN = Set.of("P", "HL", TEMPORARY);

    /** Refuses what no tyre has. */
    public TyreSize {
        if (!USES.contains(use)) {
            throw new IllegalArgumentException("use is \"%s\", expected nothing, P, LT, HL or T".formatted(use));
        }
        if (!(use.equals(TEMPORARY) ? CONSTRUCTIONS_OF_SPARES : Set.of(RADIAL)).contains(construction)) {
            throw new IllegalArgumentException("construction is \"%s\", expected R".formatted(construction));
        }
        check(Input.SECTION_WIDTH, sectionWidthMm, 100, 455, "mm");
        check(Input.ASPECT_RATIO, aspectRatioPercent, 20, 100, "%");
        check(Input.RIM_DIAMETER_CODE, rimDiameterCode, 10, 30, "");
        if (extraLoad && (commercial || NEVER_EXTRA_LOAD.contains(use))) {
            throw new Refused(new TyreSaid.ExtraLoadBeside(commercial ? "C" : use));
        }
        if (commercial && !use.isEmpty()) {
            throw new Refused(new TyreSaid.CommercialBeside(use));
        }
        if (service != null && service.twinLoadIndex() != null && (extraLoad || NEVER_TWIN.contains(use))) {
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

    /** The same; empty where the size cannot be read. */
    public static Optional<TyreSize> find(String written) {
        try {
            return Optional.of(parse(written));
        } catch (IllegalArgumentException unread) {
            return Optional.empty();
        }
    }

    /** Whether its rims and load stand in the tables for light trucks, and not in those for passenger cars. */
    public boolean lightTruck() {
        return use.equals(LIGHT_TRUCK);
    }

    /** Whether it is a spare for the way to the next shop, for which no table serves but its own sidewall. */
    public boolean temporary() {
        return use.equals(TEMPORARY);
    }

    /** Whether a load index means the same of both: of light-truck tyres it holds at far higher pressures. */
    public boolean sharesTables(TyreSize other) {
        return lightTruck() == other.lightTruck() && !temporary() && !other.temporary();
    }

    /**
     * Load on one tyre with an index, at the pressure for which its table has it, kg. Empty where no table that is known here
     * tells it: temporary spares, and light-truck sizes that are not listed.
     */
    public Optional<Double> findCapacityKg(LoadIndex index) {
        if (lightTruck()) {
            return LightTruckSize.find(this, index).map(LightTruckSize::capacityKg);
        }
        return temporary() ? Optional.empty() : Optional.of(index.capacityKg());
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

    /** Way of one turn under load when new, mm: of a radial tyre 3.05 D, about 3 % less than π D. */
    public double rollingCircumferenceMm() {
        return rollingFactor() * overallDiameterMm();
    }

    /** Rolling circumference over overall diameter (ETRTO convention; from memory). */
    double rollingFactor() {
        return construction.equals("R") ? 3.05 : 2.99;
    }

    Said turnsFormula() {
        return Formula.of("1 km / ({} D)", Amount.exact(rollingFactor(), ""));
    }

    /** Without service description and what stands behind it. */
    public String designation() {
        return use + sectionWidthMm + "/" + aspectRatioPercent + construction + rimDiameterCode;
    }

    @Override
    public String toString() {
        return "%s%s%s%s"
                .formatted(
                        designation(),
                        commercial ? "C" : "",
                        service == null ? "" : " " + service,
                        extraLoad ? " XL" : "");
    }
}
