package cornerbook.app.desk.cars;

import cornerbook.core.car.CarHistory;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A row of a list, and what becomes of it.
 *
 * @param row as a spreadsheet numbers it, the head is row 1
 * @param cells as they stand there
 * @param car what it makes; null when it makes none
 * @param known whether the book has that plate already
 * @param problems why it makes no car, a sentence each
 */
public record ListedCar(
        int row, List<String> cells, @Nullable CarHistory car, boolean known, List<String> problems) {
    public ListedCar {
        cells = List.copyOf(cells);
        problems = List.copyOf(problems);
    }

    static ListedCar fit(int row, List<String> cells, CarHistory car) {
        return new ListedCar(row, cells, car, false, List.of());
    }

    static ListedCar inBook(int row, List<String> cells) {
        return new ListedCar(row, cells, null, true, List.of());
    }

    static ListedCar unfit(int row, List<String> cells, List<String> problems) {
        return new ListedCar(row, cells, null, false, problems);
    }

    boolean isUnfit() {
        return !problems.isEmpty();
    }
}
