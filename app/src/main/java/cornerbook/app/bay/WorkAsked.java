package cornerbook.app.bay;

import cornerbook.app.bay.BayState.Asking;
import cornerbook.app.bay.BayState.Work;
import cornerbook.app.book.estimate.FreeReason;
import cornerbook.app.book.estimate.WorkAnswer;
import cornerbook.app.book.estimate.WorkOfVisit;
import cornerbook.app.book.store.Arrival;
import cornerbook.app.desk.Desk;
import cornerbook.app.desk.OpenVisit;
import cornerbook.app.desk.estimate.WorkOffers;
import cornerbook.app.law.RepairLaw;
import cornerbook.app.request.PageException;
import cornerbook.core.assess.Advice;
import cornerbook.core.coming.Purpose;
import cornerbook.core.price.Beyond;
import cornerbook.core.release.ChargedWork;
import cornerbook.core.say.Price;
import cornerbook.core.say.Said;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.joda.money.Money;
import org.joda.money.format.MoneyFormatException;
import org.jspecify.annotations.Nullable;

/** What the bay sheet says of work that is charged for, and takes of what was said to it. */
final class WorkAsked {
    private final Desk desk;
    private final OpenVisit open;
    private final WorkOffers offers;
    private final WorkOfVisit work;

    WorkAsked(Desk desk, OpenVisit open, List<Advice> advice) {
        this.desk = desk;
        this.open = open;
        this.offers = new WorkOffers(desk, open, advice);
        this.work = offers.work();
    }

    /** Null where no estimate was given, and the place asks for none in writing. */
    @Nullable
    Asking asking() {
        var works = offers.all().stream().flatMap(offer -> work(offer).stream()).toList();
        if (works.isEmpty()) {
            return null;
        }
        var customer = open.history().customer();
        boolean mayCall = desk.reach().mayCall(customer.id(), Purpose.SAFETY);
        return new Asking(
                customer.name(),
                mayCall ? customer.phone() : null,
                mayCall,
                most().map(said -> BayReader.forAll(bay -> bay.say(said))).orElse(null),
                works,
                offers.unknown().stream()
                        .map(line -> new BayState.Line(line.key(), line.words()))
                        .toList());
    }

    private Optional<Said> most() {
        return work.last().map(estimate -> {
            var law = RepairLaw.of(estimate.place());
            var agreed = work.totalAgreed().orElseThrow().total();
            return new BaySaid.MostByNow(
                    new Price(agreed), new Price(Beyond.most(agreed, law.mostOverPercent())), law.estimate());
        });
    }

    private Optional<Work> work(WorkOffers.Offer offer) {
        return work.estimates().isEmpty()
                ? inWriting(offer).map(said -> work(offer, false, said))
                : Optional.of(work(offer, true, new BaySaid.NotAgreed(offer.declined(), offer.work())));
    }

    /** Where nobody gave an estimate: what the place says of one. */
    private Optional<Said> inWriting(WorkOffers.Offer offer) {
        var place = desk.book().prices().on(desk.today()).place();
        var amount = offer.line().amount();
        if (place == null || amount == null) {
            return Optional.empty();
        }
        var law = RepairLaw.of(place.place());
        var above = law.writtenAbove();
        return above != null && amount.getAmount().compareTo(above) > 0
                ? Optional.of(new BaySaid.NoEstimate(offer.work(), law.written()))
                : Optional.empty();
    }

    private Work work(WorkOffers.Offer offer, boolean holds, Said stop) {
        var total = offer.total();
        var free = work.findFree(offer.work());
        var settled = work.findAgreed(offer.work())
                .map(WorkOfVisit.Standing::agreement)
                .<Said>map(by -> new BaySaid.AgreedBy(by.name(), by.way()))
                .or(() -> free.map(by -> new BaySaid.DoneFree(FreeReason.said(by.reason()), by.person())));
        return new Work(
                offer.work().key(),
                offer.work().places(),
                holds,
                BayReader.forAll(bay -> bay.say(stop)),
                total == null
                        ? null
                        : BayReader.forAll(bay -> bay.say(new BaySaid.WithTaxes(new Price(total.total())))),
                total == null
                        ? null
                        : Objects.requireNonNull(offer.line().amount()).toString(),
                settled.map(said -> BayReader.forAll(bay -> bay.say(said))).orElse(null),
                free.isPresent());
    }

    /** The customer agreed by telephone, to what the tablet showed. */
    Arrival agreed(Entry entry) {
        var offer = offers.of(work(entry));
        try {
            return offers.agreedByTelephone(
                    offer,
                    price(entry),
                    entry.id(),
                    entry.text("name"),
                    entry.mark("contact"),
                    entry.person(),
                    entry.madeAt());
        } catch (PageException e) {
            throw new RefusedEntry(entry.where(), e.said());
        }
    }

    /** Of the coin in which the customer is asked. */
    private Money price(Entry entry) {
        try {
            var money = Money.parse(entry.text("price"));
            if (money.isPositiveOrZero()
                    && offers.currency().filter(money.getCurrencyUnit()::equals).isPresent()) {
                return money;
            }
        } catch (MoneyFormatException | IllegalArgumentException | ArithmeticException e) {
            throw entry.refused("price", BaySaid.Wanted.MONEY);
        }
        throw entry.refused("price", BaySaid.Wanted.MONEY);
    }

    /** It was without charge, it is what a line was about, or it is asked about again. */
    Arrival answered(Entry entry) {
        return desk.book()
                .estimates()
                .answer(new WorkAnswer(
                        entry.id(),
                        open.visit().id(),
                        work(entry),
                        entry.word("answer", WorkAnswer.Kind.class),
                        entry.optionalText("line"),
                        entry.mark("reason"),
                        entry.person(),
                        entry.madeAt()));
    }

    private static ChargedWork work(Entry entry) {
        return ChargedWork.find(entry.text("work")).orElseThrow(() -> entry.refused("work", BaySaid.Wanted.WORK));
    }
}
