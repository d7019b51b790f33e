package cornerbook.app.bench.filled;

import cornerbook.app.bench.Ask;
import cornerbook.app.bench.Question;
import cornerbook.words.UnitSystem;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** An invented car and its tools, for a page that nobody has typed into yet. No value of it is proof of anything. */
public final class WorkedExample {
    private static final int MONTHS_SINCE_CALIBRATION = 8;
    private static final int MONTHS_OF_SENSOR = 62;

    /** By calculator; quantities in the book's units. */
    private static final Map<String, String> TYPED = Map.ofEntries(
            Map.entry(
                    "lift",
                    "point-height: 240; clearance: 165; arm-height: 110; adapter-height: 40; drive-over: 45; raised: 1900; car-height: 1560; ceiling: 3400; front: 1050; rear: 1150; wheelbase: 2800; points-front: 650; points-rear: 2150; points-width: 1500; arm-rating: 1250; hoist-rating: 4000; left-share: 51; wheels-off: 24"),
            Map.entry(
                    "pressure",
                    "placard: 250; tyre-at: 18; stands-at: -5; maximum: 350; altitude: 150; gauge-offset: 3; gauge-error: 3; months: -1°C, -7°C, -10°C, -9°C, -3°C; coldest: -24; axle-load: 1180; load-index: 98; reference: 250; at-pressure: 250; heavier-side: 52; first: 250; first-at: 18; second: 214; second-at: -2; days: 21; error: 3; sensor-reads: 264; gauge-reads: 250; sensor-at: 24; gauge-at: 18; sensor-placard: 250; learning: tool"),
            Map.entry(
                    "torque",
                    "torque: 130; count: 5; length: 450; adapter: 60; angle: 0; wrench-from: 40; wrench-to: 200; wrench-offset: 3; thread: M14×1.5; class: 10.9; on-thread: dry; cone: 60; bar: 90; bar-spread: 15; cycles: 1200"),
            Map.entry(
                    "tyre",
                    "placard: 225/55R18 98V; other: 235/50R18 101H; size: 225/55R18 98V; rim: 7.5; tin: DOT 1AB C2D EFH 3519; worn: 225/55R18=7 of 8 mm; worn: 225/55R18=5.5 of 8 mm; circumference-limit: 13; left-tread: 4.1 6.0 6.3 mm; right-tread: 4.0 6.1 6.2 mm; new-tread: 8; run: 24000; hub: 5x114.3 M14x1.5 cone 64.1 ET45 7.5J; wheel: 5x114.3 M14x1.5 cone 66.6 ET40 8J; caliper-gap: 6"),
            Map.entry(
                    "battery",
                    "chemistry: agm; temperature: 5; volts: 12.55; rested: 12; rated: 680; standard: en; measured: 560; compare-with: sae; load-volts: 9.9; capacity: 70; standby: 0.06; health: 85"),
            Map.entry(
                    "burnish",
                    "mass: 1900; front-share: 68; axle: front; disc-mass: 7.2; disc-diameter: 320; tyre: 225/55R18; air: 5"),
            Map.entry(
                    "cost",
                    "price: 168; rolling: B; wear: 0.13; other-price: 124; other-rolling: D; other-wear: 0.16; end-tread: 1.6; tyres: 4; carried: 2080; energy: electricity; energy-price: 0.35"),
            Map.entry(
                    "renew",
                    "front-depth: 4.9; rear-depth: 6.4; front-wear: 0.21; rear-wear: 0.14; season-distance: 8500; price: 168; price-of-four: 160; visit: 60; end-tread: 1.6; new-tread: 8; spread: 25; tread-limit: 4"),
            Map.entry(
                    "drag",
                    "lf: 58; rf: 61; lr: 112; rr: 51; air: 12; speed: 60; minutes: 20; tyre: 225/55R18; front-disc-mass: 7.2; front-disc-diameter: 320; rear-disc-mass: 4.6; rear-disc-diameter: 300; rear-solid: yes"),
            Map.entry(
                    "guides",
                    "service-price: 140; seized-price: 420; pads: 8; distance: 15000; salt-share: 40; friction-share: 30; cleaned: 2026-10-20"),
            Map.entry(
                    "changeover",
                    "means: -10, -8.5, -2.5, 5.5, 13, 18, 21, 20, 15.5, 8.5, 2, -6; place: CA-QC; cars: 300; per-day: 12"));

    private WorkedExample() {}

    /** What a person of these units would have typed, by name of the question. */
    public static Map<String, List<String>> of(Question question, UnitSystem system, LocalDate today) {
        Map<String, List<String>> typed = new LinkedHashMap<>();
        for (var pair : TYPED.getOrDefault(question.name(), "").split("; ", -1)) {
            int colon = pair.indexOf(": ");
            var name = pair.substring(0, colon);
            typed.merge(name, List.of(inUnits(question, name, pair.substring(colon + 2), system)), WorkedExample::both);
        }
        if (question.name().equals("pressure")) {
            typed.put(
                    "sensor-since", List.of(today.minusMonths(MONTHS_OF_SENSOR).toString()));
        }
        if (question.name().equals("torque")) {
            typed.put(
                    "calibrated",
                    List.of(today.minusMonths(MONTHS_SINCE_CALIBRATION).toString()));
        }
        return typed;
    }

    private static String inUnits(Question question, String name, String text, UnitSystem system) {
        return question.asks().stream()
                .filter(ask -> ask.name().equals(name))
                .map(ask ->
                        ask.kind() instanceof Ask.Quantity quantity ? inUnits(text, quantity.bookUnit(), system) : text)
                .findFirst()
                .orElseThrow();
    }

    /** Rounded as the trade reads it, where the unit is another one. */
    private static String inUnits(String text, String bookUnit, UnitSystem system) {
        var shown = system.show(Double.parseDouble(text), bookUnit);
        return system.unitOf(bookUnit).equals(bookUnit) ? text : shown.substring(0, shown.lastIndexOf(' '));
    }

    private static List<String> both(List<String> first, List<String> second) {
        return List.of(first.getFirst(), second.getFirst());
    }
}
