package cornerbook.app.desk.estimate;

import cornerbook.app.book.estimate.Agreement;
import cornerbook.app.book.estimate.Estimate;
import cornerbook.app.book.estimate.EstimateLine;
import cornerbook.app.book.estimate.LineWords;
import cornerbook.app.book.estimate.WorkOfVisit;
import cornerbook.app.book.price.PriceList;
import cornerbook.app.book.store.Arrival;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.OpenVisit;
import cornerbook.app.request.PageException;
import cornerbook.app.request.Told;
import cornerbook.core.assess.Advice;
import cornerbook.core.finding.SameWork;
import cornerbook.core.price.Total;
import cornerbook.core.release.ChargedWork;
import cornerbook.words.Reader;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/**
 * What work of the bay sheet would cost that no agreed line stands for: by the line that was offered, else by the price list. It is
 * asked about by the last estimate where that has it, else by one more that has nothing else.
 */
public final class WorkOffers {
    /** What is typed cannot be. */
    private static final int UNFIT = 422;

    private final Desk desk;
    private final OpenVisit open;
    private final WorkOfVisit work;
    private final PriceList prices;
    private final List<Advice> advice;
    private final Reader reader;

    /** @param advice what the findings of the visit ask for */
    public WorkOffers(Desk desk, OpenVisit open, List<Advice> advice) {
        this.desk = desk;
        this.open = open;
        this.work = desk.book().estimates().of(open.visit().id());
        this.prices = desk.book().prices().on(desk.today());
        this.advice = List.copyOf(advice);
        this.reader = desk.customerReader(open.history());
    }

    /**
     * What a piece of work would cost.
     *
     * @param line as the customer reads it
     * @param total with the taxes of the day; null while it has no price
     * @param declined whether the customer said no to it
     */
    public record Offer(
            ChargedWork work, EstimateLine line, @Nullable Total total, boolean declined) {}

    /** All that was estimated and agreed. */
    public WorkOfVisit work() {
        return work;
    }

    /** Lines that were agreed and of which nobody but a person knows which work they are about: those that were typed by hand. */
    public List<EstimateLine> unknown() {
        return work.agreed().stream()
                .map(WorkOfVisit.Standing::line)
                .filter(line -> line.works().isEmpty() && line.oneOf().isEmpty() && !Draft.isPlanned(line))
                .toList();
    }

    /** In which the customer is asked; empty while nothing was estimated and the shop has not said. */
    public Optional<CurrencyUnit> currency() {
        return work.last().map(Estimate::currency).or(prices::currency);
    }

    /** One for each work that the car can have. */
    public List<Offer> all() {
        return ChargedWork.possible(open.history().vehicle()).stream()
                .map(this::of)
                .toList();
    }

    public Offer of(ChargedWork asked) {
        var standing = work.of(asked);
        var line = standing.stream()
                .map(WorkOfVisit.Standing::line)
                .filter(each -> each.amount() != null && each.oneOf().isEmpty())
                .reduce((before, after) -> after)
                .orElseGet(() -> listed(asked));
        return new Offer(asked, line, total(line), standing.stream().anyMatch(WorkOfVisit.Standing::isDeclined));
    }

    /** By the price list; as the findings ask for it, where they do. */
    private EstimateLine listed(ChargedWork asked) {
        var charge = Charge.of(asked.job(), 1, prices, reader).orElse(null);
        var why = advice.stream()
                .filter(Advice::mayBeDeclined)
                // That one side is done asks for the other: it is no reason for the one.
                .filter(each -> !(each.first().title() instanceof SameWork))
                .filter(each -> JobOf.find(each)
                        .filter(job -> job.works().equals(List.of(asked)))
                        .isPresent())
                .findFirst();
        return new EstimateLine(
                why.map(Advice::key).orElse("WORK." + asked.key()),
                "",
                why.map(Advice::key).orElse(null),
                why.map(advised -> Draft.words(advised, reader)).orElseGet(() -> LineWords.of(reader.begin(asked))),
                charge == null ? "" : charge.detail(),
                "",
                false,
                charge == null ? null : charge.amount(),
                List.of(asked));
    }

