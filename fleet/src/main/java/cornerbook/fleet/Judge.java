package cornerbook.fleet;

import cornerbook.app.book.verdict.Gravest;
import cornerbook.app.exchange.VisitFile;
import cornerbook.core.assess.Assessor;
import cornerbook.core.car.CarHistory;
import cornerbook.core.corner.Corner;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Todo;
import cornerbook.core.order.judge.CarNeed;
import cornerbook.words.Language;
import cornerbook.words.Reader;
import cornerbook.words.UnitSystem;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.Objects;
import java.util.Optional;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.RowFactory;
import org.apache.spark.sql.types.ArrayType;
import org.apache.spark.sql.types.DataTypes;
import org.apache.spark.sql.types.StructType;
import org.jspecify.annotations.Nullable;

/** Judges the latest visit of a car, as a list of the book does. */
final class Judge {
    /** What it was judged by, as {@link Basis} has it. */
    static final String BASIS = "basis";

    static final String HORIZONS = "horizons";
    static final String NEEDS = "needs";

    /** A finding; constants by the names that JSON of an assessment has, shares and chances from 0 to 1. */
    static final StructType HORIZON = new StructType()
            .add("part", DataTypes.StringType)
            .add("corner", DataTypes.StringType)
            .add("set", DataTypes.StringType)
            .add("wheel", DataTypes.StringType)
            .add("verdict", DataTypes.StringType)
            .add("horizon", DataTypes.DateType)
            .add("holds_until_next_visit", DataTypes.DoubleType)
            .add("life_left", DataTypes.DoubleType)
            .add("to_do", DataTypes.StringType)
            .add("by", DataTypes.StringType)
            .add("by_day", DataTypes.DateType);

    /** What a car may need of an article, as {@link cornerbook.core.order.Need} has it. */
    static final StructType NEED = new StructType()
            .add("part", DataTypes.StringType)
            .add("kind", DataTypes.StringType)
            .add("article", DataTypes.StringType)
            .add("due", DataTypes.DateType)
            .add("pieces", DataTypes.IntegerType)
            .add("once", DataTypes.DoubleType)
            .add("twice", DataTypes.DoubleType);

    /** A car; where it could not be judged, all between its digest and its horizons is null. */
    static final StructType JUDGED = new StructType()
            .add(Look.CAR, DataTypes.StringType)
            .add(CarLines.FILE, DataTypes.StringType)
            .add(CarLines.SITE, DataTypes.StringType)
            .add(CarLines.DIGEST, DataTypes.StringType)
            .add("visit", DataTypes.StringType)
            .add("day", DataTypes.DateType)
            .add("odometer_km", DataTypes.DoubleType)
            .add("next_visit", DataTypes.DateType)
            .add("verdict", DataTypes.StringType)
            .add("urgency", DataTypes.StringType)
            .add("life_left", DataTypes.DoubleType)
            .add("earliest_horizon", DataTypes.DateType)
            .add(BASIS, DataTypes.StringType)
            .add(HORIZONS, new ArrayType(HORIZON, false))
            .add(NEEDS, new ArrayType(NEED, false))
            .add(Look.PROBLEMS, new ArrayType(Look.PROBLEM, false));

    private final Assessor assessor;
    private final Basis basis;
    private final LocalDate day;
    private final Reader reader;

    Judge(JudgedBy by, LocalDate day, Language language) {
        assessor = by.assessor();
        basis = by.basis();
        this.day = day;
        reader = new Reader(language, UnitSystem.METRIC, ZoneOffset.UTC);
    }

    /** A row of {@link CarLines}; empty where {@link Look} set it aside. */
    Optional<Row> of(Row line) {
        @Nullable String text = line.getAs(CarLines.TEXT);
        return text != null
                        && VisitFile.read(text, day) instanceof VisitFile.Read read
                        && !read.history().visits().isEmpty()
                ? Optional.of(of(read.history(), line))
                : Optional.empty();
    }

    private Row of(CarHistory car, Row line) {
        var visit = car.visits().getLast();
        var id = car.vehicle().id();
        String file = line.getAs(CarLines.FILE);
        @Nullable String site = line.getAs(CarLines.SITE);
        @Nullable String digest = line.getAs(CarLines.DIGEST);
        try {
            var outcome = assessor.outcome(car, visit.id());
            var gravest = Gravest.of(outcome.findings());
            return RowFactory.create(
                    id,
                    file,
                    site,
                    digest,
                    visit.id(),
                    visit.date(),
                    visit.odometerKm(),
                    outcome.nextVisit(),
                    gravest.map(each -> each.verdict().name()).orElse(null),
                    gravest.map(each -> each.urgency().name()).orElse(null),
                    gravest.map(Gravest::lifeLeft).orElse(null),
                    outcome.findings().stream()
                            .map(Finding::horizon)
                            .filter(Objects::nonNull)
                            .min(Comparator.naturalOrder())
                            .orElse(null),
                    basis.of(Look.models(car)),
                    outcome.findings().stream().map(Judge::horizon).toArray(),
                    outcome.needs().stream().map(Judge::need).toArray(),
                    new Row[0]);
        } catch (RuntimeException fault) {
            return RowFactory.create(
                    id,
                    file,
                    site,
                    digest,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    new Row[0],
                    new Row[0],
                    new Row[] {Look.fault(car, reader, fault)});
        }
    }

    private static Row horizon(Finding finding) {
        var subject = finding.subject();
        var todo = finding.todo();
        return RowFactory.create(
                subject.part().name(),
                Optional.ofNullable(subject.corner()).map(Corner::name).orElse(null),
                subject.setId(),
                subject.wheelTag(),
                finding.verdict().name(),
                finding.horizon(),
                finding.probability(),
                finding.lifeLeft(),
                todo == null ? null : todo.action().name(),
                todo != null && todo.by() instanceof Todo.When when ? when.name() : null,
                todo != null && todo.by() instanceof Todo.ByDay by ? by.day() : null);
    }

    private static Row need(CarNeed need) {
        var article = need.article();
        return RowFactory.create(
                article.part().name(),
                article.kind(),
                article.text(),
                need.due(),
                need.need().pieces(),
                need.need().once(),
                need.need().twice());
    }
}
