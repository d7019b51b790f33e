package cornerbook.app.desk.findings;

import cornerbook.core.car.CarHistory;
import cornerbook.core.corner.Corner;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Makes one sentence of those that say the same of different corners and wheels: a caution read four times is not read. */
final class SaidOnce {
    private final Pattern name;

    SaidOnce(CarHistory history) {
        var corners = Arrays.stream(Corner.values()).map(Corner::name);
        var tags = history.sets().stream().flatMap(set -> set.wheels().stream()).map(wheel -> wheel.tag());
        name = Pattern.compile(Stream.concat(corners, tags)
                .map(Pattern::quote)
                .collect(Collectors.joining("|", "(?<![\\p{L}\\p{N}])(?:", ")(?![\\p{L}\\p{N}])")));
    }

    /** The sentence without the corners and wheels in it: equal for those that say the same. */
    String shape(String sentence) {
        return name.matcher(sentence).replaceAll("\0");
    }

    /** Each sentence once, with all the corners and wheels that it was said of, in the order of the first. */
    List<String> join(List<String> sentences) {
        var names = new LinkedHashMap<String, List<Set<String>>>();
        for (var sentence : sentences) {
            var found = name.matcher(sentence)
                    .results()
                    .map(result -> result.group())
                    .toList();
            var places = names.computeIfAbsent(
                    shape(sentence),
                    unused -> found.stream()
                            .<Set<String>>map(each -> new LinkedHashSet<>())
                            .toList());
            for (int i = 0; i < found.size(); i++) {
                places.get(i).add(found.get(i));
            }
        }
        var joined = new ArrayList<String>();
        names.forEach((shape, places) -> {
            var parts = shape.split("\0", -1);
            var text = new StringBuilder(parts[0]);
            for (int i = 0; i < places.size(); i++) {
                text.append(String.join(", ", places.get(i))).append(parts[i + 1]);
            }
            joined.add(text.toString());
        });
        return joined;
    }
}
