package cornerbook.core.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import cornerbook.core.say.Refused;
import cornerbook.core.store.Rack.Along;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

/** Racks as a shop would name them, and where sets go; written down by hand. */
class StoreMapTest {
    private static Rack rack(String pattern, int shelves, int places, double atXM) {
        return new Rack("Cellar", new Naming(pattern, shelves, places), new FloorPoint(atXM, 2), Along.INWARD, 1.5, 1);
    }

    private static StoreSaid refused(ThrowingCallable call) {
        var said = new StoreSaid[1];
        assertThatThrownBy(call).isInstanceOfSatisfying(Refused.class, refusal -> said[0] = (StoreSaid) refusal.said());
        return said[0];
    }

    @Test
    void aRackIsNamedInOneGo() {
        var places = rack("A-#-##", 2, 11, 3).places();
        assertThat(places)
                .extracting(Place::name)
                .startsWith("A-1-01", "A-1-02")
                .endsWith("A-2-10", "A-2-11");
        assertThat(places).hasSize(22);
        assertThat(places.get(2).at()).isEqualTo(new FloorPoint(3, 5));
        assertThat(places.get(13).at()).as("the shelf above it").isEqualTo(new FloorPoint(3, 5));
        assertThat(places.get(2).fromDoorM()).isEqualTo(8);
        assertThat(rack("Wall #", 3, 1, 0).places())
                .extracting(Place::name)
                .containsExactly("Wall 1", "Wall 2", "Wall 3");
        assertThat(rack("Under the stairs", 1, 1, 0).places())
                .extracting(Place::name)
                .containsExactly("Under the stairs");
        assertThat(rack("Costs $1 \\#", 1, 2, 0).places())
                .extracting(Place::name)
                .containsExactly("Costs $1 \\1", "Costs $1 \\2");
    }

