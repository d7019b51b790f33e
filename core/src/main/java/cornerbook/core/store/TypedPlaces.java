package cornerbook.core.store;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** Names of places as people typed them, to be put on the map: those that differ by their last number alone make one rack. */
public final class TypedPlaces {
    private static final Pattern LAST_NUMBER = Pattern.compile("(\\D*(?:.*\\D)?)(\\d{1,3})(\\D*)");

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
        if (names.size() > 1 && pattern.contains("#")) {
            int before = pattern.indexOf('#');
            int after = pattern.length() - before - 1;
            var digits = names.stream()
                    .map(name -> name.substring(before, name.length() - after))
                    .toList();
            int most = digits.stream().mapToInt(Integer::parseInt).max().orElseThrow();
            int width = digits.stream()
                    .filter(each -> each.startsWith("0"))
                    .mapToInt(String::length)
                    .findFirst()
                    .orElse(1);
            var widened = pattern.replace("#", "#".repeat(width));
            if (most > 1 && most <= Naming.MOST_PLACES && widened.length() <= Naming.LONGEST) {
                var rack = new Naming(widened, 1, most);
                if (IntStream.rangeClosed(1, most)
                        .mapToObj(place -> rack.name(1, place))
                        .toList()
                        .containsAll(names)) {
                    return List.of(rack);
                }
            }
        }
        return names.stream().distinct().map(name -> new Naming(name, 1, 1)).toList();
    }
}
