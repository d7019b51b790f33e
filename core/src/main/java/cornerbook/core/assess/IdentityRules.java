package cornerbook.core.assess;

import cornerbook.core.car.AxleSpecification;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Tyre;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.Vin;
import cornerbook.core.finding.Problem;
import cornerbook.core.quantity.Quoted;
import cornerbook.core.say.Refused;
import cornerbook.core.tyre.LoadIndex;
import cornerbook.core.tyre.SpeedSymbol;
import cornerbook.core.tyre.Tin;
import cornerbook.core.tyre.TyreSize;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * What a car and its tyres are called must be readable before they enter the book: VIN, tyre sizes, service descriptions
 * and TINs. Asked once, when a car is new to the book, so that a car that is in it already stays open to readings.
 */
public final class IdentityRules {
    private static final Pattern NORTH_AMERICA = Pattern.compile("(US|CA)(-.*)?");

    private final List<Problem> problems = new ArrayList<>();
    /** The tyres of a set are alike, as a rule, and are read once. */
    private final Set<Tyre> sound = new HashSet<>();

    private IdentityRules() {}

    /** Everything that cannot be read, with its JSON pointer into the visit file; empty when all can. */
    public static List<Problem> check(CarHistory history) {
        var rules = new IdentityRules();
        rules.checkVin(history.vehicle());
        rules.checkAxle("/vehicle/frontAxle", history.vehicle().front());
        rules.checkAxle("/vehicle/rearAxle", history.vehicle().rear());
        for (int s = 0; s < history.sets().size(); s++) {
            var wheels = history.sets().get(s).wheels();
            for (int w = 0; w < wheels.size(); w++) {
                rules.checkTyre(
                        "/wheelSets/%s/wheels/%s/tyre".formatted(s, w),
                        wheels.get(w).tyre());
            }
        }
        return List.copyOf(rules.problems);
    }

    private void checkVin(Vehicle vehicle) {
        var written = vehicle.vin();
        if (written == null) {
            return;
        }
        attempt("/vehicle/vin", () -> {
            var vin = Vin.parse(written);
            if (hasCheckDigit(vehicle.jurisdiction(), vin) && !vin.checkDigitFits()) {
                throw new Refused(new AssessSaid.VinCheckDigit(
                        Quoted.of(vin.symbols()),
                        Quoted.of(vin.symbols().substring(8, 9)),
                        String.valueOf(vin.expectedCheckDigit())));
            }
        });
    }

    /**
     * Where position 9 is a check digit: in the United States (49 CFR 565) and Canada, its like there (from memory), on
     * cars built in North America, whose VIN begins with 1 to 5. Cars that came from elsewhere may have anything there.
     */
    private static boolean hasCheckDigit(String jurisdiction, Vin vin) {
        char region = vin.symbols().charAt(0);
        return NORTH_AMERICA.matcher(jurisdiction).matches() && region >= '1' && region <= '5';
    }

    private void checkAxle(String where, AxleSpecification axle) {
        checkSizeAndService(where, "tyreSize", axle.tyreSize(), axle.loadIndex(), axle.speedSymbol());
    }

    private void checkTyre(String where, Tyre tyre) {
        if (sound.contains(tyre)) {
            return;
        }
        int before = problems.size();
        checkSizeAndService(where, "size", tyre.size(), tyre.loadIndex(), tyre.speedSymbol());
        var tin = tyre.tin();
        if (tin != null) {
            attempt(where + "/tin", () -> Tin.parse(tin));
        }
        if (problems.size() == before) {
            sound.add(tyre);
        }
    }

    private void checkSizeAndService(
            String where, String sizeName, String size, @Nullable Integer loadIndex, @Nullable String speedSymbol) {
        attempt(where + "/" + sizeName, () -> TyreSize.parse(size));
        if (loadIndex != null) {
            attempt(where + "/loadIndex", () -> new LoadIndex(loadIndex));
        }
        if (speedSymbol != null) {
            attempt(where + "/speedSymbol", () -> SpeedSymbol.parse(speedSymbol));
        }
    }

    private void attempt(String where, Runnable reading) {
        try {
            reading.run();
        } catch (IllegalArgumentException e) {
            problems.add(new Problem(where, Refused.said(e)));
        }
    }
}
