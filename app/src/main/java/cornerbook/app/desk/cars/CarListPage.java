package cornerbook.app.desk.cars;

import cornerbook.app.request.Told;
import cornerbook.core.corner.SeasonKind;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The page that takes in a list of cars.
 *
 * @param text the list
 * @param season of the wheels where the list does not tell; null when nothing was chosen
 * @param heads of its columns; empty before it was looked at
 * @param columns what stands in each of them; null where it is left out
 * @param listed what becomes of each row
 * @param addedCars how many cars were added just now; null when none were to be
 * @param error one sentence; empty when nothing was refused
 */
public record CarListPage(
        String text,
        @Nullable SeasonKind season,
        List<String> heads,
        List<@Nullable ListColumn> columns,
        List<ListedCar> listed,
        @Nullable Integer addedCars,
        String error) {
    static final String TEXT = "list";
    static final String SEASON = "season";
    static final CarListPage EMPTY = new CarListPage("", null, List.of(), List.of(), List.of(), null, "");
    /** So many rows are enough to see whether the columns are right. */
    private static final int SHOWN = 5;

    public CarListPage {
        heads = List.copyOf(heads);
        columns = new ArrayList<>(columns);
        listed = List.copyOf(listed);
    }

    public static String column(int place) {
        return "column." + place;
    }

    static String label(String key) {
        return Told.labels(CarList.WORDS).of(key);
    }

    CarListPage of(String newText, @Nullable SeasonKind newSeason) {
        return new CarListPage(newText, newSeason, heads, columns, listed, addedCars, error);
    }

    CarListPage failing(String newError) {
        return new CarListPage(text, season, heads, columns, listed, addedCars, newError);
    }

    CarListPage looked(List<String> newHeads, List<@Nullable ListColumn> newColumns, List<ListedCar> newListed) {
        return new CarListPage(text, season, newHeads, newColumns, newListed, addedCars, error);
    }

    CarListPage added(int cars) {
        return new CarListPage(text, season, heads, columns, listed, cars, error);
    }

    /** Whether there is a list whose columns may be other than they were taken for. */
    public boolean isLookedAt() {
        return !listed.isEmpty();
    }

    public List<ListedCar> fit() {
        return listed.stream().filter(each -> each.car() != null).toList();
    }

    public List<ListedCar> shown() {
        return fit().stream().limit(SHOWN).toList();
    }

    public int known() {
        return (int) listed.stream().filter(ListedCar::known).count();
    }

    public List<ListedCar> unfit() {
        return listed.stream().filter(ListedCar::isUnfit).toList();
    }

    public boolean has(int place, ListColumn column) {
        return place < columns.size() && columns.get(place) == column;
    }

    /** The first cell of a column that has something, to tell what it is. */
    public String example(int place) {
        return listed.stream()
                .map(each -> place < each.cells().size() ? each.cells().get(place) : "")
                .filter(cell -> !cell.isEmpty())
                .findFirst()
                .orElse("");
    }

    /** What a row has of a car. */
    public String cell(ListedCar car, ListColumn column) {
        int place = columns.indexOf(column);
        return place >= 0 && place < car.cells().size() ? car.cells().get(place) : "";
    }
}
