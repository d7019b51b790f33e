package cornerbook.app.demo;

import cornerbook.app.demo.CastMember.LatestVisit;
import cornerbook.app.demo.CastMember.Trouble;
import cornerbook.core.car.Customer;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.Wheel;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Corner;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;

/**
 * The cars behind the cast, as many as anybody wants: each is like one of the cast, driven by somebody else, farther or less
 * far, in a better or a worse state. The same number is the same car, whatever others there are.
 */
final class Crowd {
    private static final long SEED = 77_000;
    /** Of the logarithm of the distance a day, and of the wear. */
    private static final double DISTANCE_SD = 0.35;

    private static final double WEAR_SD = 0.2;
    /** What a set may lose until today, so that nobody drove on canvas. */
    private static final double MOST_WORN_MM = 5.8;
    /** Of seven seasons of half a year. */
    private static final double DAYS = 7 * 182;

    private static final double SHARE_OF_EACH_TROUBLE = 0.04;
    private static final int LATEST_SUMMER_MONTHS = 48;
    private static final int PLATES_OF_LETTERS = 10_000;

    private static final List<String> COLOURS =
            List.of("blue", "white", "grey", "red", "green", "black", "silver", "copper");
    private static final List<String> GIVEN = List.of(
            "Odile", "Anselme", "Élodie", "Bram", "Ilse", "Théo", "Maëlle", "Corin", "Aurèle", "Noor", "Perrine",
            "Ulric", "Zélie", "Gaspard", "Imke", "Loïs", "Vasile", "Hedda", "Ronan", "Céleste", "Duarte", "Salome",
            "Wim");
    private static final List<String> FAMILY = List.of(
            "Marchenoir",
            "Trudivert",
            "Ventadour",
            "Quenette",
            "Vantour",
            "Brisebois-Lune",
            "Haldimère",
            "Corvessin",
            "Tarnefeu",
            "Oudrelac",
            "Pélissande",
            "Grimoval",
            "Estrelune",
            "Valcendre",
            "Rochebrume",
            "Lantivel",
            "Morsange",
            "Ferrequin",
            "Sablonnet",
            "Aubresac",
            "Kervaillant",
            "Dulcimer",
            "Boisgelé",
            "Orvanne",
            "Thibergeau",
            "Clairfroid",
            "Nacrevent",
            "Poudrière",
            "Soulanges",
            "Verglas",
            "Harfang");
    /** Each has a hundred numbers that are kept for fiction. */
    private static final List<String> AREA_CODES =
            List.of("819", "418", "450", "514", "581", "873", "438", "579", "367", "354", "263", "468");

    private static final String FIRST_LETTERS = "RSTVWXYZ";
    private static final String SECOND_LETTERS = "ABCDEFGHJKLMNPRSTUVW";

    private final LocalDate today;
    private final List<CastMember> cast;

    Crowd(LocalDate today) {
        this.today = today;
        this.cast = Cast.members(today);
    }

    CastMember member(int number) {
        var random = new SplittableRandom(SEED + number);
        var like = cast.get(number % cast.size());
        double kmPerDay = like.kmPerDay() * Math.exp(DISTANCE_SD * CarTruth.bounded(random));
        var trouble = trouble(random);
        return new CastMember(
                number,
                vehicle(like.vehicle(), number, random),
                customer(number, random),
                like.sets().stream().map(set -> set(set, number, random)).toList(),
                Math.rint(kmPerDay * (200 + random.nextInt(1600))),
                kmPerDay,
                wear(like, kmPerDay, trouble, random),
                like.frontPadMm() - random.nextDouble(),
                trouble,
                LatestVisit.FINISHED);
    }

    private static Vehicle vehicle(Vehicle like, int number, RandomGenerator random) {
        var kind = like.name().replaceFirst(",.*", "");
        return new Vehicle(
                CastParts.vehicleId(number),
                kind + ", " + any(COLOURS, random),
                plate(number),
                like.vin(),
                like.drive(),
                like.drivesElectric(),
                like.jurisdiction(),
                like.front(),
                like.rear(),
                like.fastener(),
                like.battery(),
                like.brakeFluid(),
                like.details());
    }

    private static String plate(int number) {
        int letters = number / PLATES_OF_LETTERS;
        return String.format(
                Locale.ROOT,
                "%c%c %04d",
                FIRST_LETTERS.charAt(letters / SECOND_LETTERS.length() % FIRST_LETTERS.length()),
                SECOND_LETTERS.charAt(letters % SECOND_LETTERS.length()),
                // Not one after the other, as no shop gets them; prime to the number of plates, so that each
                // comes once.
                number * 7919L % PLATES_OF_LETTERS);
    }

    private static Customer customer(int number, RandomGenerator random) {
        var name = any(GIVEN, random) + " " + any(FAMILY, random);
        return new Customer(
                "demo-customer-" + number,
                name,
                String.format(Locale.ROOT, "+1 %s 555 01%02d", any(AREA_CODES, random), random.nextInt(100)),
                "customer" + number + "@example.com");
    }

    private WheelSet set(WheelSet like, int number, RandomGenerator random) {
        var wheels = like.wheels();
        var set = CastParts.set(
                number,
                like.season(),
                wheels.getFirst().tyre(),
                wheels.getLast().tyre(),
                today,
                LATEST_SUMMER_MONTHS + random.nextInt(12));
        return new WheelSet(
                set.id(),
                set.season(),
                set.storePlace(),
                set.wheels().stream()
                        .map(wheel -> new Wheel(
                                wheel.tag(),
                                wheel.tyre(),
                                wheel.sensorId(),
                                wheels.getFirst().details()))
                        .toList());
    }

    private static Map<Corner, Double> wear(CastMember like, double kmPerDay, Trouble trouble, RandomGenerator random) {
        double factor = Math.exp(WEAR_SD * CarTruth.bounded(random));
        double km = kmPerDay * DAYS / like.sets().size();
        double fastest = trouble == Trouble.UNEVEN_SHOULDER ? CarTruth.SHOULDER_FACTOR : 1;
        double most = MOST_WORN_MM / (km / 1000 * fastest);
        var wear = new EnumMap<Corner, Double>(Corner.class);
        like.wearMmPer1000Km().forEach((corner, rate) -> wear.put(corner, Math.min(rate * factor, most)));
        return wear;
    }

    private static Trouble trouble(RandomGenerator random) {
        var troubles = Trouble.values();
        int place = (int) (random.nextDouble() / SHARE_OF_EACH_TROUBLE);
        return place < troubles.length ? troubles[place] : Trouble.NONE;
    }

    private static String any(List<String> words, RandomGenerator random) {
        return words.get(random.nextInt(words.size()));
    }
}
