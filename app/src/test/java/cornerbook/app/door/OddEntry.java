package cornerbook.app.door;

import cornerbook.app.desk.asked.Slot;
import cornerbook.app.desk.asked.VisitSlots;
import cornerbook.app.desk.link.CarLinks;
import cornerbook.app.desk.link.VisitLinks;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.tool.ShopTool;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import java.util.stream.IntStream;

/** One entry that a person might make, by slip or not, and its correction. */
interface OddEntry {
    /** Whether it was accepted. */
    boolean enter(ServedShop shop, CarPages pages) throws Exception;

    /** Whether it was put right, and the book says so. */
    boolean putRight(ServedShop shop, CarPages pages) throws Exception;

    static OddEntry any(CarHistory car, String visitId, Random random) {
        var visit = car.getVisit(visitId);
        return switch (random.nextInt(10)) {
            case 0 ->
                new Odometer(visit, odometerKm(visit, random), visit.date().minusDays(random.nextInt(3)));
            case 1 -> new Leaving(visit, leaving(car, random));
            case 2 ->
                new Tick(
                        visitId,
                        List.of("RECEIVED", "BURNISHED", "FASTENER.LF.1").get(random.nextInt(3)));
            case 3 -> new Tool(visitId);
            case 4 -> new NewVisit(car, odometerKm(car.visits().getLast(), random));
            default -> typed(car, visit, random);
        };
    }

    private static Typed typed(CarHistory car, Visit visit, Random random) {
        var slots = new VisitSlots(car.vehicle(), visit).all();
        var slot = slots.get(random.nextInt(slots.size()));
        var stands = slot.findIn(visit);
        double value = value(slot.measure(), random);
        if (stands.isPresent() && random.nextBoolean()) {
            // A digit wrong, or one too many.
            double slip = stands.get().value() * List.of(10.0, 0.1, 1.3, 0.7).get(random.nextInt(4));
            value = Math.clamp(slip, slot.measure().lowest(), slot.measure().highest());
        }
        var texts = IntStream.range(0, 30)
                .mapToObj(n -> text(slot.measure(), value(slot.measure(), random)))
                .toList();
        return new Typed(visit.id(), slot, text(slot.measure(), value), random.nextBoolean(), texts);
    }

    /** Anything that a measure takes, its ends often. */
    static double value(Measure measure, Random random) {
        var scale = measure.scale();
        if (scale != null) {
            return random.nextInt(scale.words().size());
        }
        double span = measure.highest() - measure.lowest();
        double value = switch (random.nextInt(6)) {
            case 0 -> measure.lowest();
            case 1 -> measure.highest();
            case 2 -> measure.lowest() + span * 1e-3;
            case 3 -> measure.lowest() + span * random.nextDouble();
            default -> measure.lowest() + span * 0.3 * random.nextDouble();
        };
        return BigDecimal.valueOf(value).setScale(3, RoundingMode.HALF_UP).doubleValue();
    }

    /** As it is typed. */
    static String text(Measure measure, double value) {
        var scale = measure.scale();
        return scale != null
                ? scale.wordOf(value)
                : BigDecimal.valueOf(value).setScale(3, RoundingMode.HALF_UP).toPlainString() + " " + measure.unit();
    }

    private static double odometerKm(Visit visit, Random random) {
        return switch (random.nextInt(4)) {
            case 0 -> Math.min(3_000_000, 10 * visit.odometerKm());
            case 1 -> 3_000_000;
            case 2 -> visit.odometerKm() + random.nextInt(3000);
            default -> visit.odometerKm() + random.nextInt(300_000);
        };
    }

    private static Map<Corner, String> leaving(CarHistory car, Random random) {
        var wheelAt = new HashMap<Corner, String>();
        if (!car.sets().isEmpty()) {
            var wheels = car.sets().get(random.nextInt(car.sets().size())).wheels();
            int turn = random.nextInt(4);
            for (var corner : Corner.values()) {
                wheelAt.put(
                        corner,
                        wheels.get((corner.ordinal() + turn) % wheels.size()).tag());
            }
        }
        return wheelAt;
    }

    /** A reading at the desk or from a tablet; another of these texts puts it right. */
    record Typed(String visitId, Slot slot, String text, boolean atBay, List<String> others) implements OddEntry {
        @Override
        public boolean enter(ServedShop shop, CarPages pages) throws Exception {
            return atBay
                    ? pages.typeAtBay(visitId, slot, text).equals("stored")
                    : pages.typeAtDesk(visitId, slot, text) && stands(shop, text);
        }

        @Override
        public boolean putRight(ServedShop shop, CarPages pages) throws Exception {
            for (var other : others) {
                if (!other.equals(text) && pages.typeAtDesk(visitId, slot, other)) {
                    return stands(shop, other);
                }
            }
            return false;
        }

        private boolean stands(ServedShop shop, String text) {
            double value = cornerbook.app.desk.Typed.valueOf(slot.measure(), text);
            return slot.findIn(shop.visit(visitId))
                    .filter(reading -> Math.abs(reading.value() - value) < 1e-9)
                    .isPresent();
        }
    }

