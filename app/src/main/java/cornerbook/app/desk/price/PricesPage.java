package cornerbook.app.desk.price;

import cornerbook.app.book.price.PriceKey;
import cornerbook.app.book.price.PriceList;
import cornerbook.app.book.price.PriceRow;
import cornerbook.app.book.price.TaxPlace;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.TypedMoney;
import cornerbook.app.law.TaxOfPlace;
import cornerbook.app.request.Told;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.days.ExpectedMinutes;
import cornerbook.core.days.PlannedWork;
import cornerbook.core.finding.PlaceOfLaw;
import cornerbook.core.price.Job;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.IntStream;

/**
 * The price list as it stands.
 *
 * @param all that was ever said, thing by thing
 * @param usual place of law of most cars; empty while there is none
 * @param clocked how long planned work takes in this shop
 * @param typed what was typed, when it came back
 * @param error why it came back; empty when it did not
 */
public record PricesPage(
        LocalDate today,
        PriceList list,
        List<PriceRow> all,
        String usual,
        Map<PlannedWork, ExpectedMinutes> clocked,
        Form typed,
        String error) {
    /** Of Canada; those of a shop elsewhere, too. */
    private static final int MOST_TAXES = 2;

    public PricesPage {
        all = List.copyOf(all);
        clocked = Map.copyOf(clocked);
    }

    /** The identity of what a form keeps. */
    public String newId() {
        return UUID.randomUUID().toString();
    }

    public List<String> places() {
        return TaxOfPlace.places();
    }

    public String name(String place) {
        return Told.say(PlaceOfLaw.of(place));
    }

    /** The place that the form shows. */
    public String place() {
        return typed.has("place")
                ? typed.get("place")
                : list.place() == null ? usual : list.place().place();
    }

    public boolean isOnFile(String place) {
        return places().contains(place);
    }

    public String currency() {
        return typed.has("currency")
                ? typed.get("currency")
                : list.currency().map(Object::toString).orElse("CAD");
    }

    /** A tax as the form shows it. */
    public TaxPlace.OfShop tax(int at) {
        var taxes = Optional.ofNullable(list.place()).map(TaxPlace::taxes).orElse(List.of());
        return at < taxes.size() ? taxes.get(at) : new TaxPlace.OfShop("", null, "");
    }

    public List<Integer> taxes() {
        return IntStream.range(0, MOST_TAXES).boxed().toList();
    }

    /** What stands in a field: as it was typed, else as it is kept. */
    public String shown(String field, String kept) {
        return typed.has(field) ? typed.get(field) : kept;
    }

    public String hour() {
        return shown("hour", list.hour().map(TypedMoney::written).orElse(""));
    }

    public List<Job> jobs() {
        return Arrays.asList(Job.values());
    }

    public String minutes(Job job) {
        return shown(
                job.name() + ".minutes",
                list.find(job).map(value -> value.minutes()).map(String::valueOf).orElse(""));
    }

    public String parts(Job job) {
        return shown(
                job.name() + ".amount",
                list.find(job)
                        .map(value -> value.amount())
                        .map(TypedMoney::written)
                        .orElse(""));
    }

    /** How many minutes planned work takes by the shop's own clocks, or by what is usual; empty for other work. */
    public String usualMinutes(Job job) {
        return Arrays.stream(PlannedWork.values())
                .filter(work -> work.name().equals(job.name()))
                .findFirst()
                .flatMap(work -> Optional.ofNullable(clocked.get(work)))
                .map(expected -> String.valueOf(Math.round(expected.usual())))
                .orElse("");
    }

    public List<SeasonKind> seasons() {
        return Arrays.asList(SeasonKind.values());
    }

    public List<PriceRow> tyres() {
        return list.of(PriceKey.Item.TYRE);
    }

    public List<PriceRow> parts() {
        return list.of(PriceKey.Item.PART);
    }

    /** What a row is about, in words. */
    public String about(PriceRow row) {
        var w = Told.labels("app/desk/price");
        var key = row.key();
        return switch (key.item()) {
            case HOUR -> w.of("hour");
            case JOB -> Told.begin(Job.valueOf(key.kind()));
            case TYRE ->
                w.of("tyre-row", "size", key.name(), "season", SeasonKind.valueOf(key.kind()), "offer", key.offered());
            case PART -> key.name();
        };
    }

    /** Rows that do not stand today: earlier ones, and those that begin later. */
    public List<PriceRow> others() {
        return all.stream().filter(row -> !list.rows().contains(row)).toList();
    }
}
