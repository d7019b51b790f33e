package cornerbook.core.tyre.judge;

import cornerbook.core.car.Wheel;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Case;
import cornerbook.core.finding.SetSpan;
import cornerbook.core.tyre.TyreSize;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The wheels that a car leaves on: as recorded, and until then where its wheels will go. */
final class FittedWheels {
    private FittedWheels() {}

    /**
     * A wheel at its corner.
     *
     * @param set the one of the car that it belongs to
     */
    record Fitted(Corner corner, Wheel wheel, WheelSet set) {
        /** Empty where the size cannot be read; the findings on load say so. */
        Optional<TyreSize> size() {
            return TyreSize.find(wheel.tyre().size());
        }

        /** Whether it is a spare for the way to the next shop. */
        boolean spare() {
            return wheel.tyre().isTemporarySpare();
        }

        String tag() {
            return wheel.tag();
        }
    }

    /** In the order of the corners. */
    static List<Fitted> of(Case given) {
        return given.spans().stream()
                .filter(span -> span.role() == SetSpan.Role.GOING_ON)
                .flatMap(span -> Arrays.stream(Corner.values())
                        .flatMap(corner -> Optional.ofNullable(span.wheelAt().get(corner)).stream()
                                .flatMap(tag -> given.history().findWheel(tag).stream())
                                .flatMap(wheel -> given.history().findSetOf(wheel.tag()).stream()
                                        .map(set -> new Fitted(corner, wheel, set)))))
                .toList();
    }

    static List<Fitted> on(Axle axle, List<Fitted> wheels) {
        return wheels.stream().filter(wheel -> wheel.corner().axle() == axle).toList();
    }

    /** Whether a car with two sizes stands with those of each axle on the other. */
    static boolean swapped(Case given) {
        var car = given.vehicle();
        var wheels = of(given);
        return car.staggered()
                && wheels.size() == Corner.values().length
                && all(on(Axle.FRONT, wheels), car.rear().tyreSize())
                && all(on(Axle.REAR, wheels), car.front().tyreSize());
    }

    /** The axles whose sizes are a finding of their own: swapped, or two on one axle. */
    static Set<Axle> toldTogether(Case given) {
        if (swapped(given)) {
            return EnumSet.allOf(Axle.class);
        }
        var told = EnumSet.noneOf(Axle.class);
        for (var axle : Axle.values()) {
            var sizes = on(axle, of(given)).stream()
                    .flatMap(wheel -> wheel.size().stream())
                    .toList();
            if (sizes.size() == 2
                    && sizes.stream().noneMatch(TyreSize::temporary)
                    && !sameSize(sizes.getFirst(), sizes.getLast())) {
                told.add(axle);
            }
        }
        return told;
    }

    private static boolean all(List<Fitted> axle, String size) {
        var asked = TyreSize.find(size);
        return asked.isPresent()
                && axle.stream()
                        .allMatch(wheel -> wheel.size()
                                .filter(fitted -> sameSize(fitted, asked.get()))
                                .isPresent());
    }

    /** Whether two tyres have the same nominal size and structure, whatever load they are made for. */
    static boolean sameSize(TyreSize one, TyreSize other) {
        return one.lightTruck() == other.lightTruck()
                && one.sectionWidthMm() == other.sectionWidthMm()
                && one.aspectRatioPercent() == other.aspectRatioPercent()
                && one.construction().equals(other.construction())
                && one.rimDiameterCode() == other.rimDiameterCode();
    }
}
