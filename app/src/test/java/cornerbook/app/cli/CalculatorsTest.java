package cornerbook.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.demo.DemoShop;
import cornerbook.app.exchange.ClimateFile;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.json.JsonMapper;

/** The verbs that compute: their answers are checked where they are computed, here only that they arrive. */
class CalculatorsTest {
    private record Outcome(int exitCode, String out, String err) {}

    private static Outcome run(String... arguments) {
        var out = new StringWriter();
        var err = new StringWriter();
        int exitCode = Main.run(Map.of(), new PrintWriter(out), new PrintWriter(err), arguments);
        return new Outcome(exitCode, out.toString(), err.toString());
    }

    /** The arguments as in a shell: parted by blanks, quantities in single quotes. */
    private static String[] arguments(String words) {
        return java.util.regex.Pattern.compile("'([^']*)'|(\\S+)")
                .matcher(words)
                .results()
                .map(match -> match.group(1) == null ? match.group(2) : match.group(1))
                .toArray(String[]::new);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "torque '30 lbf·ft' --length '12 in' --adapter '6 in' | Set the wrench to 27 N·m (20 lbf·ft)",
                "torque 130 --thread M14x1.5 --class 10.9 --on-thread oiled | Mind: A torque given for clean, dry threads clamps 25 to 33 % more",
                "torque 130 --count 5 | Order, places counted clockwise from the top: 1 3 5 2 4",
                "torque 130 --thread M14x1.5 --class 10.9 --ball 14 | Clamp load of M14×1.5 class 10.9",
                "torque 130 --thread M14x1.5 --class 10.9 --friction '0.10 to 0.16' | friction 0.1 to 0.16",
                "lift --front 1000 --rear 1000 --wheelbase 2800 --points 'LF 600 750; RF 600 -750; LR 2000 650; RR 2000 -650' --arm-rating 1000 --hoist-rating 4000 | Arm LR: 5",
                "torque '100 lbf·ft' --thread '1/2-20 UNF' --class 'grade 8' | Clamp load of 1/2-20 grade 8",
                "torque 130 --bar 100 --bar-spread 15 | Torque bar: ends between 85 N·m (63 lbf·ft) and 115 N·m (85 lbf·ft)",
                "lift --front 1000 --rear 1000 --wheelbase 2800 --points-front 600 --points-rear 2000 --points-width 1500 --arm-rating '2000 lb' --hoist-rating 4000 | Arm LF: 429 kg (945 lb)",
                "lift --front 1000 --rear 1000 --wheelbase 2800 --points-front 600 --points-rear 2000 --points-width 1500 --arm-rating '2000 lb' --hoist-rating 4000 --off 'drive battery=450 kg@1400 mm' | Hoist: 1 550 kg (3 417 lb), 39 % of its rating",
                "lift --point-height '5.5 in' --clearance 110 --arm-height 95 --adapter-height 60 | blocks needed: 25 mm (1.0 in)",
                "lift --front '3000 lb' --rear '6000 lb' --hoist-rating '12000 lb' | Arm RR: 1 361 kg (3 000 lb) with even pads, 100 % of its rating; at most 2 041 kg (4 500 lb), 150 %, when one pad bears nothing",
                "lift --front '3000 lb' --rear '6000 lb' --hoist-rating '12000 lb' | Mind: With even pads the ratings are kept; with one pad bearing nothing the arm at",
                "lift --front '3000 lb' --rear '6000 lb' --hoist-rating '10000 lb' | The arm at LR carries 1 361 kg with even pads, more than its rating of 1 134 kg: do not lift.",
                "lift --front 1000 --rear 1000 --arm-rating 1000 --hoist-rating 4000 | Reckoned as if the pads stood under the axles",
                "lift --point-height 240 --clearance 165 --arm-height 110 --drive-over 160 | The car would touch what it drives over; 5 mm",
                "lift --point-height 180 --adapter-height 40 --raised 1900 --car-height 1580 --ceiling 3400 | Pads to 1 860 mm (73.2 in), where the ceiling ends the lift; the lift points then stand 1 720 mm (67.7 in) higher",
                "pressure --placard '36 psi' --tyre-at 20 --stands-at 0 | Set now to 274 kPa (39.7 psi) on this gauge",
                "pressure --placard 250 --tyre-at 20 --stands-at 20 --driven | Mind: The tyre was driven and is warm: never let air out",
                "pressure --placard 240 --tyre-at 20 --stands-at 20 --months 10,0,-8 --coldest -25 | Coldest morning, −25 °C (−13 °F): 188 kPa (27.2 psi); the warning comes below 180 kPa",
                "pressure --axle-load 1280 --load-index 100 --reference 250 --at-pressure 240 | Needed for 640 kg (1 411 lb) on the tyre: 189 kPa",
                "pressure --first 250 --first-at 20 --second 190 --second-at 0 --days 30 | a slow leak",
                "pressure --sensor-reads 264 --gauge-reads 250 --sensor-placard 250 | The sensor reads 14 kPa (2.0 psi) too much: off The warning comes below 174 kPa (25.2 psi)",
                "pressure --sensor-reads 35 --sensor-at 70 --gauge-reads 34.062 --gauge-at 60 --sensor-placard 35 --units us | The sensor reads 0 psi",
                "pressure --sensor-reads 264 --gauge-reads 263 --gauge-offset 3 --sensor-placard 250 --placard 250 --tyre-at 20 --stands-at 0 | The sensor reads 4 kPa (0.6 psi) too much: accurate",
                "pressure --sensor-since 2015-01-10 | Mind: At this age the sensor's battery ends",
                "pressure --learning tool | other wheels are on; their sensors have to be taught with the tool",
                "pressure --learning indirect | reset it after the pressures are set",
                "battery --chemistry agm --capacity 60 --standby 0.1 --parked-at 40 | Mind: The charge is at the reserve already",
                "tyre --placard '205/55R16 91V' --other '205/60R16 92H' | circumference 3.244 %",
                "tyre --placard '205/55R16 91V' --other '205/60R16 92H' | Mind: Speed symbol H is below the placard's V",
                "tyre --size 205/55R16 --rim 7.5 | Section width on a rim of 7.5 in: 224 mm",
                "tyre --size 205/60R15 --rim 6 | Section width on a rim of 6 in: 209 mm",
                "tyre --size 205/60R15 --rim 5.5 | Section width on a rim of 5.5 in: 204 mm",
                "tyre --size 'LT245/75R16 120/116S' --rim 8 | a rim for this size",
                "tyre --size 'LT245/75R16 120/116S' | Load index 120: 1 380 kg (3 042 lb) on one tyre, 1 260 kg (2 778 lb) on each of two side by side",
                "tyre --size 'T145/80D18 103M' --rim 4 | A rim of 4 in is not judged for this size",
                "tyre --size 'T145/80D18 103M' | A temporary spare is not judged by the tables for passenger tyres",
                "tyre --size '195/75R16C 121/118S' | Load index 121: 1 450 kg (3 197 lb) on one tyre, 1 320 kg (2 910 lb) on each of two side by side",
                "tyre --size 'LT245/75R17 121/118S' | Mind: Rims and load of LT245/75R17 are not judged",
                "tyre --size '225/55R18 102V XL' | Speed symbol V: to 240 km/h (149 mph), with 774 kg (1 705 lb) at that speed",
                "tyre --size '225/55R18 102V XL' --units us | The load index holds at 42.1 psi",
                "tyre --tin 'DOT 1AB C2D EFH 0120' | Made in week 1 of 2020, 5 Jan 2020 to 11 Jan 2020",
                "tyre --tin 'DOT 1AB C2D EFH 0105' --place ca-qc | Replace it: 10 years are the most",
                "tyre --worn '225/55R18=5.5 of 8 mm' --worn '225/55R18=9/32 of 10/32 in' --tread-limit '2/32 in' | Treads differ by 1.7 mm, above the limit of 1.6 mm",
                "tyre --worn 225/55R18=0 --worn '225/55R18=2 mm' --circumference-limit 10 | differ by 13 mm (0.5 in), above the limit",
                "tyre --hub '5x114.3 M14x1.5 cone 64.1 ET45 7.5J' --wheel '5x114.3 M14x1.5 cone 66.6 ET40 7.5J' | The wheel mounts on the hub Inner edge 5 mm (0.2 in) outward, outer edge 5 mm (0.2 in) outward",
                "battery --chemistry agm --temperature 26.7 --volts 12.6 --rested 12 | State of charge: about 75 %",
                "battery --chemistry agm --rated 600 --standard sae --compare-with en | 600 A by SAE is about 552 to 570 A by EN",
                "battery --chemistry efb --rated 600 --standard en --measured 450 | 75 % of its rating: watch it",
                "battery --chemistry agm --temperature 0 --rated 600 --standard sae --measured 390 --tester-without-temperature | 100 % of its rating: sound",
                "battery --chemistry agm --rated 600 --standard sae --load-volts 9.7 | Load test at 300 A: 9.70 V",
                "battery --chemistry lithium --capacity 60 --standby '100 mA' --health 80 | 10 days",
                "battery --chemistry agm --temperature 26.7 --volts 12.3 --rested 12 | Its acid freezes at about −22 °C",
                "battery --chemistry flooded --temperature -20 --volts 11.9 --rested 12 | Mind: It may be frozen: never charge",
                "battery --chemistry agm --capacity 60 --discharged 45 | 75 % of its capacity: replace it soon",
                "burnish --mass 1900 --front-share 68 --disc-mass 7.2 --disc-diameter 320 --tyre 225/55R18 --air 5 | 8 stops from 65 km/h (40 mph) to 15 km/h (9 mph), 30 s apart",
                "burnish --mass 1900 --front-share 68 --disc-mass 7.2 --disc-diameter 320 --tyre 225/55R18 --regeneration 90 | Mind: However many stops, the disc stays below 100 °C",
                "burnish --mass '4189 lb' --front-share 68 --disc-mass 7.2 --disc-diameter '12.6 in' --tyre 225/55R18 --from '100 mph' --limit 120 | Mind: Do not drive this",
                "cost --price 150 --rolling B --wear 0.13 --other-price 110 --other-rolling D --other-wear 0.17 --carried 2100 --energy-price 0.35 | This tyre is cheaper, by about 6.60 per 1 000 km (621 mi) Its higher price is paid back after about 22 500 km",
                "cost --price 150 --rolling B --wear 0.13 --other-price 110 --other-rolling D --other-wear 0.17 --carried 2100 --energy-price 0.35 | The rolling of the other tyre takes 6.97 to 8.04 kWh per 100 km (62 mi)",
                "cost --price 150 --rolling B --wear 0.13 --carried 2100 --energy-price 0.35 --energy diesel | This tyre lasts 49 200 km (30 571 mi)",
                "cost --price 150 --rolling B --wear 0.13 --carried 2100 --energy-price 0.35 --other-price 140 --other-rolling 7,2 --other-wear 0.13 | Which of the two is cheaper is not told",
                "renew --front-depth 4.9 --rear-depth 6.4 --front-wear 0.21 --rear-wear 0.14 --season-distance 8500 --price 168 --visit 60 --tread-limit 4 | Four now:",
                "renew --front-depth 4.9 --rear-depth 6.4 --front-wear 0.21 --rear-wear 0.14 --season-distance 8500 --price 168 --visit 60 --tread-limit 1 | Not open: two now, two when due. The axles would differ by 1.60 mm at once, more than the 1.00 mm allowed.",
                "renew --front-depth 2.4 --rear-depth 6.4 --front-wear 0.21 --rear-wear 0.14 --season-distance 8500 --price 168 --visit 60 | Not open: four next season. The front pair that would stay on, 2.4 mm, is not likely to hold the season (less than 1 %).",
                "guides --service-price 140 --seized-price 420 --cleaned 2026-10-20 | Cleaned every 14 months it costs least, 294.79 a year; next on 4 Dec 2027",
                "changeover --means -10,-8.5,-2.5,5.5,13,18,21,20,15.5,8.5,2,-6 --place ca-qc | By law not before 16 Mar",
                "changeover --means 20,20,21,22,24,26,27,27,26,24,22,21 | No days in autumn: at this place cold and warm days do not part clearly",
                "guides --service-price 140 --seized-price 20 | At these prices no interval up to 120 months is cheapest",
                "drag --lr 121 --rr 64 --air 12 --minutes 20 --tyre 225/55R18 --rear-disc-mass 4.5 --rear-disc-diameter 300 --rear-solid | The brake LR is 57 °C warmer than RR: if it drags, it takes 15 to 31 N more, and 0.4 to 0.9 kWh more at the wheel per 100 km (62 mi)",
                "drag --lr 121 --rr 64 --air 12 --minutes 20 --tyre 225/55R18 --rear-disc-mass 4.5 --rear-disc-diameter 300 --rear-solid | Brake RR: 230 to 473 W and 14 to 28 N over the drive",
                "drag --lr 121 --rr 64 --air 12 --minutes 20 --tyre 225/55R18 --rear-disc-mass 4.5 --rear-disc-diameter 300 --rear-solid | Mind: The two brakes do not work alike",
                "drag --lf 60 --rf 64 --tyre 225/55R18 --front-disc-mass 7.2 --front-disc-diameter 320 | The front discs differ by 4 °C, as those of two good brakes may",
                "tyre --left-tread '4.1 6.0 6.3 mm' --right-tread '4.0 6.1 6.2' --run 24000 | both inner shoulders low: toe out, or too much negative camber on both wheels (chance more than 99 %) The lowest groove is good for 14 400 km (8 948 mi) more left as it is, and for 31 100 km",
                "tyre --left-tread '4.1 6.0 6.3 mm' --right-tread '4.0 6.1 6.2' --run 24000 | Mind: Look for play in ball joints",
                "tyre --left-tread '5/32 7/32 7/32 in' --right-tread '7/32 7/32 8/32 in' --new-tread '10/32 in' | only the left inner shoulder low",
                "tyre --left-tread '5.9 6.0 6.1' --right-tread '5.9; 6.1; 6.2 mm' | points to nothing that could be named",
                "torque 98 --length 18 --adapter 6 --units us | Set the wrench to 74 lbf·ft, so that the fastener gets 98 lbf·ft",
                "pressure --placard 36 --tyre-at 68 --stands-at 32 --units us | Set now to 39.7 psi on this gauge",
                "torque 130 --calibrated 2025-01-10 --cycles 100 | Mind: The wrench is due for calibration"
            })
    void answersInWords(String words, String part) {
        var outcome = run(arguments(words));
        assertThat(outcome.err()).isEmpty();
        assertThat(outcome.exitCode()).isZero();
        assertThat(outcome.out().replaceAll("\\s+", " ")).contains(part);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "torque 130 | 3 | torque alone asks nothing",
                "torque 130 --thread M13 --class 10.9 | 3 | thread \"M13\" has no coarse pitch",
                "torque 130 --wrench-from 5 --wrench-to 60 --count 5 | 3 | setting of the wrench is 130 N·m, expected 5 to 60 N·m",
                "torque 130 --count 12 | 3 | fasteners per wheel are 12, expected 3 to 10",
                "torque 130 --thread M14 --class 10.9 --on-thread wet | 3 | --on-thread: is \"wet\", expected one of dry oiled anti-seize",
                "torque '130 psi' --count 5 | 2 | has the unit \"psi\", expected one of N·m",
                "pressure | 3 | nothing to compute",
                "pressure --placard 250 --tyre-at 20 --stands-at 0 --coldest -20 | 3 | months of the season are half given",
                "pressure --placard 50 --tyre-at 20 --stands-at 0 | 3 | placard pressure is 50 kPa, expected 100 to 800 kPa",
                "pressure --axle-load 1700 --load-index 91 --reference 250 --at-pressure 240 | 3 | is above the 615 kg of load index 91",
                "pressure --sensor-reads 250 --gauge-reads 250 | 2 | --sensor-placard",
                "pressure --sensor-reads 2500 --gauge-reads 250 --sensor-placard 250 | 3 | pressure of the sensor is 2 500 kPa, expected 0 to 1 000 kPa",
                "pressure --sensor-since 2999-01-01 | 3 | battery of the sensor runs from 1 Jan 2999, expected a day not after",
                "pressure --learning magic | 3 | --learning: is \"magic\", expected one of itself tool driving indirect",
                "tyre | 3 | nothing to compute",
                "tyre --size 205-55R16 --rim 7.5 | 3 | where it needs a slash",
                "tyre --worn 225/55R18 --circumference-limit 10 | 3 | worn tyre is \"225/55R18\", expected its size and the depth",
                "tyre --size 'HL275/40R22 110Y XL' | 3 | XL stands with HL, expected only one",
                "tyre --tin 'DOT AB C2 5419' | 3 | week of manufacture is 54, expected 01 to 53",
                "tyre --tin 3519 --place XX | 3 | --place: is \"XX\", expected one of",
                "tyre --worn 225/55R18=8 --worn '225/55R18=9 of 8' --tread-limit 2 | 3 | expected no more tread left than new",
                "tyre --worn 225/55R18=1 --worn 225/55R18=2 --tread-limit 2 --circumference-limit 9 | 2 | expected one of the two",
                "tyre --hub 5x114.3 --wheel 5x112 | 3 | mounting is \"5x114.3\", expected as in",
                "burnish --mass 1900 | 2 | --front-share",
                "burnish --mass 1900 --front-share 168 --disc-mass 7.2 --disc-diameter 320 --tyre 225/55R18 | 3 | front share is 1.68, expected 0",
                "burnish --mass 1900 --front-share 68 --disc-mass '7 psi' --disc-diameter 320 --tyre 225/55R18 | 2 | has the unit \"psi\"",
                "burnish --mass 1900 --front-share 68 --disc-mass 7.2 --disc-diameter 320 --tyre 225/55R18 --from 10 | 3 | speed after the stop is 15",
                "battery --volts 12.6 --rested 3 | 2 | --chemistry",
                "battery --chemistry agm --volts 13.8 --rested 3 | 3 | the converter or a charger holds it up",
                "battery --chemistry agm --rated 600 --standard sae --compare-with jis | 3 | rating by JIS has no published conversion",
                "battery --chemistry agm --rated 600 --standard sae | 3 | nothing to compute",
                "cost | 3 | nothing to compute",
                "cost --price 150 | 2 | --energy-price: is missing",
                "cost --price 150 --rolling B --wear 0.13 --carried 2100 --energy-price 0.35 --tyre-class c4 | 3 | expected one of c1 c2 c3",
                "cost --price 150 --rolling F --wear 0.13 --carried 2100 --energy-price 0.35 | 3 | rolling resistance is \"F\", expected a class A to E",
                "cost --price 150 --rolling B --wear 0.13 --carried 2100 --energy-price 0.35 --other-price 90 --other-rolling C --other-wear 9 | 3 | --other-wear: wear is 9 mm",
                "cost --price 150 --rolling B --wear 0.13 --carried 2100 --energy-price 0.35 --other-price 90 | 2 | --other-wear: is missing",
                "cost --price 150 --rolling B --wear 0.13 --carried 2100 --energy-price 0.35 --end-tread 8 | 3 | --new-tread: tread when new is 8 mm, expected more than the 8 mm",
                "renew | 3 | nothing to compute",
                "renew --front-depth 4.9 | 2 | is missing",
                "renew --front-depth 4.9 --rear-depth 6.4 --front-wear 0.21 --rear-wear 2.14 --season-distance 8500 --price 168 --visit 60 | 3 | --new-tread: a new pair on the rear axle lasts 2 990 km, expected a season of 8 500 km at least",
                "renew --front-depth 4.9 --rear-depth 6.4 --front-wear 0.21 --rear-wear 0.14 --season-distance 8500 --price 168 --visit 60 --tread-limit 4 --circumference-limit 10 | 2 | --tread-limit",
                "guides | 3 | nothing to compute",
                "changeover | 3 | nothing to compute",
                "changeover --cars 40 | 2 | --means: is missing",
                "changeover --means 1,2 | 3 | --means: 2 mean temperatures, expected those of all 12 months, January first",
                "changeover --means -10,-8,-2,5,13,18,21,20,15,8,2,-6 --spread 40 | 3 | --spread: spread of the days in °C is 40, expected 0.5 to 15",
                "changeover --means -10,-8,-2,5,13,18,21,20,15,8,2,-6 --cars 0 --per-day 5 | 3 | --cars: number of cars is 0, expected 1 to 100 000",
                "guides --service-price 140 | 2 | --seized-price: is missing",
                "guides --service-price 140 --seized-price 420 --salt-share 180 | 3 | --salt-share: share of days with salt is 180 %, expected 0 to 100 %",
                "guides --service-price 140 --seized-price 420 --pads 40 | 3 | --pads: number of pads is 40, expected 1 to 16",
                "drag | 3 | nothing to compute",
                "drag --lr 121 --tyre 225/55R18 | 2 | --rr: is missing",
                "drag --lr 121 --rr 64 --air 12 --minutes 20 --tyre 225/55R18 --rear-disc-mass 4.5 --rear-disc-diameter 300 --rear-solid --speed 300 | 3 | speed of the drive is 300 km/h, expected 10 to 130 km/h",
                "drag --lr 9999 --rr 64 --tyre 225/55R18 --rear-disc-mass 4.5 --rear-disc-diameter 300 | 3 | --lr: temperature of a disc is 9 999 °C",
                "drag --lr 121 --rr 64 --tyre 225/55R18 --rear-disc-mass 4.5 --rear-disc-diameter 3000 | 3 | --rear-disc-diameter: ",
                "drag --lr 121 --rr 64 --tyre 225/55R18 --rear-disc-mass 450 --rear-disc-diameter 300 | 3 | --rear-disc-mass: ",
                "drag --lr 121 --rr 4 --air 12 --tyre 225/55R18 --rear-disc-mass 4.5 --rear-disc-diameter 300 | 3 | disc of RR is 4 °C, expected no less than the 12 °C of the air",
                "drag --lr 121 --rr 64 --tyre round --rear-disc-mass 4.5 --rear-disc-diameter 300 | 3 | --tyre: ",
                "tyre --left-tread '5.9 6.0' --right-tread '6 6 6' | 3 | --left-tread: tread is \"5.9 6.0\", expected three grooves",
                "tyre --left-tread '5.9 6.0 6.1' | 2 | --right-tread: is missing",
                "tyre --left-tread '5.9 6.0 99' --right-tread '6 6 6' | 3 | --left-tread: depth of a groove is 99 mm",
                "tyre --left-tread '5.9 6.0 9.1' --right-tread '6 6 6' | 3 | --new-tread: groove of 9.1 mm is deeper than the 8 mm of the new tyre",
                "lift | 3 | nothing to compute",
                "lift --front 1000 --rear 1000 --wheelbase 2800 --points-front 600 --points-rear 2000 --points-width 1500 --arm-rating '2000 lb' --hoist-rating 4000 --off battery | 3 | part off is \"battery\", expected its name, mass and place",
                "lift --front 1000 --rear 1000 --wheelbase 2800 --points-front 600 --points-rear 2000 --points-width 1500 --arm-rating '2000 lb' --hoist-rating 4000 --wheels-off '20 psi' | 2 | has the unit \"psi\", expected one of kg",
                "lift --front 1800 --rear 500 --wheelbase 2800 --points-front 800 --points-rear 2000 --points-width 1500 --arm-rating 1000 --hoist-rating 4000 | 3 | outside the lift points: the car would tip",
                "torque 130 --adapter '6 in' | 2 | --length",
                "torque '-5 N·m' --count 5 --bar 100 --bar-spread 15 | 3 | torque is −5 N·m, expected 1 to 1 000 N·m",
                "torque 130 --count 5 --units imperial | 2 | --units",
                "torque 130 --cuont 5 | 2 | --cuont",
                "torque 130 --thread M14 --class 10.9 --cone 60 --ball 14 | 2 | expected one of the two",
                "pressure --placard 250 --tyre-at 20 --stands-at -30 --maximum 300 | 3 | above the tyre's maximum of 300 kPa",
                "lift --front 1000 --rear 1000 --wheelbase 2800 --points 'LF 600 750; RF 600 -750' --arm-rating 1000 --hoist-rating 4000 | 3 | lift points lack LR",
                "lift --front 1000 --rear 1000 --wheelbase 2800 --points-front 600 --points-rear 2000 --points-width 1500 --arm-rating 3000 --hoist-rating 2000 | 3 | rating of the hoist is 2 000 kg, below the 3 000 kg of one of its arms",
                "lift --front 1000 --rear 1000 --wheelbase 2800 --points-front 600 --points-rear 2000 --points-width 1500 --points 'LF 600 750; RF 600 -750; LR 2100 750; RR 2100 -750' --arm-rating 1000 --hoist-rating 4000 | 3 | lift points one by one are not those of front, rear and width",
                "battery --chemistry wet --volts 12.6 --rested 3 | 3 | expected one of flooded EFB AGM lithium"
            })
    void refusesWhatCannotBe(String words, int exitCode, String part) {
        var outcome = run(arguments(words));
        assertThat(outcome.exitCode()).as(outcome.err()).isEqualTo(exitCode);
        assertThat(outcome.err()).contains(part).doesNotContain("Exception").doesNotContain("\tat ");
        assertThat(outcome.out()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "torque 130 --count 5 --thread M14x1.5 --class 10.9 | clampLoad | ISO 898-1",
                "lift --front 1000 --rear 1000 --wheelbase 2800 --points-front 600 --points-rear 2000 --points-width 1500 --arm-rating '2000 lb' --hoist-rating 4000 --wheels-off 24 | arms | Euler 1773",
                "pressure --placard 240 --tyre-at 20 --stands-at 20 --months 10,0 --coldest -25 | season | 49 CFR 571.138",
                "pressure --sensor-reads 264 --gauge-reads 250 --sensor-placard 250 | sensor | literature",
                "pressure --sensor-since 2020-01-10 | sensorAge | common practice, no source",
                "pressure --learning driving | sensorLearning | vehicle maker's procedure",
                "battery --chemistry agm --capacity 60 --standby 0.1 | parked | service literature",
                "tyre --size 205/55R16 --rim 7.5 | rim | UN R30",
                "tyre --size '205/55R16 91V' | size | ETRTO",
                "tyre --tin 3519 | age | 49 CFR 574.5",
                "tyre --worn 225/55R18=1 --worn 225/55R18=2 --tread-limit 2 | circumference | from the car's maker",
                "tyre --placard '205/55R16 91V' --other '205/60R16 92H' | comparison | UN R30",
                "cost --price 150 --rolling B --wear 0.13 --other-price 110 --other-rolling D --other-wear 0.17 --carried 2100 --energy-price 0.35 | cost | Regulation (EU) 2020/740",
                "drag --lr 121 --rr 64 --air 12 --minutes 20 --tyre 225/55R18 --rear-disc-mass 4.5 --rear-disc-diameter 300 --rear-solid | rear | Limpert",
                "tyre --left-tread '4.1 6.0 6.3 mm' --right-tread '4.0 6.1 6.2' --run 24000 | alignment | common practice, no source",
                "battery --chemistry agm --volts 12.6 --rested 12 | rest | AGM",
                "burnish --mass 1900 --front-share 68 --disc-mass 7.2 --disc-diameter 320 --tyre 225/55R18 | burnish | McPhee",
            })
    void explainsInWordsAndInJson(String words, String part, String source) {
        assertThat(run(arguments(words + " --why")).out()).contains(source);
        var json = JsonMapper.builder()
                .build()
                .readTree(run(arguments(words + " --json")).out());
        assertThat(json.path("format").stringValue("")).isEqualTo("cornerbook-calculation");
        var steps = json.path("parts").path(part).path("steps");
        assertThat(steps.isEmpty()).isFalse();
        assertThat(steps).allSatisfy(step -> {
            assertThat(step.path("formula").stringValue("")).isNotEmpty();
            assertThat(step.path("source").stringValue("")).isNotEmpty();
        });
    }

    @Test
    void helpSaysWhatAUnitLooksLike() {
        assertThat(run("torque", "--help").out()).contains("98 lbf·ft").contains("Exit codes:");
    }

    @Test
    void theClimateOfAPlaceIsReadFromAFileAndKeptInTheBook(@TempDir Path folder) throws IOException {
        var file = Files.writeString(folder.resolve("climate.csv"), ClimateFile.write(DemoShop.climate()));
        var words = "pressure --placard 240 --tyre-at 18 --stands-at 5 --climate " + file;
        assertThat(run(arguments(words)).out().replaceAll("\\s+", " "))
                .contains("in the morning")
                .contains("Coldest morning, −27 °C (−17 °F): 201 kPa (29.1 psi)")
                .contains("Temperatures: Val-Ombrelune (invented");
        var data = folder.resolve("book").toString();
        assertThat(run("climate", file.toString(), "--data", data).out())
                .isEqualTo("Kept the climate of Val-Ombrelune" + System.lineSeparator());
        assertThat(run("climate", "--data", data).out()).isEqualTo(Files.readString(file));
        Files.writeString(file, "place");
        assertThat(run(arguments(words)).exitCode()).isEqualTo(3);
        assertThat(run(arguments(words)).err()).contains("line 1, head");
        assertThat(run(arguments(words + "x")).exitCode()).isEqualTo(5);
    }
}