    private @Nullable Total total(EstimateLine line) {
        var amount = line.amount();
        if (amount == null) {
            return null;
        }
        return work.last()
                .map(estimate -> estimate.total(List.of(line)))
                .orElseGet(() -> Total.of(amount.getCurrencyUnit(), List.of(amount), prices.taxes()));
    }

    /**
     * The estimate by which the customer is asked: the last one where that has the line at this price and still holds, else a new one.
     *
     * @param amount before taxes, as the customer is told it
     * @param id of the new one
     */
    public void give(Offer offer, Money amount, String id, String person, Instant madeAt) {
        desk.book().estimates().keep(asking(offer, amount, id, person, madeAt));
    }

    private Estimate asking(Offer offer, Money amount, String id, String person, Instant madeAt) {
        var line = offer.line().priced(amount);
        return work.last()
                .filter(last -> !desk.today().isAfter(last.validUntil())
                        && place(last, line).isPresent())
                .orElseGet(() -> next(line, id, person, madeAt));
    }

    private Estimate next(EstimateLine line, String id, String person, Instant madeAt) {
        var last = work.last();
        var place = prices.place();
        return new Estimate(
                id,
                open.visit().id(),
                work.estimates().size(),
                last.map(Estimate::language).orElse(reader.language()),
                desk.today(),
                last.map(Estimate::validUntil)
                        .filter(day -> day.isAfter(desk.today()))
                        .orElse(desk.today()),
                last.map(Estimate::place).orElseGet(() -> place == null ? "" : place.place()),
                currency().orElseThrow(() -> new PageException(UNFIT, new EstimateSaid.NoPlaceYet())),
                withOpen(line),
                last.map(Estimate::taxes).orElseGet(() -> taxes(desk.today())),
                person,
                madeAt);
    }

    /** Only the last estimate can be answered: what waits in the one before would never be. */
    private List<EstimateLine> withOpen(EstimateLine line) {
        var waiting = work.standing().stream()
                .filter(WorkOfVisit.Standing::isOpen)
                .map(WorkOfVisit.Standing::line)
                .filter(each -> !each.matter().equals(line.matter()));
        return Stream.concat(waiting, Stream.of(line)).toList();
    }

    private List<Estimate.Named> taxes(LocalDate day) {
        var place = prices.place();
        return place == null
                ? List.of()
                : place.on(day).stream()
                        .map(each -> new Estimate.Named(each.tax(), each.registration()))
                        .toList();
    }

    private static Optional<Integer> place(Estimate estimate, EstimateLine line) {
        int place = estimate.lines().indexOf(line);
        return place < 0 ? Optional.empty() : Optional.of(place);
    }

    /**
     * The customer agreed by telephone to what was read out; the same again, by its id, counts once.
     *
     * @param amount before taxes, as it stood before the eyes of who read it out
     * @param contact the number
     */
    public Arrival agreedByTelephone(
            Offer offer, Money amount, String id, String name, String contact, String person, Instant madeAt) {
        if (work.agreements().stream().anyMatch(each -> each.id().equals(id))) {
            return Arrival.ALREADY;
        }
        var estimate = asking(offer, amount, id + "/estimate", person, madeAt);
        var answers = Map.of(place(estimate, offer.line().priced(amount)).orElseThrow(), true);
        return desk.book()
                .estimates()
                .agreeTo(
                        estimate,
                        new Agreement(
                                id,
                                estimate.id(),
                                Agreement.Way.TELEPHONE,
                                name,
                                contact,
                                estimate.language(),
                                AgreementText.of(estimate, answers, Told.reader()),
                                null,
                                answers,
                                person,
                                madeAt),
                        desk.today());
    }
}
