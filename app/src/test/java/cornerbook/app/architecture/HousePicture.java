package cornerbook.app.architecture;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Draws the house from its imports: a box for each package, a floor above all that its boxes know, and an arrow
 * down to each box known that is not known through another one already.
 */
final class HousePicture {
    private static final int BOX_WIDTH = 118;
    private static final int BOX_HEIGHT = 30;
    private static final int GAP = 12;
    private static final int FLOOR_GAP = 34;
    private static final int MOST_BESIDE = 10;
    private static final String TEMPLATES = "cornerbook.app.pages";

    private final Map<String, Set<String>> known = new TreeMap<>();

    HousePicture(JavaClasses classes) {
        for (var each : classes) {
            if (each.getPackageName().startsWith(TEMPLATES)) {
                continue;
            }
            var knows = known.computeIfAbsent(name(each), unused -> new TreeSet<>());
            each.getDirectDependenciesFromSelf().stream()
                    .map(dependency -> dependency.getTargetClass().getBaseComponentType())
                    .filter(target -> target.getPackageName().startsWith("cornerbook"))
                    .map(HousePicture::name)
                    .filter(target -> !target.equals(name(each)))
                    .forEach(knows::add);
        }
    }

    /** In core and words each package, in app each package with those inside it; templates are no package of ours. */
    private static String name(JavaClass each) {
        var path = each.getPackageName().replaceFirst("^cornerbook\\.", "").split("\\.");
        if (path[0].equals("app")) {
            return path.length == 1 ? "app" : "app " + path[1];
        }
        return String.join(" ", path).replaceFirst("^core ", "");
    }

    private int floor(String box, Map<String, Integer> floors) {
        var found = floors.get(box);
        if (found != null) {
            return found;
        }
        int floor = 0;
        for (var below : known.getOrDefault(box, Set.of())) {
            floor = Math.max(floor, floor(below, floors) + 1);
        }
        floors.put(box, floor);
        return floor;
    }

    /** Those known that no other one known knows. */
    private Set<String> arrows(String box) {
        var arrows = new TreeSet<>(known.getOrDefault(box, Set.of()));
        for (var through : known.getOrDefault(box, Set.of())) {
            arrows.removeAll(reach(through, new TreeSet<>()));
        }
        return arrows;
    }

    private Set<String> reach(String box, Set<String> reached) {
        for (var below : known.getOrDefault(box, Set.of())) {
            if (reached.add(below)) {
                reach(below, reached);
            }
        }
        return reached;
    }

    String svg() {
        var floors = new LinkedHashMap<String, Integer>();
        known.keySet().forEach(box -> floor(box, floors));
        var rows = new ArrayList<List<String>>();
        int top = floors.values().stream().mapToInt(Integer::intValue).max().orElse(0);
        for (int floor = top; floor >= 0; floor--) {
            int wanted = floor;
            var boxes = floors.entrySet().stream()
                    .filter(each -> each.getValue() == wanted)
                    .map(Map.Entry::getKey)
                    .sorted()
                    .toList();
            for (int from = 0; from < boxes.size(); from += MOST_BESIDE) {
                rows.add(boxes.subList(from, Math.min(boxes.size(), from + MOST_BESIDE)));
            }
        }
        int width = MOST_BESIDE * (BOX_WIDTH + GAP) + GAP;
        int height = rows.size() * (BOX_HEIGHT + FLOOR_GAP) + GAP;
        var places = new TreeMap<String, int[]>();
        for (int row = 0; row < rows.size(); row++) {
            var boxes = rows.get(row);
            int left = (width - boxes.size() * (BOX_WIDTH + GAP) + GAP) / 2;
            for (int i = 0; i < boxes.size(); i++) {
                places.put(
                        boxes.get(i), new int[] {left + i * (BOX_WIDTH + GAP), GAP + row * (BOX_HEIGHT + FLOOR_GAP)});
            }
        }
        var svg = new StringBuilder();
        svg.append(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" font-family=\"sans-serif\" font-size=\"11\" text-anchor=\"middle\">%n"
                        .formatted(width, height));
        svg.append("<title>The packages of the house, by floor</title>\n");
        svg.append("<rect width=\"%d\" height=\"%d\" fill=\"#fff\"/>%n".formatted(width, height));
        places.forEach((box, from) -> arrows(box).forEach(below -> {
            var to = Objects.requireNonNull(places.get(below), below);
            svg.append("<path d=\"M%d %dL%d %d\" stroke=\"#b9b4a8\" fill=\"none\"/>%n"
                    .formatted(from[0] + BOX_WIDTH / 2, from[1] + BOX_HEIGHT, to[0] + BOX_WIDTH / 2, to[1]));
        }));
        places.forEach((box, at) -> svg.append(
                "<g><rect x=\"%d\" y=\"%d\" width=\"%d\" height=\"%d\" rx=\"4\" fill=\"%s\" stroke=\"#4a463d\"/><text x=\"%d\" y=\"%d\">%s</text></g>%n"
                        .formatted(
                                at[0],
                                at[1],
                                BOX_WIDTH,
                                BOX_HEIGHT,
                                color(box),
                                at[0] + BOX_WIDTH / 2,
                                at[1] + BOX_HEIGHT / 2 + 4,
                                box)));
        return svg.append("</svg>\n").toString().replace(System.lineSeparator(), "\n");
    }

    private static String color(String box) {
        return box.startsWith("app")
                ? "#eef2ea"
                : box.endsWith("judge") ? "#f6e9dd" : box.equals("words") ? "#fff6cc" : "#f7f5ef";
    }
}