    /** Date and odometer of a visit that is in the book. */
    record Odometer(Visit visit, double odometerKm, LocalDate date) implements OddEntry {
        @Override
        public boolean enter(ServedShop shop, CarPages pages) throws Exception {
            return put(shop, visit, date, odometerKm);
        }

        @Override
        public boolean putRight(ServedShop shop, CarPages pages) throws Exception {
            return put(shop, shop.visit(visit.id()), visit.date(), visit.odometerKm());
        }

        static boolean put(ServedShop shop, Visit seen, LocalDate date, double odometerKm) throws Exception {
            var form = Map.of(
                    "seenDate", seen.date().toString(),
                    "seenOdometer", String.valueOf(seen.odometerKm()),
                    "date", date.toString(),
                    "odometer", BigDecimal.valueOf(odometerKm).toPlainString(),
                    "reason", "A slip",
                    "person", "Ada",
                    "asked", String.valueOf(odometerKm));
            int status = shop.post(VisitLinks.visitData(seen.id()), form).statusCode();
            return CarPages.accepted(status) && shop.visit(seen.id()).equals(seen.withOdometer(date, odometerKm));
        }
    }

    /** A visit that is opened; its odometer is put right. */
    record NewVisit(CarHistory car, double odometerKm, String visitId) implements OddEntry {
        NewVisit(CarHistory car, double odometerKm) {
            this(car, odometerKm, UUID.randomUUID().toString());
        }

        @Override
        public boolean enter(ServedShop shop, CarPages pages) throws Exception {
            var last = car.visits().getLast();
            var form = new HashMap<>(Map.of(
                    "visit", visitId,
                    "date", ServedShop.TODAY.toString(),
                    "odometer", BigDecimal.valueOf(odometerKm).toPlainString(),
                    "asked", String.valueOf(odometerKm)));
            (last.leftOn().isEmpty() ? last.arrivedOn() : last.leftOn())
                    .forEach((corner, tag) -> form.put(corner.name(), tag));
            int status = shop.post(CarLinks.newVisit(car.vehicle().id()), form).statusCode();
            return CarPages.accepted(status);
        }

        @Override
        public boolean putRight(ServedShop shop, CarPages pages) throws Exception {
            pages.assertAnswer(car, visitId, "a new visit");
            var visit = shop.visit(visitId);
            return Odometer.put(
                    shop, visit, visit.date(), car.visits().getLast().odometerKm());
        }
    }

    /** The wheels that the car leaves on; those that it came on put it right. */
    record Leaving(Visit visit, Map<Corner, String> wheelAt) implements OddEntry {
        @Override
        public boolean enter(ServedShop shop, CarPages pages) throws Exception {
            return post(shop, wheelAt);
        }

        @Override
        public boolean putRight(ServedShop shop, CarPages pages) throws Exception {
            var right = visit.leftOn().size() == Corner.values().length ? visit.leftOn() : visit.arrivedOn();
            return right.size() < Corner.values().length || post(shop, right);
        }

        private boolean post(ServedShop shop, Map<Corner, String> chosen) throws Exception {
            var form = new HashMap<>(Map.of("form", UUID.randomUUID().toString()));
            chosen.forEach((corner, tag) -> form.put(corner.name(), tag));
            int status = shop.post(VisitLinks.leaving(visit.id()), form).statusCode();
            return CarPages.accepted(status) && shop.visit(visit.id()).leftOn().equals(chosen);
        }
    }

    /** A step that is ticked, and taken back. */
    record Tick(String visitId, String tick) implements OddEntry {
        @Override
        public boolean enter(ServedShop shop, CarPages pages) throws Exception {
            return send(pages, true);
        }

        @Override
        public boolean putRight(ServedShop shop, CarPages pages) throws Exception {
            return send(pages, false);
        }

        private boolean send(CarPages pages, boolean done) throws Exception {
            var entry = CarPages.entry("tick", null);
            entry.put("tick", tick);
            entry.put("done", done);
            return pages.send(visitId, entry).equals("stored");
        }
    }

    /** A tool that is in hand, and taken back. */
    record Tool(String visitId) implements OddEntry {
        @Override
        public boolean enter(ServedShop shop, CarPages pages) throws Exception {
            return send(pages, "G-1");
        }

        @Override
        public boolean putRight(ServedShop shop, CarPages pages) throws Exception {
            return send(pages, "")
                    && shop.visit(visitId)
                            .card()
                            .findTool(ShopTool.Kind.PRESSURE_GAUGE)
                            .isEmpty();
        }

        private boolean send(CarPages pages, String toolId) throws Exception {
            var entry = CarPages.entry("tool", null);
            entry.put("tool", ShopTool.Kind.PRESSURE_GAUGE.name());
            entry.put("toolId", toolId);
            return pages.send(visitId, entry).equals("stored");
        }
    }
}
