package cornerbook.core.quantity;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** How people write units, and the UCUM code of each. Matched without case, blanks and dots of multiplication. */
final class UnitSpelling {
    private static final Pattern PASSED_OVER = Pattern.compile("[\\s·⋅.*]");

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

    /** By book unit: the UCUM code of each spelling, as listed and as {@link #plain} has it. A file of a car has some thousand quantities. */
    private static final Map<String, Map<String, String>> UCUM_BY_SPELLING = BY_BOOK_UNIT.entrySet().stream()
            .collect(Collectors.toUnmodifiableMap(Map.Entry::getKey, entry -> bySpelling(entry.getValue())));

    private UnitSpelling() {}

    /** One unit. */
    record Unit(String ucum, List<String> spellings) {}

    static Optional<String> findUcum(String written, String bookUnit) {
        var bySpelling = UCUM_BY_SPELLING.get(bookUnit);
        if (bySpelling == null) {
            throw unknown(bookUnit);
        }
        var asListed = bySpelling.get(written);
        return Optional.ofNullable(asListed != null ? asListed : bySpelling.get(plain(written)));
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
            throw unknown(bookUnit);
        }
        return units;
    }

    private static IllegalArgumentException unknown(String bookUnit) {
        return new IllegalArgumentException("the book keeps no unit " + bookUnit);
    }

    /** The first of the units that share a spelling has it. */
    private static Map<String, String> bySpelling(List<Unit> units) {
        var ucum = new HashMap<String, String>();
        units.forEach(unit -> unit.spellings().forEach(spelling -> ucum.putIfAbsent(plain(spelling), unit.ucum())));
        units.forEach(unit -> unit.spellings()
                .forEach(spelling -> ucum.putIfAbsent(spelling, Objects.requireNonNull(ucum.get(plain(spelling))))));
        return Map.copyOf(ucum);
    }

    private static Map.Entry<String, List<Unit>> entry(String bookUnit, Unit... units) {
        return Map.entry(bookUnit, List.of(units));
    }

    private static Unit unit(String ucum, String... spellings) {
        return new Unit(ucum, spellings.length == 0 ? List.of(ucum) : Arrays.asList(spellings));
    }

    private static String plain(String spelling) {
        return PASSED_OVER.matcher(spelling).replaceAll("").toLowerCase(Locale.ROOT);
    }
}
