package cornerbook.core.store;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Names of places as people typed them, to be put on the map: those that differ by their last number alone make one rack. */
public final class TypedPlaces {
    private static final Pattern LAST_NUMBER = Pattern.compile("(\\D*(?:.*\\D)?)(\\d{1,3})(\\D*)");

    /** So many digits tell a hundred places apart. */
    private static final int DIGITS_OF_RACK = 2;

    private TypedPlaces() {}

    /**
     * The racks that these names are places of, in the order of the names; a name that is too long for a label is in none.
     *
     * @param typed names that are not on the map
     */
    public static List<Naming> racks(Collection<String> typed) {
        Map<String, List<String>> alike = new LinkedHashMap<>();
        for (var each : typed) {
            var name = each.strip().replaceAll("\\s+", " ");
            if (name.isEmpty() || name.length() > Naming.LONGEST || name.contains("#")) {
                continue;
            }
            var number = LAST_NUMBER.matcher(name);
            alike.computeIfAbsent(
                            number.matches() ? number.group(1) + "#" + number.group(3) : name,
                            pattern -> new ArrayList<>())
                    .add(name);
        }
        return alike.entrySet().stream()
                .flatMap(each -> racks(each.getKey(), each.getValue()).stream())
                .toList();
    }

    private static List<Naming> racks(String pattern, List<String> names) {
        if (names.size() == 1 || !pattern.contains("#")) {
            return singly(names);
        }
        int before = pattern.indexOf('#');
        int after = pattern.length() - before - 1;
        Function<String, String> digits = name -> name.substring(before, name.length() - after);
        if (names.stream().map(digits).mapToInt(Integer::parseInt).max().orElseThrow() <= Naming.MOST_PLACES) {
            return rack(pattern, digits, 1, names);
        }
        // A rack has at most a hundred places: those of each hundred stand beside each other, and are one.
        var byHundred = names.stream()
                .collect(Collectors.groupingBy(
                        name -> {
                            var number = digits.apply(name);
                            return number.substring(0, Math.max(0, number.length() - DIGITS_OF_RACK));
                        },
                        TreeMap::new,
                        Collectors.toList()));
        return byHundred.entrySet().stream()
                .flatMap(each -> {
                    int hundred = each.getKey().length();
                    return rack(
                            pattern.replace("#", each.getKey() + "#"),
                            name -> digits.apply(name).substring(hundred),
                            hundred == 0 ? 1 : DIGITS_OF_RACK,
                            each.getValue())
                            .stream();
                })
                .toList();
    }

    /**
     * The rack of all that are its places, and each of the others for itself.
     *
     * @param least digits that every place has
     */
    private static List<Naming> rack(String pattern, Function<String, String> digits, int least, List<String> names) {
        int most = names.stream().map(digits).mapToInt(Integer::parseInt).max().orElseThrow();
        int width = names.stream()
                .map(digits)
                .filter(each -> each.startsWith("0"))
                .mapToInt(String::length)
                .findFirst()
                .orElse(least);
        var widened = pattern.replace("#", "#".repeat(width));
        if (names.size() == 1 || most < 2 || widened.length() > Naming.LONGEST) {
            return singly(names);
        }
        var rack = new Naming(widened, 1, most);
        var places = IntStream.rangeClosed(1, most)
                .mapToObj(place -> rack.name(1, place))
                .collect(Collectors.toSet());
        var others = names.stream().filter(name -> !places.contains(name)).toList();
        return Stream.concat(Stream.of(rack), singly(others).stream()).toList();
    }

    private static List<Naming> singly(List<String> names) {
        return names.stream().distinct().map(name -> new Naming(name, 1, 1)).toList();
    }
}
