package cornerbook.fleet;

import cornerbook.app.book.knowledge.InformingCars;
import cornerbook.app.book.knowledge.ShareBytes;
import cornerbook.app.exchange.VisitFile;
import cornerbook.core.assess.CarShare;
import cornerbook.core.car.CarHistory;
import cornerbook.core.say.Said;
import cornerbook.words.Language;
import cornerbook.words.Reader;
import cornerbook.words.UnitSystem;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.RowFactory;
import org.apache.spark.sql.types.ArrayType;
import org.apache.spark.sql.types.DataTypes;
import org.apache.spark.sql.types.StructType;
import org.jspecify.annotations.Nullable;

/** A first look at a car: whether it can be read, of which kinds it is, and what it teaches. */
final class Look {
    static final String CAR = "car";
    static final String KINDS = "kinds";
    static final String SCATTERED = "scattered";
    /** Of the car's tyres, each once. */
    static final String MODELS = "models";

    /** What the car teaches, as {@link ShareBytes}. */
    static final String SHARE = "share";

    static final String VISITS = "visits";
    /** Day of the first visit. */
    static final String FIRST = "first_visit";
    /** Day of the latest visit. */
    static final String LAST = "latest_visit";

    static final String PROBLEMS = "problems";

    /** A kind as {@link InformingCars.Kind} has it. */
    static final StructType KIND = new StructType()
            .add("drive", DataTypes.StringType)
            .add("season", DataTypes.StringType)
            .add("tyre_model", DataTypes.StringType);

    /** Why a car is set aside: where in its file, and what. */
    static final StructType PROBLEM =
            new StructType().add("place", DataTypes.StringType).add("reason", DataTypes.StringType);

    /** What a look tells; the car's id is null where it could not be read. */
    static final StructType LOOKED = new StructType()
            .add(CarLines.FILE, DataTypes.StringType)
            .add(CarLines.SITE, DataTypes.StringType)
            .add(CarLines.DIGEST, DataTypes.StringType)
            .add(CAR, DataTypes.StringType)
            .add(SCATTERED, DataTypes.IntegerType)
            .add(KINDS, new ArrayType(KIND, false))
            .add(MODELS, new ArrayType(DataTypes.StringType, false))
            .add(SHARE, DataTypes.BinaryType)
            .add(VISITS, DataTypes.IntegerType)
            .add(FIRST, DataTypes.DateType)
            .add(LAST, DataTypes.DateType)
            .add(PROBLEMS, new ArrayType(PROBLEM, false));

    private Look() {}

    /** Looks at a row of {@link CarLines}. */
    static Row of(Row line, LocalDate day, Language language) {
        var reader = new Reader(language, UnitSystem.METRIC, ZoneOffset.UTC);
        String file = line.getAs(CarLines.FILE);
        @Nullable String unread = line.getAs(CarLines.UNREAD);
        if (unread != null) {
            return refused(line, unread, List.of(problem("", reader, new FleetSaid.Unreadable(unread))));
        }
        @Nullable String text = line.getAs(CarLines.TEXT);
        if (text == null) {
            return refused(line, null, List.of(problem("", reader, new FleetSaid.NoText(file))));
        }
        return switch (VisitFile.read(text, day)) {
            case VisitFile.Refused refused ->
                refused(
                        line,
                        null,
                        refused.problems().stream()
                                .map(each -> problem(each.where(), reader, each.message()))
                                .toList());
            case VisitFile.Read read -> of(read.history(), line, reader);
        };
    }

    private static Row of(CarHistory car, Row line, Reader reader) {
        var id = car.vehicle().id();
        if (car.visits().isEmpty()) {
            return refused(line, null, List.of(problem("/visits", reader, new FleetSaid.NoVisit(id))));
        }
        try {
            return RowFactory.create(
                    line.getAs(CarLines.FILE),
                    line.getAs(CarLines.SITE),
                    line.getAs(CarLines.DIGEST),
                    id,
                    InformingCars.scattered(id),
                    kinds(car).stream()
                            .map(kind -> RowFactory.create(kind.drive(), kind.season(), kind.tyreModel()))
                            .toArray(),
                    models(car).toArray(),
                    ShareBytes.of(CarShare.of(car)),
                    car.visits().size(),
                    car.visits().getFirst().date(),
                    car.visits().getLast().date(),
                    new Row[0]);
        } catch (RuntimeException fault) {
            return refused(line, id, List.of(fault(car, reader, fault)));
        }
    }

    /** The kinds of a car as a book has them; none where nobody has told which axle is driven. */
    static Set<InformingCars.Kind> kinds(CarHistory car) {
        var kinds = new LinkedHashSet<InformingCars.Kind>();
        var drive = car.vehicle().drive();
        if (drive == null) {
            return kinds;
        }
        for (var set : car.sets()) {
            var season = set.season().name();
            if (set.wheels().isEmpty()) {
                kinds.add(new InformingCars.Kind(drive.name(), season, null));
            }
            set.wheels()
                    .forEach(wheel -> kinds.add(new InformingCars.Kind(
                            drive.name(), season, wheel.tyre().model())));
        }
        if (kinds.isEmpty()) {
            kinds.add(new InformingCars.Kind(drive.name(), null, null));
        }
        return kinds;
    }

    /** The models of all tyres of a car, in alphabetical order. */
    static Collection<String> models(CarHistory car) {
        return car.sets().stream()
                .flatMap(set -> set.wheels().stream())
                .map(wheel -> wheel.tyre().model())
                .filter(Objects::nonNull)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** That the program has a fault with a car, which keeps no other back. */
    static Row fault(CarHistory car, Reader reader, RuntimeException fault) {
        return problem(
                "",
                reader,
                new FleetSaid.Fault(
                        car.visits().getLast().id(), fault.getClass().getSimpleName()));
    }

    static Row problem(String where, Reader reader, Said reason) {
        return RowFactory.create(where, reader.say(reason));
    }

    private static Row refused(Row line, @Nullable String car, List<Row> problems) {
        return RowFactory.create(
                line.getAs(CarLines.FILE),
                line.getAs(CarLines.SITE),
                line.getAs(CarLines.DIGEST),
                car,
                null,
                new Row[0],
                new String[0],
                null,
                null,
                null,
                null,
                problems.toArray());
    }
}