    @Test
    void whatCannotBeARackIsRefused() {
        assertThat(refused(() -> rack("A-#", 2, 10, 0))).isEqualTo(new StoreSaid.PatternLacksNumbers(2, 1));
        assertThat(refused(() -> rack("A-#", 1, 1, 0))).isEqualTo(new StoreSaid.PatternLacksNumbers(0, 1));
        assertThat(refused(() -> rack(" ", 1, 1, 0))).isEqualTo(new StoreSaid.NoPattern(30));
        assertThat(refused(() -> rack("#", 1, 101, 0))).isInstanceOf(StoreSaid.CountOutOfRange.class);
        assertThat(refused(() -> rack("#", 0, 5, 0))).isInstanceOf(StoreSaid.CountOutOfRange.class);
        assertThat(refused(() -> rack("#", 1, 5, Double.NaN))).isInstanceOf(StoreSaid.MetresOutOfRange.class);
        assertThat(refused(() -> rack("#", 1, 5, 1001))).isInstanceOf(StoreSaid.MetresOutOfRange.class);
        assertThatThrownBy(() -> StoreMap.of(List.of(rack("A#", 1, 5, 0), rack("a#", 1, 5, 9))))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aPlaceIsFoundAsItIsTyped() {
        var map = StoreMap.of(List.of(rack("Rack W, bay #", 1, 5, 0)));
        assertThat(map.find("  rack w,  bay 3 ")).map(Place::name).contains("Rack W, bay 3");
        assertThat(map.find("Rack W, bay 6")).isEmpty();
    }

    /** As the page of a tyre manufacturer has it that {@link Lying} names. */
    @Test
    void tyresOnRimsDoNotStandAndOthersDo() {
        assertThat(Lying.STANDING.caution(true)).contains(Lying.Caution.HANG_OR_STACK);
        assertThat(Lying.STACKED.caution(true)).isEmpty();
        assertThat(Lying.STANDING.caution(false)).isEmpty();
        assertThat(Lying.STACKED.caution(false)).contains(Lying.Caution.STAND_AND_TURN);
        assertThat(Lying.HUNG.caution(false)).contains(Lying.Caution.STAND_AND_TURN);
    }

    @Test
    void typedNamesThatDifferByTheirLastNumberMakeARack() {
        assertThat(TypedPlaces.racks(List.of("Rack 2, bay 3", "Rack 2,  bay 12 ", "Attic", "Cellar 7", "K-09", "K-10")))
                .containsExactly(
                        new Naming("Rack 2, bay #", 1, 12),
                        new Naming("Attic", 1, 1),
                        new Naming("Cellar 7", 1, 1),
                        new Naming("K-##", 1, 10));
        assertThat(TypedPlaces.racks(List.of("K-9", "K-09")))
                .as("one of them is no place of a rack")
                .hasSize(2);
        assertThat(TypedPlaces.racks(List.of("", "#4", "x".repeat(31)))).isEmpty();
        assertThat(TypedPlaces.racks(List.of("A 1", "A 500"))).hasSize(2);
    }

    /** A big store counts its bays through: a rack for each hundred of them, and not a tap for each bay. */
    @Test
    void moreThanAHundredTypedNamesMakeARackForEachHundred() {
        var typed = IntStream.rangeClosed(1, 275)
                .filter(bay -> bay % 7 != 3)
                .mapToObj(bay -> "Rack S, bay " + bay)
                .toList();
        var racks = TypedPlaces.racks(typed);
        assertThat(racks)
                .containsExactlyInAnyOrder(
                        new Naming("Rack S, bay #", 1, 99),
                        new Naming("Rack S, bay 100", 1, 1),
                        new Naming("Rack S, bay 1##", 1, 98),
                        new Naming("Rack S, bay 200", 1, 1),
                        new Naming("Rack S, bay 2##", 1, 75));
        var places = racks.stream()
                .flatMap(rack -> IntStream.rangeClosed(1, rack.places()).mapToObj(place -> rack.name(1, place)))
                .toList();
        assertThat(places).as("each bay has one place").containsAll(typed).doesNotHaveDuplicates();
    }

    /** Twenty places from the door inwards: the two nearest are for sets that go on soon. */
    @Test
    void aSetGoesWhereTheRuleSays() {
        var map = StoreMap.of(List.of(rack("A-##", 1, 20, 0)));
        var empty = new PlaceChoice(map, Map.of(), Set.of(), Set.of());
        assertThat(empty.propose(null, true)).map(Place::name).contains("A-01");
        assertThat(empty.propose(null, false)).map(Place::name).contains("A-03");
        assertThat(empty.propose("a-17", false)).map(Place::name).contains("A-17");
        assertThat(empty.propose("Somewhere else", false)).map(Place::name).contains("A-03");
        var some = new PlaceChoice(map, Map.of("a-03", 1, "a-17", 1), Set.of("a-04"), Set.of());
        assertThat(some.propose("A-17", false)).as("taken").map(Place::name).contains("A-05");
        var nearlyFull = new HashMap<String, Integer>();
        for (int i = 3; i <= 20; i++) {
            nearlyFull.put("a-%02d".formatted(i), 1);
        }
        assertThat(new PlaceChoice(map, nearlyFull, Set.of(), Set.of()).propose(null, false))
                .as("only those near the door are left")
                .map(Place::name)
                .contains("A-01");
        nearlyFull.put("a-01", 1);
        nearlyFull.put("a-02", 1);
        assertThat(new PlaceChoice(map, nearlyFull, Set.of(), Set.of()).propose(null, true))
                .isEmpty();
    }

    /** Ten places here and ten in another house: those there are for what does not go on soon, when nothing is free here. */
    @Test
    void aPlaceElsewhereIsTakenLast() {
        var map = StoreMap.of(List.of(rack("B-##", 1, 10, 50), rack("R-##", 1, 10, 0)));
        var away = map.places().stream()
                .map(place -> StoreMap.key(place.name()))
                .filter(name -> name.startsWith("r"))
                .collect(Collectors.toSet());
        var empty = new PlaceChoice(map, Map.of(), Set.of(), away);
        assertThat(empty.propose(null, true)).map(Place::name).contains("B-01");
        assertThat(empty.propose(null, false)).map(Place::name).contains("B-02");
        assertThat(empty.propose("R-07", false)).map(Place::name).contains("R-07");
        assertThat(empty.propose("R-07", true)).map(Place::name).contains("B-01");
        var full = new HashMap<String, Integer>();
        for (int i = 1; i <= 10; i++) {
            full.put("b-%02d".formatted(i), 1);
        }
        assertThat(new PlaceChoice(map, full, Set.of(), away).propose(null, false))
                .map(Place::name)
                .contains("R-01");
    }
}
