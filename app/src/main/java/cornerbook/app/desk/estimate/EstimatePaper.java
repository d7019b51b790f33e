package cornerbook.app.desk.estimate;

import cornerbook.app.book.estimate.Agreement;
import cornerbook.app.book.estimate.Estimate;
import cornerbook.app.book.estimate.EstimateLine;
import cornerbook.app.book.estimate.WorkOfVisit;
import cornerbook.app.law.RepairLaw;
import cornerbook.app.sheet.PricedFacts;
import cornerbook.app.sheet.PricedSheet;
import cornerbook.app.sheet.SheetPage.Fact;
import cornerbook.core.car.CarHistory;
import cornerbook.core.say.Price;
import cornerbook.words.Labels;
import cornerbook.words.Reader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/** An estimate on paper, with what was agreed of it. */
final class EstimatePaper {
    private EstimatePaper() {}

    static PricedSheet.Content of(Estimate estimate, WorkOfVisit work, CarHistory history, Reader asks) {
        var reader = asks.in(estimate.language());
        var w = reader.labels("app/desk/estimate");
        var last = work.agreements().stream()
                .filter(each -> each.estimateId().equals(estimate.id()))
                .reduce((before, after) -> after);
        var rows = new ArrayList<PricedSheet.Row>();
        for (int place = 0; place < estimate.lines().size(); place++) {
            int at = place;
            var standing = last.filter(each -> each.answers().containsKey(at))
                    .map(each -> new WorkOfVisit.Standing(
                            estimate, at, estimate.lines().get(at), each));
            rows.add(row(estimate.lines().get(place), standing, reader, w));
        }
        return new PricedSheet.Content(
                w.of(
                        "paper-title",
                        "n",
                        estimate.turn() + 1,
                        "car",
                        history.vehicle().name(),
                        "day",
                        estimate.day()),
                PricedFacts.of(history, estimate.visitId(), reader),
                rows,
                totals(estimate, last, reader, w),
                notes(estimate, last, reader, w),
                last.map(Agreement::signature).orElse(""));
    }

    private static PricedSheet.Row row(
            EstimateLine line, Optional<WorkOfVisit.Standing> standing, Reader reader, Labels w) {
        var amount = line.amount();
        var answer = standing.map(each -> w.of(
                        "answer",
                        "state",
                        each.isAgreed() ? "agreed" : each.isOtherTaken() ? "other_taken" : "declined",
                        "safety",
                        line.safety()))
                .orElse("");
        return new PricedSheet.Row(
                line.words(),
                Stream.of(answer, line.detail(), line.meaning())
                        .filter(each -> !each.isEmpty())
                        .collect(Collectors.joining(" · ")),
                amount == null ? w.of("price-open") : price(reader, amount));
    }

    /** Of what was agreed; of all that has a price and no other choice, before anything was. */
    private static List<Fact> totals(Estimate estimate, Optional<Agreement> last, Reader reader, Labels w) {
        var lines = new ArrayList<EstimateLine>();
        for (int place = 0; place < estimate.lines().size(); place++) {
            var line = estimate.lines().get(place);
            int at = place;
            if (last.map(each -> Boolean.TRUE.equals(each.answers().get(at)))
                    .orElse(line.oneOf().isEmpty())) {
                lines.add(line);
            }
        }
        var total = estimate.total(lines);
        return PricedFacts.totals(
                total,
                w.of("subtotal", "agreed", last.isPresent(), "choices", isChoice(estimate)),
                estimate.taxes().stream().map(Estimate.Named::registration).toList(),
                reader);
    }

    private static boolean isChoice(Estimate estimate) {
        return estimate.lines().stream().anyMatch(line -> !line.oneOf().isEmpty());
    }

    private static List<String> notes(Estimate estimate, Optional<Agreement> last, Reader reader, Labels w) {
        var law = RepairLaw.of(estimate.place());
        var notes = new ArrayList<String>();
        notes.add(w.of("valid-until", "day", estimate.validUntil()));
        if (estimate.lines().stream().anyMatch(line -> line.amount() == null)) {
            notes.add(w.of("open-lines"));
        }
        notes.add(
                w.of("text-most", "percent", reader.typed(law.mostOverPercent().toPlainString()))
                        + " ("
                        + reader.say(law.estimate())
                        + ")");
        if (estimate.asksForWork()) {
            notes.add(w.of("corners"));
        }
        last.ifPresent(agreement -> {
            notes.add(w.of(
                    "was-agreed",
                    "name",
                    agreement.name(),
                    "way",
                    agreement.way(),
                    "contact",
                    orNone(agreement.contact()),
                    "moment",
                    agreement.madeAt()));
            notes.add(w.of("hash-is", "hash", agreement.hash()));
        });
        return notes;
    }

    /** As words choose by it. */
    private static @Nullable String orNone(String text) {
        return text.isEmpty() ? null : text;
    }

    private static String price(Reader reader, Money money) {
        return reader.say(new Price(money));
    }
}
