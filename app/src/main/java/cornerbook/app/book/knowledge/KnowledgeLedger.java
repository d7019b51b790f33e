package cornerbook.app.book.knowledge;

import static cornerbook.app.book.store.Transactions.within;

import cornerbook.app.book.shop.ClimateLedger;
import cornerbook.app.book.store.TableRow;
import cornerbook.app.book.store.Transactions;
import cornerbook.app.book.verdict.JudgedBy;
import cornerbook.app.knowledge.Extent;
import cornerbook.app.knowledge.KnowledgeFile;
import cornerbook.core.assess.Learner;
import cornerbook.core.brake.seizing.LearnedSeizing;
import cornerbook.core.brake.seizing.WeibullFit;
import cornerbook.core.corner.DriveLayout;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.finding.Knowledge;
import cornerbook.core.finding.KnowledgeOrigin;
import cornerbook.core.finding.OthersKnowledge;
import cornerbook.core.reread.ReadTwice;
import cornerbook.core.say.Refused;
import cornerbook.core.season.DistancePrior;
import cornerbook.core.tread.LearnedWear;
import cornerbook.core.tread.WearKnowledge;
import cornerbook.core.tread.WearParameter;
import cornerbook.core.tread.WearParameters;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** What was learned from all cars, kept as a whole. */
public final class KnowledgeLedger {
    /** Each has some sixty grooves that were read twice, and one waits for the answer. */
    private static final int REREAD_OF_A_KIND = 25;

    private final Transactions store;

    public KnowledgeLedger(Transactions store) {
        this.store = store;
    }

    /** What was learned last; nothing when it never was. */
    public Knowledge read() {
        return store.read(KnowledgeLedger::read);
    }

    /** Learns from the cars, beside what counts of other shops' knowledge, and keeps it in place of what was learned before. */
    public Knowledge learn(LocalDate today) {
        while (true) {
            var taken = store.read(OthersLedger::find);
            var knowledge = learn(today, taken.map(TakenKnowledge::others).orElse(null));
            boolean kept = store.write(handle -> keep(handle, knowledge, taken));
            if (kept) {
                return knowledge;
            }
        }
    }

    /** Not what was learned beside something that was taken in or back meanwhile. */
    private static boolean keep(Handle handle, Knowledge knowledge, Optional<TakenKnowledge> taken) {
        if (!OthersLedger.find(handle).equals(taken)) {
            return false;
        }
        if (differs(knowledge, read(handle))) {
            JudgedBy.countChange(handle);
        }
        replace(handle, knowledge, taken.map(TakenKnowledge::id).orElse(null));
        return true;
    }

    /** What would be learned beside other shops' knowledge; nothing of it is kept. */
    public Knowledge learn(LocalDate today, @Nullable OthersKnowledge others) {
        return Learner.sum(
                () -> new CarShares(store)
                        .learning(informing(InformingCars.OF_A_KIND))
                        .iterator(),
                today,
                others);
    }

    /**
     * What the cars of this book alone teach, for other shops.
     *
     * @throws Refused when they are too few
     */
    public KnowledgeFile forOthers(LocalDate today) {
        var ids = informing(InformingCars.OF_A_KIND);
        var shares = new CarShares(store).learning(ids).toList();
        int cars = (int) shares.stream().filter(share -> !share.isEmpty()).count();
        var extent = store.read(handle -> extent(handle, ids, cars, today));
        return KnowledgeFile.of(extent, Learner.sum(shares, today));
    }

    private static Extent extent(Handle handle, List<String> ids, int cars, LocalDate today) {
        var known = Set.copyOf(ids);
        var days = handle
                .select("select vehicle_id, visit_date from visit where cancelled = 0 order by visit_date")
                .map((row, context) -> known.contains(row.getString("vehicle_id")) ? row.getString("visit_date") : "")
                .stream()
                .filter(day -> !day.isEmpty())
                .map(LocalDate::parse)
                .filter(day -> !day.isAfter(today))
                .toList();
        return days.isEmpty()
                ? new Extent(0, 1, 0, today, today)
                : new Extent(cars, 1, days.size(), days.getFirst(), days.getLast());
    }

    /** What cars are judged by beside their own history, as it stands at one moment. */
    public JudgedWith judgedWith() {
        return store.read(handle -> new JudgedWith(
                read(handle), new ClimateLedger(within(handle)).find().orElse(null), JudgedBy.number(handle)));
    }

    /** Whether cars may be judged otherwise; the day on which the same was learned again is no reason, nor the order of its rows. */
    private static boolean differs(Knowledge now, Knowledge before) {
        return before.learnedOn() == null
                || !Objects.equals(origin(now), origin(before))
                || !Set.copyOf(now.wear().rows())
                        .equals(Set.copyOf(before.wear().rows()))
                || !now.distances().equals(before.distances())
                || !Objects.equals(now.seizing(), before.seizing());
    }

    /** It is told with each number. */
    private static @Nullable KnowledgeOrigin origin(Knowledge knowledge) {
        var others = knowledge.others();
        return others == null ? null : others.origin();
    }

    private List<String> informing(int mostOfAKind) {
        return store.read(handle -> InformingCars.choose(handle, mostOfAKind));
    }

    /** Grooves of the cars that were read twice with no distance between, with who read them. */
    public List<ReadTwice> readTwice() {
        return new CarShares(store).readTwice(informing(REREAD_OF_A_KIND)).toList();
    }

