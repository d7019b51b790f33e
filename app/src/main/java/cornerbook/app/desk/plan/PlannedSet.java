package cornerbook.app.desk.plan;

import cornerbook.app.desk.Links;
import cornerbook.app.desk.Words;
import cornerbook.app.picture.CornerLabel;
import cornerbook.app.picture.car.WheelMoves;
import cornerbook.app.request.Told;
import cornerbook.core.corner.Corner;
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
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The plan of one set as the page tells it: its moves season by season, what it gains, and what new tyres would do. */
public record PlannedSet(SetPlan planned) {
    /**
     * One wheel in one season.
     *
     * @param from null for a wheel that never ran
     */
    public record Move(String tag, @Nullable Corner from, Corner to, double lowestMm) {
        public boolean moves() {
            return from != null && from != to;
        }

        public String words() {
            return from == null ? "new to the car" : moves() ? "from " + from : "stays";
        }
    }

    /** One season: when it starts, how far the set has run by then, which wheels move. */
    public record Season(LocalDate from, double startKm, List<Move> moves) {
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
        planned.request().wheels().forEach(wheel -> {
            if (wheel.lastCorner() != null) {
                stands.put(wheel.tag(), wheel.lastCorner());
            }
        });
        var seasons = new ArrayList<Season>();
        for (int s = 0; s < days.size(); s++) {
            var plan = planned.plan().seasons().get(s);
            var moves = new ArrayList<Move>();
            for (var corner : Corner.values()) {
                var tag = String.valueOf(plan.wheelAt().get(corner));
                moves.add(new Move(tag, stands.put(tag, corner), corner, lowestMm(tag)));
            }
            seasons.add(new Season(days.get(s).from(), plan.startKm(), moves));
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

    public String season() {
        return Words.season(planned.set().season()).toLowerCase(Locale.ROOT);
    }

    /** "1,200 to 3,400 km"; empty without scenarios. */
    public String interval(Gain gain) {
        var interval = gain.interval();
        return interval == null ? "" : Words.km(interval.lowKm()) + " to " + Words.km(interval.highKm());
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
                .map(purchase -> "%s: with them every rule is kept for %s, until about %s."
                        .formatted(
                                purchase.what(), Words.km(purchase.option().distanceKm()), Words.day(purchase.until())))
                .orElse("No purchase of two or four tyres mends it either.");
    }

    private RuleLine ruleLine(PlannedRule rule, String visitId) {
        var off = EnumSet.noneOf(Rule.class);
        switchedOff().forEach(other -> off.add(other.rule()));
        var cost = planned.plan().costs().stream()
                .filter(found -> found.rule() == rule.rule())
                .findFirst()
                .map(found -> "costs " + Words.km(found.costKm()))
                .orElse("costs nothing");
        return switch (rule.state()) {
            case KEPT -> {
                off.add(rule.rule());
                yield new RuleLine(rule, "kept", cost, Links.planWithout(visitId, off), "Plan without it");
            }
            case SWITCHED_OFF -> {
                off.remove(rule.rule());
                yield new RuleLine(rule, "left out, as asked", "", Links.planWithout(visitId, off), "Plan with it");
            }
            case LEFT_OUT -> new RuleLine(rule, "cannot be kept", "", null, "");
            case NOT_KNOWN -> new RuleLine(rule, "not known", "", null, "");
        };
    }

    public List<Purchase> purchases() {
        var starts =
                planned.seasons().first(planned.request().seasonsThousandKm().size());
        return planned.replacements().stream()
                .map(option -> new Purchase(
                        option,
                        what(option.kind()),
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
            return "The tyres of this set were no deeper than the limit when they came to the book, so nothing can be said of new ones.";
        }
        int seasons = planned.request().seasonsThousandKm().size();
        var lasting = purchases.stream()
                .filter(purchase -> purchase.option().lasts())
                .min(Comparator.comparingInt(
                                (Purchase purchase) -> purchase.option().kind().tyres())
                        .thenComparing(purchase -> -purchase.option().season()));
        return lasting.map(purchase -> purchase.when() == null
                        ? "No new tyres are needed for the %d seasons planned.".formatted(seasons)
                        : "The fewest new tyres that last the %d seasons planned, and as late as can be: %s on %s."
                                .formatted(
                                        seasons, purchase.what().toLowerCase(Locale.ROOT), Words.day(purchase.when())))
                .orElseGet(() -> "No single purchase lasts all %d seasons planned.".formatted(seasons));
    }

    private static String ends(Replacement option) {
        if (!option.endsByRules()) {
            return "the tread";
        }
        return option.binding().isEmpty()
                ? "the rules together"
                : option.binding().stream().map(PlannedSet::shortly).collect(Collectors.joining(", "));
    }

    private static String shortly(Rule rule) {
        return switch (rule) {
            case DIRECTIONAL -> "sides";
            case SIZE -> "sizes";
            case SAME_AXLE -> "difference on one axle";
            case ALL_WHEEL -> "difference among all four";
            case DEEPER_PAIR_REAR -> "deeper pair at the rear";
        };
    }

    private static String what(Replacement.Kind kind) {
        return switch (kind) {
            case NONE -> "No new tyres";
            case FRONT_PAIR -> "Two new, in place of those at the front";
            case REAR_PAIR -> "Two new, in place of those at the rear";
            case ALL_FOUR -> "Four new";
        };
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
