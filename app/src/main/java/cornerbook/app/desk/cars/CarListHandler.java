package cornerbook.app.desk.cars;

import cornerbook.app.book.car.VehicleSummary;
import cornerbook.app.book.store.BookException;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.Pages;
import cornerbook.app.desk.Typed;
import cornerbook.app.exchange.SpreadsheetText;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.say.Refused;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Takes in the cars of a list: first shows what would become of each row, then adds those that can be. */
public final class CarListHandler {
    /** Some ten thousand cars. */
    private static final int LARGEST_BYTES = 4 * 1024 * 1024;

    private final Desk desk;
    private final Pages pages;

    public CarListHandler(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    public void show(ServerRequest request, ServerResponse response) {
        pages.send(response, 200, "desk/cars/list", CarListPage.EMPTY);
    }

    /** Stores nothing. */
    public void look(ServerRequest request, ServerResponse response) {
        send(response, Form.readLines(request, LARGEST_BYTES), false);
    }

    /** What cannot be added comes back, so that it can be mended and sent again. */
    public void add(ServerRequest request, ServerResponse response) {
        send(response, Form.readLines(request, LARGEST_BYTES), true);
    }

    private void send(ServerResponse response, Form form, boolean adds) {
        var text = form.get(CarListPage.TEXT);
        var season =
                form.choice(CarListPage.SEASON, List.of(SeasonKind.values())).orElse(null);
        var page = CarListPage.EMPTY.of(text, season);
        try {
            var rows = SpreadsheetText.parse(text);
            if (rows.size() < 2) {
                pages.send(response, 422, "desk/cars/list", page.failing(CarListPage.label("no-rows")));
                return;
            }
            var columns = columns(form, rows.getFirst());
            var list = new CarList(columns, season);
            var listed = list.read(rows, plates(), desk.today());
            if (adds) {
                int added = add(listed);
                rows = left(rows.getFirst(), listed);
                listed = list.read(rows, plates(), desk.today());
                page = CarListPage.EMPTY
                        .of(rows.size() == 1 ? "" : SpreadsheetText.write(rows), season)
                        .added(added);
            }
            pages.send(response, 200, "desk/cars/list", page.looked(rows.getFirst(), columns, listed));
        } catch (Refused | BookException e) {
            pages.send(response, 422, "desk/cars/list", page.failing(Typed.sentence(e)));
        }
    }

    private int add(List<ListedCar> listed) {
        var cars = listed.stream().map(ListedCar::car).filter(Objects::nonNull).toList();
        desk.book().records().addCars(cars);
        return cars.size();
    }

    /** The rows that could not be added, below the heads. */
    private static List<List<String>> left(List<String> heads, List<ListedCar> listed) {
        var rows = new ArrayList<List<String>>();
        rows.add(heads);
        listed.stream().filter(ListedCar::isUnfit).map(ListedCar::cells).forEach(rows::add);
        return rows;
    }

    /** As the person chose; before, as the heads are called. */
    private static List<@Nullable ListColumn> columns(Form form, List<String> heads) {
        if (!form.has(CarListPage.column(0))) {
            return CarList.guess(heads);
        }
        var columns = new ArrayList<@Nullable ListColumn>();
        for (int i = 0; i < heads.size(); i++) {
            var chosen = form.get(CarListPage.column(i));
            columns.add(Arrays.stream(ListColumn.values())
                    .filter(column -> column.name().equals(chosen))
                    .filter(column -> !columns.contains(column))
                    .findFirst()
                    .orElse(null));
        }
        return columns;
    }

    private Set<String> plates() {
        return desk.book().cars().list().stream()
                .map(VehicleSummary::plate)
                .map(ListColumn::folded)
                .collect(Collectors.toSet());
    }
}
