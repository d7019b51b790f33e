package cornerbook.app.book.car;

import cornerbook.app.book.store.Transactions;
import cornerbook.app.book.verdict.KeptVerdict;
import cornerbook.core.car.Customer;
import java.text.Normalizer;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;

/**
 * Finds cars by any part of what a person has of them: plate, VIN, name, customer, telephone, e-mail, wheel tag, place in the store,
 * sensor, tyre size and TIN. Accents, capitals, spaces within a plate or number and the order of words do not matter.
 */
public final class CarSearch {
    /** What a car is found by. Customers have several cars, so what is theirs is told apart from the car's revision. */
    private static final String CUSTOMER =
            "customer.name || ' ' || coalesce(customer.phone, '') || ' ' || coalesce(customer.email, '')";

    private static final List<String> FOUND_BY =
            List.of("name", "plate", "vin", "customer", "tag", "tyre_size", "tin", "sensor_id", "store_place");

    /** Cars whose words are not there, or not those of the car and its owner as they are now. */
    private static final String OLD =
            " from vehicle join customer on customer.id = vehicle.customer_id left join car_words on car_words.vehicle_id = vehicle.id"
                    + " where car_words.revision is null or car_words.revision <> vehicle.revision or car_words.customer <> "
                    + CUSTOMER;

    /** So many cars' words are written in one transaction, that readings need not wait for those of a whole book. */
    private static final int AT_ONCE = 300;

    /** Letters. Common practice, no source. */
    private static final int LONG = 5;

    private final Transactions store;

    public CarSearch(Transactions store) {
        this.store = store;
    }

    /**
     * Cars by name, a page of them.
     *
     * @param all how many there are on all pages
     * @param near whether no car has what was asked for, and these have it with a letter more, less, changed or swapped
     */
    public record Found(List<VehicleSummary> cars, int all, boolean near) {
        public Found {
            cars = List.copyOf(cars);
        }
    }

    /**
     * The cars that have every word of a query; where none has, those that have it but for one letter of a long word.
     *
     * @param query empty for all cars
     * @param from how many are passed over, 0 and more
     * @param most how many are told
     */
    public Found find(String query, int from, int most) {
        var words = fold(query);
        if (!words.isEmpty()) {
            keepWords();
        }
        return store.read(handle -> {
            var exact = find(handle, words.stream().map(List::of).toList(), false, from, most);
            return exact.all() > 0 || words.stream().noneMatch(CarSearch::isLong)
                    ? exact
                    : find(handle, words.stream().map(CarSearch::near).toList(), true, from, most);
        });
    }

    /**
     * The customers of whom the book has no car, as from an address book, who have every word of a query; by name. Nobody whose data were
     * erased.
     *
     * @param query nobody is found by an empty one
     * @param most how many are told
     */
    public List<Customer> findWithoutCar(String query, int most) {
        var words = fold(query);
        if (words.isEmpty()) {
            return List.of();
        }
        return store.read(handle -> handle
                .select(
                        "select customer.* from customer where not exists (select 1 from vehicle where vehicle.customer_id = customer.id) and not exists (select 1 from customer_erased where customer_erased.customer_id = customer.id) order by name, id")
                .map((row, context) -> CarReader.customer(row))
                .filter(customer -> {
                    var known = fold(customer.name() + " " + Objects.requireNonNullElse(customer.phone(), "") + " "
                            + Objects.requireNonNullElse(customer.email(), ""));
                    var all = String.join(" ", known) + " " + String.join("", known);
                    return words.stream().allMatch(all::contains);
                })
                .stream()
                .limit(most)
                .toList());
    }

    /** These cars as a list shows them, without those that are not there. */
    public List<VehicleSummary> list(List<String> vehicleIds) {
        if (vehicleIds.isEmpty()) {
            return List.of();
        }
        return store.read(handle -> {
            try (var query = handle.createQuery("select " + VehicleSummary.COLUMNS
                    + " from vehicle join customer on customer.id = vehicle.customer_id" + KeptVerdict.JOIN
                    + "where vehicle.id in (<ids>) order by vehicle.name, vehicle.id")) {
                return query.bindList("ids", vehicleIds)
                        .map((row, context) -> VehicleSummary.of(row))
                        .list();
            }
        });
    }

    /** Writes anew the words of cars that have changed; where none has, it only looks. */
    public void keepWords() {
        while (store.read(CarSearch::isAnyOld)) {
            store.write(CarSearch::refresh);
        }
    }

