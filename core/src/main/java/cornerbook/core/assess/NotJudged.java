package cornerbook.core.assess;

import cornerbook.core.car.DataGap;
import cornerbook.core.say.Said;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What could not be judged, each thing once.
 *
 * @param beforeDriving what stops the car, holds its wheels on and carries it: the first of each in this order, then what else
 *     each has, so that whoever reads three lines does not take brakes for all that nobody looked at
 * @param others everything else of the car
 * @param ofShop the shop's own matter
 */
public record NotJudged(List<Said> beforeDriving, List<Said> others, List<Said> ofShop) {
    private static final String CORE = "cornerbook.core.";

    /** Rooms by how soon a driver has to know. */
    private static final List<String> FIRST = List.of("brake", "torque", "tread", "air");

    private static final Set<String> OF_SHOP = Set.of("lift", "tool");

    public NotJudged {
        beforeDriving = List.copyOf(beforeDriving);
        others = List.copyOf(others);
        ofShop = List.copyOf(ofShop);
    }

    /** Of one visit. */
    public static NotJudged of(Assessment assessment) {
        var said = new SaidOnce(assessment.history()).join(assessment.notJudged());
        return new NotJudged(
                inTurns(said),
                said.stream()
                        .filter(each -> !FIRST.contains(room(each)) && !OF_SHOP.contains(room(each)))
                        .toList(),
                said.stream().filter(each -> OF_SHOP.contains(room(each))).toList());
    }

    private static List<Said> inTurns(List<Said> said) {
        var byRoom = FIRST.stream()
                .map(room ->
                        said.stream().filter(each -> room(each).equals(room)).toList())
                .toList();
        int turns = byRoom.stream().mapToInt(List::size).max().orElse(0);
        return IntStream.range(0, turns)
                .boxed()
                .flatMap(turn ->
                        byRoom.stream().filter(each -> each.size() > turn).map(each -> each.get(turn)))
                .toList();
    }

    /** The same in one list. */
    public List<Said> all() {
        return Stream.of(beforeDriving, others, ofShop).flatMap(List::stream).toList();
    }

    /** Who could not judge it: the room whose sentence it is. */
    private static String room(Said said) {
        if (said instanceof AssessSaid.Likewise likewise) {
            return room(likewise.sentence());
        }
        if (said instanceof DataGap gap) {
            return switch (gap.part()) {
                case BRAKE -> "brake";
                case FASTENER -> "torque";
                case TYRE -> "tread";
                case PLACARD_PRESSURE -> "air";
                default -> "car";
            };
        }
        var name = said.getClass().getPackageName();
        return name.startsWith(CORE) ? name.substring(CORE.length()).replaceFirst("\\..*", "") : "";
    }
}
