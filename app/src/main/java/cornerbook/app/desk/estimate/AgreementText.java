package cornerbook.app.desk.estimate;

import cornerbook.app.book.estimate.Estimate;
import cornerbook.app.law.RepairLaw;
import cornerbook.core.say.Price;
import cornerbook.words.Reader;
import java.util.ArrayList;
import java.util.Map;
import java.util.Objects;

/**
 * Exactly what a customer agrees to, in the language of the estimate: it is shown, kept and hashed as one text. Of a choice it names what
 * was taken; the others are no refusals.
 */
final class AgreementText {
    private AgreementText() {}

    /** @param answers by the place of a line in the estimate */
    static String of(Estimate estimate, Map<Integer, Boolean> answers, Reader asks) {
        var reader = asks.in(estimate.language());
        var w = reader.labels("app/desk/estimate");
        var lines = new ArrayList<String>();
        lines.add(w.of("text-head", "n", estimate.turn() + 1, "day", estimate.day(), "until", estimate.validUntil()));
        for (var matter : Matter.of(estimate)) {
            if (matter.options().stream().map(Matter.Option::place).anyMatch(answers::containsKey)) {
                lines.add(matter.options().stream()
                        .filter(option -> Boolean.TRUE.equals(answers.get(option.place())))
                        .map(Matter.Option::line)
                        .findFirst()
                        .map(taken -> w.of(
                                "text-yes",
                                "words",
                                taken.words(),
                                "amount",
                                new Price(Objects.requireNonNull(taken.amount()))))
                        .orElseGet(() -> w.of(
                                "text-no",
                                "words",
                                matter.first().words(),
                                "safety",
                                matter.first().safety())));
            }
        }
        var total = estimate.total(answers.entrySet().stream()
                .filter(Map.Entry::getValue)
                .map(answer -> estimate.lines().get(answer.getKey()))
                .toList());
        lines.add(w.of("text-subtotal", "amount", new Price(total.subtotal())));
        total.taxes()
                .forEach(share -> lines.add(w.of(
                        "text-tax",
                        "tax",
                        share.tax().name(),
                        "percent",
                        reader.typed(share.tax().percent().toPlainString()),
                        "amount",
                        new Price(share.amount()))));
        lines.add(w.of("text-total", "amount", new Price(total.total())));
        lines.add(w.of(
                "text-most",
                "percent",
                reader.typed(RepairLaw.of(estimate.place()).mostOverPercent().toPlainString())));
        lines.add(w.of("text-end"));
        return String.join("\n", lines);
    }
}
