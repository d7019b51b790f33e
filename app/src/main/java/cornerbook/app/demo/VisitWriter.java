package cornerbook.app.demo;

import cornerbook.app.demo.CastMember.LatestVisit;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.JobCard;
import cornerbook.core.car.Visit;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.SeasonKind;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;

/** Lives through the seasons of one car: drives it, brings it in, has it measured, changes its wheels. */
final class VisitWriter {
    /** The bay and the store are warmer than the air outside. */
    private static final int TYRES_WARMER_K = 4;
    /** The car that had new pads in front. */
    private static final int NEW_FRONT_PADS = 11;

    private static final int SEASONS_ON_NEW_PADS = 3;

    private final CastMember member;
    private final VisitDays days;
    private final SplittableRandom random;
    private final CarTruth truth;
    /** The wheels of each set as they stood when it was last on the car. */
    private final Map<SeasonKind, Map<Corner, String>> lastStand = new HashMap<>();

    VisitWriter(CastMember member, VisitDays days) {
        this.member = member;
        this.days = days;
        this.random = new SplittableRandom(9_000L + member.number());
        this.truth = new CarTruth(member, random);
    }

    CarHistory write() {
        List<LocalDate> dates = days.draw(random);
        List<Visit> visits = new ArrayList<>();
        Map<Corner, String> fitted = firstStand(Season.opposite(Season.of(dates.getFirst())));
        LocalDate before = dates.getFirst();
        double odometerKm = member.odometerKm();
        for (int i = 0; i < VisitDays.VISITS; i++) {
            LocalDate date = dates.get(i);
            int seasonsToCome = VisitDays.VISITS - 1 - i;
            if (i > 0) {
                long days = ChronoUnit.DAYS.between(before, date);
                double km = Math.rint(member.kmPerDay() * days * (1 + 0.04 * CarTruth.bounded(random)));
                truth.drive(fitted, km, seasonsToCome + 1);
                odometerKm += km;
            }
            LatestVisit progress = i == VisitDays.VISITS - 1 ? days.progress(date) : LatestVisit.FINISHED;
            if (progress != LatestVisit.AWAITED) {
                Visit visit = visit(i + 1, date, odometerKm, fitted, seasonsToCome, progress);
                visits.add(visit);
                fitted = visit.leftOn();
            }
            before = date;
        }
        return new CarHistory(member.vehicle(), member.customer(), member.sets(), visits);
    }

    private Visit visit(
            int number,
            LocalDate date,
            double odometerKm,
            Map<Corner, String> arrivedOn,
            int seasonsToCome,
            LatestVisit progress) {
        String id = member.vehicle().id() + "-v" + number;
        ReadingWriter writer = new ReadingWriter(id, member, truth, random);
        SeasonKind goingOn = Season.of(date);
        double tyreC = goingOn == SeasonKind.WINTER ? 6 + random.nextInt(4) : 12 + random.nextInt(5);
        double outsideC = tyreC - TYRES_WARMER_K;
        writer.temperatures(tyreC, outsideC);
        writer.pressureFound(arrivedOn, tyreC, seasonsToCome <= 1);
        boolean measured = progress != LatestVisit.ARRIVED;
        writer.tread(arrivedOn, measured ? List.of(Corner.values()) : List.of(Corner.LF, Corner.RF));
        Map<Corner, String> leftOn = Map.of();
        if (measured) {
            writer.brakes(seasonsToCome + 1);
            writer.brakeFluid(seasonsToCome);
        }
        if (progress == LatestVisit.FINISHED) {
            leftOn = nextStand(arrivedOn, goingOn);
            if (!leftOn.values().containsAll(arrivedOn.values())) {
                writer.tread(leftOn, List.of(Corner.values()));
            }
            writer.pressureSet(leftOn, tyreC, outsideC);
            if (seasonsToCome <= 1) {
                writer.sensors(leftOn, tyreC, seasonsToCome == 0);
            }
            writer.wheelTorque(leftOn);
            writer.batteryCheck(tyreC + 2, seasonsToCome);
            if (goingOn == SeasonKind.WINTER) {
                writer.winterMarks(leftOn);
                writer.brakesCleaned();
            }
            if (member.number() == NEW_FRONT_PADS && seasonsToCome == SEASONS_ON_NEW_PADS) {
                writer.newPads(Axle.FRONT);
            }
            writer.parkingBrake();
        }
        return new Visit(
                id,
                date,
                odometerKm,
                arrivedOn,
                leftOn,
                writer.readings(),
                new JobCard(
                        random.nextBoolean() ? "Ilse Vantour" : "Bram Quenette",
                        List.of(),
                        note(seasonsToCome),
                        null,
                        progress == LatestVisit.FINISHED
                                ? DemoTools.at(date, member.number(), seasonsToCome == 0)
                                : List.of()),
                Set.of());
    }

