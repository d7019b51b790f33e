package cornerbook.app.demo;

import cornerbook.app.demo.CastMember.Trouble;
import cornerbook.core.car.Wheel;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.random.RandomGenerator;

/**
 * What is true of a car, without the error of any gauge. Tread, pads and discs only ever get thinner.
 *
 * <p>All rates are invented; they lie near the defaults of the wear model so that the demonstration is believable.
 */
final class CarTruth {
    private static final double PAD_MM_PER_1000_KM = 0.035;
    private static final double DRAGGING_PAD_MM_PER_1000_KM = 0.20;
    private static final double DISC_MM_PER_1000_KM = 0.006;
    private static final double LINING_MM_PER_1000_KM = 0.02;
    private static final double DRUM_MM_PER_1000_KM = 0.004;
    static final double SHOULDER_FACTOR = 2.2;
    /** A pad that seizes does so within the last of the seasons. */
    private static final int SEASONS_WITH_SEIZED_PAD = 2;

    static final Corner SEIZED_CORNER = Corner.RR;
    static final Spot SEIZED_PAD = Spot.OUTER;
    private static final Corner SHOULDER_CORNER = Corner.LF;
    private static final Spot SHOULDER = Spot.OUTER;

    private final CastMember member;
    private final Map<String, Map<Spot, Double>> depthMm = new HashMap<>();
    private final Map<Corner, Map<Spot, Double>> padMm = new EnumMap<>(Corner.class);
    private final Map<Corner, Double> discMm = new EnumMap<>(Corner.class);
    private final Map<Corner, Double> liningMm = new EnumMap<>(Corner.class);
    private final Map<Corner, Double> drumMm = new EnumMap<>(Corner.class);

    CarTruth(CastMember member, RandomGenerator random) {
        this.member = member;
        for (WheelSet set : member.sets()) {
            for (Wheel wheel : set.wheels()) {
                double depth = Objects.requireNonNull(wheel.tyre().newDepthMm()) + 0.12 * bounded(random);
                Map<Spot, Double> grooves = new EnumMap<>(Spot.class);
                for (Spot groove : Spot.values()) {
                    grooves.put(groove, depth);
                }
                depthMm.put(wheel.tag(), grooves);
            }
        }
        for (Corner corner : Corner.values()) {
            var drum = member.vehicle().axle(corner.axle()).brake().drum();
            if (drum.isPresent()) {
                padMm.put(corner, new EnumMap<>(Spot.class));
                liningMm.put(corner, drum.get().liningNewMm() - 0.7 + 0.05 * bounded(random));
                drumMm.put(corner, drum.get().drumNewMm() + 0.25 + 0.02 * bounded(random));
                continue;
            }
            double pad = corner.axle() == Axle.FRONT
                    ? member.frontPadMm()
                    : member.vehicle().rear().brake().padNewMm() - 1.6;
            Map<Spot, Double> pads = new EnumMap<>(Spot.class);
            pads.put(Spot.INNER, pad + 0.1 * bounded(random));
            pads.put(Spot.OUTER, pad + 0.1 * bounded(random));
            padMm.put(corner, pads);
            discMm.put(corner, member.vehicle().axle(corner.axle()).brake().discNewMm() - 0.3 + 0.05 * bounded(random));
        }
    }

    /** Standard normal, drawn again until within two and a half. */
    static double bounded(RandomGenerator random) {
        double value = random.nextGaussian();
        while (Math.abs(value) > 2.5) {
            value = random.nextGaussian();
        }
        return value;
    }

    /**
     * Drives the car.
     *
     * @param seasonsLeft seasons from this one until the latest visit, this one counted
     */
    void drive(Map<Corner, String> fitted, double distanceKm, int seasonsLeft) {
        double thousandKm = distanceKm / 1000;
        fitted.forEach((corner, tag) -> {
            double wear = thousandKm * member.wearMmPer1000Km().getOrDefault(corner, 0.0);
            Map<Spot, Double> grooves = depthMm.getOrDefault(tag, Map.of());
            grooves.replaceAll((groove, depth) -> Math.max(0, depth - wear * shoulderFactor(corner, groove)));
            Map<Spot, Double> pads = padMm.getOrDefault(corner, Map.of());
            pads.replaceAll((side, pad) -> Math.max(0, pad - thousandKm * padRate(corner, side, seasonsLeft)));
            discMm.computeIfPresent(corner, (at, disc) -> disc - thousandKm * DISC_MM_PER_1000_KM);
            liningMm.computeIfPresent(corner, (at, lining) -> lining - thousandKm * LINING_MM_PER_1000_KM);
            drumMm.computeIfPresent(corner, (at, drum) -> drum + thousandKm * DRUM_MM_PER_1000_KM);
        });
    }

    boolean seized(Corner corner, Spot side, int seasonsLeft) {
        return member.trouble() == Trouble.SEIZED_PAD
                && corner == SEIZED_CORNER
                && side == SEIZED_PAD
                && seasonsLeft <= SEASONS_WITH_SEIZED_PAD;
    }

    void fitNewPads(Corner corner) {
        double newMm = member.vehicle().axle(corner.axle()).brake().padNewMm();
        padMm.getOrDefault(corner, Map.of()).replaceAll((side, pad) -> newMm);
    }

    double depthMm(String tag, Spot groove) {
        return depthMm.getOrDefault(tag, Map.of()).getOrDefault(groove, 0.0);
    }

    double padMm(Corner corner, Spot side) {
        return padMm.getOrDefault(corner, Map.of()).getOrDefault(side, 0.0);
    }

    double liningMm(Corner corner) {
        return liningMm.getOrDefault(corner, 0.0);
    }

    double drumMm(Corner corner) {
        return drumMm.getOrDefault(corner, 0.0);
    }

    double discMm(Corner corner) {
        return discMm.getOrDefault(corner, 0.0);
    }

    private double shoulderFactor(Corner corner, Spot groove) {
        boolean worn = member.trouble() == Trouble.UNEVEN_SHOULDER && corner == SHOULDER_CORNER && groove == SHOULDER;
        return worn ? SHOULDER_FACTOR : 1;
    }

    private double padRate(Corner corner, Spot side, int seasonsLeft) {
        if (seized(corner, side, seasonsLeft)) {
            return DRAGGING_PAD_MM_PER_1000_KM;
        }
        return corner.axle() == Axle.FRONT ? 1.3 * PAD_MM_PER_1000_KM : PAD_MM_PER_1000_KM;
    }
}