    /** The cars that have one of the spellings of each word. */
    private static Found find(Handle handle, List<List<String>> spellings, boolean near, int from, int most) {
        var having = spellings.isEmpty()
                ? ""
                : " join car_words on car_words.vehicle_id = vehicle.id where "
                        + spellings.stream()
                                .map(word -> word.stream()
                                        .map(spelling -> "car_words.words like ?")
                                        .collect(Collectors.joining(" or ", "(", ")")))
                                .collect(Collectors.joining(" and "));
        var patterns = spellings.stream()
                .flatMap(List::stream)
                .map(spelling -> "%" + spelling + "%")
                .toArray();
        int all = handle.select("select count(*) from vehicle" + having, patterns)
                .mapTo(Integer.class)
                .one();
        var page = Stream.concat(Arrays.stream(patterns), Stream.of(most, from)).toArray();
        return new Found(
                handle.select(
                                "select " + VehicleSummary.COLUMNS
                                        + " from vehicle join customer on customer.id = vehicle.customer_id"
                                        + KeptVerdict.JOIN + having
                                        + " order by vehicle.name, vehicle.id limit ? offset ?",
                                page)
                        .map((row, context) -> VehicleSummary.of(row))
                        .list(),
                all,
                near);
    }

    /** Of a short word too much is one letter away. */
    private static boolean isLong(String word) {
        return word.length() >= LONG;
    }

    /** A word, and of a long one what is meant when a glove hits a wrong key, one too many or too few, or two in the wrong order. */
    private static List<String> near(String word) {
        if (!isLong(word)) {
            return List.of(word);
        }
        var near = new LinkedHashSet<String>();
        for (int i = 0; i < word.length(); i++) {
            var before = word.substring(0, i);
            var after = word.substring(i + 1);
            near.add(before + "_" + after);
            near.add(before + after);
            near.add(before + "_" + word.substring(i));
            if (!after.isEmpty()) {
                near.add(before + after.charAt(0) + word.charAt(i) + after.substring(1));
            }
        }
        return List.copyOf(near);
    }

    private static boolean isAnyOld(Handle handle) {
        return handle.select("select 1" + OLD + " limit 1")
                .mapTo(Integer.class)
                .findFirst()
                .isPresent();
    }

    private static int refresh(Handle handle) {
        var stale = handle.select("select vehicle.id, vehicle.revision, " + CUSTOMER
                        + " as customer, vehicle.name, vehicle.plate, vehicle.vin, wheel.tag, wheel.tyre_size, wheel.tin, wheel.sensor_id, wheel_set.store_place"
                        + " from vehicle join customer on customer.id = vehicle.customer_id"
                        + " left join wheel_set on wheel_set.vehicle_id = vehicle.id"
                        + " left join wheel on wheel.vehicle_id = vehicle.id and wheel.set_id = wheel_set.id"
                        + " where vehicle.id in (select vehicle.id" + OLD + " limit " + AT_ONCE + ")")
                .<String, Written>reduceRows((cars, row) -> {
                    var car = cars.computeIfAbsent(
                            row.getColumn("id", String.class),
                            id -> new Written(
                                    id,
                                    row.getColumn("revision", Long.class),
                                    row.getColumn("customer", String.class),
                                    new LinkedHashSet<>()));
                    FOUND_BY.forEach(column -> Optional.ofNullable(row.getColumn(column, String.class))
                            .ifPresent(car.values()::add));
                })
                .toList();
        var rows = handle.prepareBatch(
                "insert into car_words (vehicle_id, revision, customer, words) values (?, ?, ?, ?) on conflict (vehicle_id) do update set revision = excluded.revision, customer = excluded.customer, words = excluded.words");
        stale.forEach(car -> rows.add(car.vehicleId(), car.revision(), car.customer(), car.words()));
        return rows.execute().length;
    }

    /** What is written of one car. */
    private record Written(String vehicleId, long revision, String customer, Set<String> values) {
        /** Each value word by word, and with nothing between them, as whoever types a plate or a number may write it. */
        String words() {
            return values.stream()
                    .map(CarSearch::fold)
                    .map(words -> String.join(" ", words) + " " + String.join("", words))
                    .collect(Collectors.joining(" "));
        }
    }

    /** The words of a text in plain small letters and digits. */
    private static List<String> fold(String text) {
        var plain = Normalizer.normalize(text, Normalizer.Form.NFKD).toLowerCase(Locale.ROOT);
        return Arrays.stream(plain.split("\\s+"))
                .map(word -> word.replaceAll("[^\\p{L}\\p{N}]", ""))
                .filter(word -> !word.isEmpty())
                .toList();
    }
}
