package cornerbook.core.quantity;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** How people write units, and the UCUM code of each. Matched without case, blanks and dots of multiplication. */
final class UnitSpelling {
    /** By book unit: the units that may be written for it, each as its UCUM code and its spellings. */
    private static final Map<String, List<Unit>> BY_BOOK_UNIT = Map.ofEntries(
            entry(
                    "mm",
                    unit("mm"),
                    unit("cm"),
                    unit("m"),
                    unit("um", "µm", "μm", "um"),
                    unit("[in_i]", "in", "inch", "inches", "\"", "″", "po", "pouce", "pouces")),
            entry("m", unit("m"), unit("km"), unit("[ft_i]", "ft", "feet", "pi", "pied", "pieds")),
            entry("kPa", unit("kPa"), unit("bar"), unit("[psi]", "psi", "psig", "lb/po²", "lb/po2"), unit("MPa")),
            entry(
                    "N·m",
                    unit("N.m", "N·m", "N-m"),
                    unit(
                            "[lbf_av].[ft_i]",
                            "lbf·ft",
                            "lb·ft",
                            "ft·lb",
                            "ft-lb",
                            "ft-lbs",
                            "ft·lbf",
                            "lb-ft",
                            "lbf-ft",
                            "lbf·pi",
                            "lb·pi",
                            "pi·lb",
                            "lb-pi",
                            "pi-lb"),
                    unit(
                            "[lbf_av].[in_i]",
                            "lbf·in",
                            "in·lb",
                            "in-lb",
                            "in-lbs",
                            "lb-in",
                            "lbf-in",
                            "lbf·po",
                            "lb·po",
                            "po·lb",
                            "lb-po",
                            "po-lb")),
            entry("N", unit("N"), unit("kN"), unit("[lbf_av]", "lbf")),
            entry("°C", unit("Cel", "°C", "ºC", "C", "degC"), unit("[degF]", "°F", "ºF", "F", "degF"), unit("K")),
            entry("°", unit("deg", "°", "deg", "degrees")),
            entry("V", unit("V"), unit("mV")),
            entry("A", unit("A", "A", "CCA"), unit("mA")),
            entry("mA", unit("mA"), unit("A")),
            entry("A·h", unit("A.h", "A·h", "Ah")),
            entry("km", unit("km"), unit("[mi_i]", "mi", "mile", "miles")),
            entry("km/h", unit("km/h", "km/h", "kmh"), unit("[mi_i]/h", "mph", "mi/h")),
            entry("g", unit("g"), unit("[oz_av]", "oz")),
            entry("kg", unit("kg"), unit("[lb_av]", "lb", "lbs"), unit("t", "t")),
            entry("%", unit("%")),
            entry("studs", unit("1", "studs", "stud", "goujons", "goujon")),
            entry("clicks", unit("1", "clicks", "click", "crans", "cran")));

    private UnitSpelling() {}

    /** One unit. */
    record Unit(String ucum, List<String> spellings) {}

    static Optional<String> findUcum(String written, String bookUnit) {
        var plain = plain(written);
        return units(bookUnit).stream()
                .filter(unit -> unit.spellings().stream()
                        .anyMatch(spelling -> plain(spelling).equals(plain)))
                .map(Unit::ucum)
                .findFirst();
    }

    static String ucumOf(String bookUnit) {
        return units(bookUnit).getFirst().ucum();
    }

    /** The units that may be written, in people's spelling. */
    static List<QuantitySaid.UnitWord> expected(String bookUnit) {
        return units(bookUnit).stream()
                .map(unit -> new QuantitySaid.UnitWord(unit.spellings().getFirst()))
                .toList();
    }

    private static List<Unit> units(String bookUnit) {
        var units = BY_BOOK_UNIT.get(bookUnit);
        if (units == null) {
            throw new IllegalArgumentException("the book keeps no unit " + bookUnit);
        }
        return units;
    }

    private static Map.Entry<String, List<Unit>> entry(String bookUnit, Unit... units) {
        return Map.entry(bookUnit, List.of(units));
    }

    private static Unit unit(String ucum, String... spellings) {
        return new Unit(ucum, spellings.length == 0 ? List.of(ucum) : Arrays.asList(spellings));
    }

    private static String plain(String spelling) {
        return spelling.replaceAll("[\\s·⋅.*]", "").toLowerCase(Locale.ROOT);
    }
}