    private static Knowledge read(Handle handle) {
        var learnedOn = handle.select("select learned_on from learned")
                .mapTo(String.class)
                .findFirst()
                .map(LocalDate::parse);
        if (learnedOn.isEmpty()) {
            return Knowledge.NONE;
        }
        var distances = new EnumMap<SeasonKind, DistancePrior>(SeasonKind.class);
        handle.select("select * from learned_distance")
                .map((row, context) -> distances.put(
                        SeasonKind.valueOf(row.getString("season")),
                        new DistancePrior(
                                row.getDouble("mean_km_per_day"),
                                row.getDouble("car_sd_km_per_day"),
                                row.getDouble("season_sd_km_per_day"),
                                row.getInt("cars"))))
                .list();
        var wear = handle.select("select * from learned_wear order by drive, season, tyre_model")
                .map((row, context) -> wear(handle, row))
                .list();
        return new Knowledge(learnedOn.get(), new WearKnowledge(wear), distances, seizing(handle), others(handle));
    }

    private static @Nullable OthersKnowledge others(Handle handle) {
        return handle.select("select taken_id, signed_by from learned where taken_id is not null")
                .map((row, context) ->
                        OthersLedger.ofLearning(handle, row.getString("taken_id"), row.getString("signed_by")))
                .findFirst()
                .flatMap(found -> found)
                .orElse(null);
    }

    private static @Nullable LearnedSeizing seizing(Handle handle) {
        return handle.select("select * from learned_seizing")
                .map((row, context) -> new LearnedSeizing(
                        new WeibullFit(
                                numbers(handle, "COEFFICIENT"),
                                row.getDouble("scale"),
                                numbers(handle, "COVARIANCE"),
                                row.getDouble("log_likelihood")),
                        row.getInt("cars"),
                        row.getInt("pad_times")))
                .findFirst()
                .orElse(null);
    }

    private static List<Double> numbers(Handle handle, String part) {
        return handle.select("select amount from learned_seizing_number where part = ? order by place_in_list", part)
                .mapTo(Double.class)
                .list();
    }

    private static void insert(Handle handle, LearnedSeizing seizing) {
        new TableRow("learned_seizing")
                .set("only_row", 1)
                .set("cars", seizing.cars())
                .set("pad_times", seizing.padTimes())
                .set("scale", seizing.fit().scale())
                .set("log_likelihood", seizing.fit().logLikelihood())
                .insert(handle);
        insert(handle, "COEFFICIENT", seizing.fit().coefficients());
        insert(handle, "COVARIANCE", seizing.fit().covariance());
    }

    private static void insert(Handle handle, String part, List<Double> numbers) {
        for (int i = 0; i < numbers.size(); i++) {
            new TableRow("learned_seizing_number")
                    .set("part", part)
                    .set("place_in_list", i)
                    .set("amount", numbers.get(i))
                    .insert(handle);
        }
    }

    private static WearKnowledge.Row wear(Handle handle, ResultSet row) throws SQLException {
        var drive = row.getString("drive");
        var season = row.getString("season");
        var model = row.getString("tyre_model");
        var values = new EnumMap<WearParameter, Double>(WearParameter.class);
        var errors = new EnumMap<WearParameter, Double>(WearParameter.class);
        handle.select(
                        "select * from learned_wear_parameter where drive = ? and season = ? and tyre_model = ?",
                        drive,
                        season,
                        model)
                .map((number, context) -> {
                    var parameter = WearParameter.valueOf(number.getString("parameter"));
                    errors.put(parameter, number.getDouble("error"));
                    return values.put(parameter, number.getDouble("amount"));
                })
                .list();
        return new WearKnowledge.Row(
                DriveLayout.valueOf(drive),
                SeasonKind.valueOf(season),
                model.isEmpty() ? null : model,
                new LearnedWear(
                        new WearParameters(values),
                        errors,
                        row.getInt("cars"),
                        row.getInt("readings"),
                        row.getDouble("widening")));
    }

    private static void insert(Handle handle, WearKnowledge.Row row) {
        var learned = row.learned();
        var model = Objects.requireNonNullElse(row.tyreModel(), "");
        new TableRow("learned_wear")
                .set("drive", row.drive().name())
                .set("season", row.season().name())
                .set("tyre_model", model)
                .set("cars", learned.cars())
                .set("readings", learned.readings())
                .set("widening", learned.widening())
                .insert(handle);
        for (var parameter : WearParameter.values()) {
            new TableRow("learned_wear_parameter")
                    .set("drive", row.drive().name())
                    .set("season", row.season().name())
                    .set("tyre_model", model)
                    .set("parameter", parameter.name())
                    .set("amount", learned.parameters().of(parameter))
                    .set("error", learned.standardErrors().get(parameter))
                    .insert(handle);
        }
    }

    private static void replace(Handle handle, Knowledge knowledge, @Nullable String takenId) {
        handle.execute("delete from learned");
        handle.execute("delete from learned_wear_parameter");
        handle.execute("delete from learned_wear");
        handle.execute("delete from learned_distance");
        handle.execute("delete from learned_seizing");
        handle.execute("delete from learned_seizing_number");
        var origin = origin(knowledge);
        new TableRow("learned")
                .set("only_row", 1)
                .set("learned_on", Objects.requireNonNull(knowledge.learnedOn()))
                .set("taken_id", takenId)
                .set("signed_by", origin == null ? null : origin.signedBy())
                .insert(handle);
        knowledge
                .distances()
                .forEach((season, distance) -> handle.execute(
                        "insert into learned_distance (season, mean_km_per_day, car_sd_km_per_day, season_sd_km_per_day, cars) values (?, ?, ?, ?, ?)",
                        season.name(),
                        distance.meanKm(),
                        distance.carSdKm(),
                        distance.seasonSdKm(),
                        distance.cars()));
        var seizing = knowledge.seizing();
        if (seizing != null) {
            insert(handle, seizing);
        }
        knowledge.wear().rows().forEach(row -> insert(handle, row));
    }
}
