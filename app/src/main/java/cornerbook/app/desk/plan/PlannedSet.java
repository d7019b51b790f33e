package cornerbook.app.desk.plan;

import cornerbook.app.picture.CornerLabel;
import cornerbook.app.picture.car.WheelMoves;
import cornerbook.app.request.Told;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SetOf;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.wheelplan.Gain;
import cornerbook.core.wheelplan.Replacement;
import cornerbook.core.wheelplan.Rule;
import cornerbook.core.wheelplan.WheelState;
import cornerbook.core.wheelplan.judge.PlannedRule;
import cornerbook.core.wheelplan.judge.SetPlan;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The plan of one set as the page tells it: its moves season by season, what it gains, and what new tyres would do. */
public record PlannedSet(SetPlan planned) {
    /**
     * One wheel in one season.
     *
     * @param from null for a wheel that never ran, and for the spare
     * @param wasSpare whether it lay as the spare before
     */
    public record Move(String tag, @Nullable Corner from, boolean wasSpare, Corner to, double lowestMm) {
        public boolean moves() {
            return wasSpare || (from != null && from != to);
        }

        public String words() {
            if (wasSpare) {
                return label("from-spare");
            }
            return from == null
                    ? label("new-to-the-car")
                    : moves() ? label("from-corner", "corner", from) : label("stays");
        }
    }

    /**
     * The wheel that lies as the spare.
     *
     * @param from where it ran before; null when it lay as the spare already, or never ran
     */
    public record Spare(String tag, @Nullable Corner from, double lowestMm) {}

    /**
     * One season: when it starts, how far the set has run by then, which wheels move.
     *
     * @param spare null of a set of four wheels
     */
    public record Season(
            LocalDate from,
            double startKm,
            List<Move> moves,
            @Nullable Spare spare) {
        public Season {
            moves = List.copyOf(moves);
        }

        public List<Move> moving() {
            return moves.stream().filter(Move::moves).toList();
        }
    }

    /** One purchase, or none. */
    public record Purchase(
            Replacement option, String what, @Nullable LocalDate when, LocalDate until, String ends) {}

    /** The season now first. */
    public List<Season> seasons() {
        var days = planned.seasons().first(planned.plan().seasons().size());
        var stands = new HashMap<String, Corner>();
        var wheels = planned.request().wheels();
        wheels.stream().limit(Corner.values().length).forEach(wheel -> {
            if (wheel.lastCorner() != null) {
                stands.put(wheel.tag(), wheel.lastCorner());
            }
        });
        @Nullable
        String lies = wheels.size() > Corner.values().length ? wheels.getLast().tag() : null;
        var seasons = new ArrayList<Season>();
        for (int s = 0; s < days.size(); s++) {
            var plan = planned.plan().seasons().get(s);
            var moves = new ArrayList<Move>();
            for (var corner : Corner.values()) {
                var tag = String.valueOf(plan.wheelAt().get(corner));
                moves.add(new Move(tag, stands.put(tag, corner), tag.equals(lies), corner, lowestMm(tag)));
            }
            var spare = wheels.stream()
                    .map(WheelState::tag)
                    .filter(tag -> !plan.wheelAt().containsValue(tag))
                    .findFirst()
                    .map(tag -> new Spare(tag, stands.remove(tag), lowestMm(tag)))
                    .orElse(null);
            lies = spare == null ? null : spare.tag();
            seasons.add(new Season(days.get(s).from(), plan.startKm(), moves, spare));
        }
        return seasons;
    }

    /** The car now, with an arrow for each wheel that moves. */
    public String picture() {
        var labels = new EnumMap<Corner, CornerLabel>(Corner.class);
        var now = seasons().getFirst();
        now.moves().forEach(move -> labels.put(move.to(), CornerLabel.ofWheel(move.tag(), move.words())));
        return WheelMoves.svg(labels, arrows(now), Told.reader());
    }

    public String smallPicture(Season season) {
        return WheelMoves.small(arrows(season), Told.reader());
    }

    private static Map<Corner, Corner> arrows(Season season) {
        var arrows = new EnumMap<Corner, Corner>(Corner.class);
        for (var move : season.moving()) {
            if (move.from() != null) {
                arrows.put(move.from(), move.to());
            }
        }
        return arrows;
    }

    /** The day on which the set has run so far. */
    public LocalDate dayAt(double distanceKm) {
        return planned.seasons().dayAt(distanceKm);
    }

    public Gain overUnmoved() {
        return planned.plan().gains().getFirst();
    }

    public SetOf set() {
        return new SetOf(planned.set().season());
    }

    /** "1 200 to 3 400 km"; empty without scenarios. */
    public String interval(Gain gain) {
        var interval = gain.interval();
        return interval == null ? "" : Told.say(new Between(interval.lowKm(), interval.highKm(), "km", 0));
    }

