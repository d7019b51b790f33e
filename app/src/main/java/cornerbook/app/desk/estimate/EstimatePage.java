package cornerbook.app.desk.estimate;

import cornerbook.app.book.estimate.Estimate;
import cornerbook.app.book.estimate.EstimateLine;
import cornerbook.app.book.estimate.WorkOfVisit;
import cornerbook.app.book.price.PriceKey;
import cornerbook.app.book.price.PriceList;
import cornerbook.app.book.price.PriceRow;
import cornerbook.app.desk.Form;
import cornerbook.app.desk.OpenVisit;
import cornerbook.app.desk.TypedMoney;
import cornerbook.app.law.RepairLaw;
import cornerbook.app.picture.QrCode;
import cornerbook.app.request.Told;
import cornerbook.core.price.Beyond;
import cornerbook.core.say.Price;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * What the work of a visit would cost, and what was agreed of it.
 *
 * @param draft the lines that the next estimate may have
 * @param address where a customer answers without pairing, just made; null where none was
 * @param typed what was typed, when it came back
 * @param error why it came back; empty when it did not
 */
public record EstimatePage(
        LocalDate today,
        OpenVisit open,
        PriceList prices,
        List<DraftLine> draft,
        WorkOfVisit work,
        @Nullable String address,
        Form typed,
        String error) {
    private static final int OWN_LINES = 3;
    /** How long an estimate holds unless somebody says otherwise. Common practice, no source. */
    private static final int USUAL_DAYS = 14;

    public EstimatePage {
        draft = List.copyOf(draft);
    }

    public String newId() {
        return UUID.randomUUID().toString();
    }

    public List<Integer> ownLines() {
        return IntStream.range(0, OWN_LINES).boxed().toList();
    }

    public int drafted() {
        return draft.size();
    }

    public EstimateLine line(int at) {
        return draft.get(at).line();
    }

    /** Ticked as it was sent; else what is usual, less what the customer has answered already. */
    public boolean isTaken(int at) {
        return typed.has("id")
                ? typed.has("take." + at)
                : draft.get(at).chosen()
                        && work.standing().stream()
                                .noneMatch(each -> each.line().matter().equals(line(at).matter()) && !each.isOpen());
    }

    public String amount(int at) {
        var field = "amount." + at;
        var amount = line(at).amount();
        return typed.has(field) ? typed.get(field) : amount == null ? "" : TypedMoney.written(amount);
    }

    public List<PriceRow> parts() {
        return prices.of(PriceKey.Item.PART);
    }

    public String validUntil() {
        return typed.has("valid")
                ? typed.get("valid")
                : today.plusDays(USUAL_DAYS).toString();
    }

    public Optional<Estimate> last() {
        return work.last();
    }

    /** Whether anything of the last estimate waits for an answer. */
    public boolean waits() {
        return work.standing().stream()
                .anyMatch(each -> each.isOpen() && each.line().amount() != null);
    }

    public RepairLaw law() {
        return RepairLaw.of(last().map(Estimate::place).orElse(""));
    }

    /** The most that may be charged without another agreement; null before anything was agreed. */
    public @Nullable Price most() {
        return work.agreed().isEmpty()
                ? null
                : work.totalAgreed()
                        .map(total -> new Price(Beyond.most(total.total(), law().mostOverPercent())))
                        .orElse(null);
    }

    /** The address as a code that a telephone reads. */
    public String code() {
        return address == null
                ? ""
                : QrCode.svg(address, Told.labels("app/desk/estimate").of("link-code"));
    }
}