    private @Nullable String note(int seasonsToCome) {
        if (seasonsToCome > 0) {
            return null;
        }
        return switch (member.trouble()) {
            case SEIZED_PAD -> "Right rear wheel warm after the drive in.";
            case UNEVEN_SHOULDER -> "Customer says that it pulls to the left.";
            case TIRED_BATTERY -> "Did not wake up twice in the last month.";
            case SLOW_LEAK -> "Pressure light on for two weeks.";
            case WET_BRAKE_FLUID -> "Customer says that the pedal goes soft on the long descent.";
            case NONE -> null;
        };
    }

    /** The wheels as they stand after the change-over: the stored set, or the same set rotated. */
    private Map<Corner, String> nextStand(Map<Corner, String> arrivedOn, SeasonKind goingOn) {
        if (member.sets().size() == 1) {
            return rotated(arrivedOn);
        }
        lastStand.put(Season.opposite(goingOn), arrivedOn);
        Map<Corner, String> last = lastStand.get(goingOn);
        return last == null ? firstStand(goingOn) : rotated(last);
    }

    private Map<Corner, String> firstStand(SeasonKind season) {
        WheelSet set = member.sets().stream()
                .filter(candidate -> candidate.season() == season)
                .findFirst()
                .orElseGet(() -> member.sets().getFirst());
        Map<Corner, String> stand = new EnumMap<>(Corner.class);
        List<Corner> corners = List.of(Corner.values());
        for (int i = 0; i < corners.size(); i++) {
            stand.put(corners.get(i), set.wheels().get(i).tag());
        }
        return stand;
    }

    /**
     * The customary rotations: across the axle when staggered, front to rear on the same side when directional, the cross
     * forward for front drive and rearward for the others.
     */
    private Map<Corner, String> rotated(Map<Corner, String> stand) {
        Map<Corner, String> rotated = new EnumMap<>(Corner.class);
        stand.forEach((corner, tag) -> rotated.put(target(corner, directional(tag)), tag));
        return rotated;
    }

    private Corner target(Corner corner, boolean directional) {
        if (member.vehicle().staggered()) {
            return directional ? corner : acrossTheAxle(corner);
        }
        Corner sameSide = switch (corner) {
            case LF -> Corner.LR;
            case RF -> Corner.RR;
            case LR -> Corner.LF;
            case RR -> Corner.RF;
        };
        boolean crosses = member.vehicle().drive() == DriveLayout.FRONT
                ? corner.axle() == Axle.REAR
                : corner.axle() == Axle.FRONT;
        return crosses && !directional ? acrossTheAxle(sameSide) : sameSide;
    }

    private static Corner acrossTheAxle(Corner corner) {
        return switch (corner) {
            case LF -> Corner.RF;
            case RF -> Corner.LF;
            case LR -> Corner.RR;
            case RR -> Corner.LR;
        };
    }

    private boolean directional(String tag) {
        return member.sets().stream()
                .flatMap(set -> set.wheels().stream())
                .anyMatch(wheel -> wheel.tag().equals(tag)
                        && Objects.requireNonNullElse(wheel.tyre().directional(), false));
    }
}