    /** The wear rates that the plan goes by: of the groove that wears fastest at each corner, mm per 1000 km. */
    public Map<Corner, Double> rates() {
        var rates = new EnumMap<Corner, Double>(Corner.class);
        planned.request()
                .ratesMmPer1000Km()
                .forEach((corner, ofGrooves) -> rates.put(corner, Collections.max(ofGrooves)));
        return rates;
    }

    /** One rule, what it costs, and where the plan is shown with it switched the other way. */
    public record RuleLine(
            PlannedRule rule,
            String state,
            String cost,
            @Nullable String link,
            String linkWords) {}

    public List<RuleLine> ruleLines(String visitId) {
        return planned.rules().stream().map(rule -> ruleLine(rule, visitId)).toList();
    }

    /** The rules that somebody asked to leave out. */
    public List<PlannedRule> switchedOff() {
        return planned.rules().stream()
                .filter(rule -> rule.state() == PlannedRule.State.SWITCHED_OFF)
                .toList();
    }

    /** The rules that no assignment keeps now. */
    public List<PlannedRule> leftOut() {
        return planned.rules().stream()
                .filter(rule -> rule.state() == PlannedRule.State.LEFT_OUT)
                .toList();
    }

    /** The fewest new tyres now that let every rule be kept again. */
    public String mending() {
        return purchases().stream()
                .filter(purchase ->
                        purchase.option().season() == 1 && purchase.option().distanceKm() > 0)
                .min(Comparator.comparingInt(
                                (Purchase purchase) -> purchase.option().kind().tyres())
                        .thenComparing(purchase -> -purchase.option().distanceKm()))
                .map(purchase -> label(
                        "mends",
                        "what",
                        purchase.what(),
                        "distance",
                        Amount.of(purchase.option().distanceKm(), "km"),
                        "day",
                        purchase.until()))
                .orElseGet(() -> label("nothing-mends"));
    }

    private RuleLine ruleLine(PlannedRule rule, String visitId) {
        var off = EnumSet.noneOf(Rule.class);
        switchedOff().forEach(other -> off.add(other.rule()));
        var cost = planned.plan().costs().stream()
                .filter(found -> found.rule() == rule.rule())
                .findFirst()
                .map(found -> label("costs", "km", Amount.of(found.costKm(), "km")))
                .orElseGet(() -> label("costs-nothing"));
        var state = label("state", "state", rule.state());
        return switch (rule.state()) {
            case KEPT -> {
                off.add(rule.rule());
                yield new RuleLine(rule, state, cost, PlanRules.planWithout(visitId, off), label("plan-without-it"));
            }
            case SWITCHED_OFF -> {
                off.remove(rule.rule());
                yield new RuleLine(rule, state, "", PlanRules.planWithout(visitId, off), label("plan-with-it"));
            }
            case LEFT_OUT, NOT_KNOWN -> new RuleLine(rule, state, "", null, "");
        };
    }

    public List<Purchase> purchases() {
        var starts =
                planned.seasons().first(planned.request().seasonsThousandKm().size());
        return planned.replacements().stream()
                .map(option -> new Purchase(
                        option,
                        label("purchase", "purchase", option.kind(), "tag", tag(option)),
                        option.season() == 0
                                ? null
                                : starts.get(option.season() - 1).from(),
                        dayAt(option.distanceKm()),
                        ends(option)))
                .toList();
    }

    /** The fewest new tyres, and those as late as can be, that last all seasons asked for. */
    public String advice(List<Purchase> purchases) {
        if (purchases.isEmpty()) {
            return label("nothing-to-say");
        }
        int seasons = planned.request().seasonsThousandKm().size();
        var lasting = purchases.stream()
                .filter(purchase -> purchase.option().lasts())
                .min(Comparator.comparingInt(
                                (Purchase purchase) -> purchase.option().kind().tyres())
                        .thenComparing(purchase -> -purchase.option().season()));
        return lasting.map(purchase -> purchase.when() == null
                        ? label("none-needed", "n", seasons)
                        : label(
                                "fewest",
                                "n",
                                seasons,
                                "purchase",
                                purchase.option().kind(),
                                "tag",
                                tag(purchase.option()),
                                "day",
                                purchase.when()))
                .orElseGet(() -> label("none-lasts", "n", seasons));
    }

    /** The one wheel that gets a new tyre; empty where it is not one. */
    private static String tag(Replacement option) {
        return option.kind() == Replacement.Kind.ONE_TYRE ? option.tags().getFirst() : "";
    }

    private static String ends(Replacement option) {
        if (!option.endsByRules()) {
            return label("ends-tread");
        }
        return option.binding().isEmpty()
                ? label("ends-together")
                : option.binding().stream()
                        .map(rule -> label("ends-rule", "rule", rule))
                        .collect(Collectors.joining(", "));
    }

    private static String label(String key, Object... facts) {
        return Told.labels("app/desk/plan").of(key, facts);
    }

    private double lowestMm(String tag) {
        return planned.request().wheels().stream()
                .filter(wheel -> wheel.tag().equals(tag))
                .map(WheelState::depthsMm)
                .mapToDouble(Collections::min)
                .findFirst()
                .orElseThrow();
    }
}
