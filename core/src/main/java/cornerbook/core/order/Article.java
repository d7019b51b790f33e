package cornerbook.core.order;

import cornerbook.core.battery.Chemistry;
import cornerbook.core.corner.Axle;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.say.Said;
import cornerbook.core.torque.Seat;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One thing that is ordered by the piece, as the order names it. Two cars need the same article where all of it is the same.
 *
 * @param kind name of a constant: the {@link SeasonKind} of a tyre, the {@link Axle} of a brake part, the {@link Chemistry} of a
 *     battery, the {@link Seat} of a nut; null for what has none, or where nobody has looked it up
 * @param text size, thread, grade, or the kind of car that it is for; empty where nobody has looked it up
 */
public record Article(OrderPart part, @Nullable String kind, String text) {
    /** Refuses a kind that its part has not. */
    public Article {
        if (kind != null && kinds(part).stream().noneMatch(kind::equals)) {
            throw new IllegalArgumentException(
                    "kind of %s is %s, expected one of %s".formatted(part, kind, kinds(part)));
        }
    }

    private static List<String> kinds(OrderPart part) {
        return constants(part).stream().map(Enum::name).toList();
    }

    private static List<? extends Enum<?>> constants(OrderPart part) {
        return switch (part) {
            case TYRE -> List.of(SeasonKind.values());
            case PADS, DISCS, SHOES, DRUMS -> List.of(Axle.values());
            case BATTERY -> List.of(Chemistry.values());
            case FASTENER -> List.of(Seat.values());
            case SENSOR, BRAKE_FLUID -> List.of();
        };
    }

    /** Its name in words. */
    public Said said() {
        @Nullable String told = text.isEmpty() ? null : text;
        return constants(part).stream()
                .filter(each -> each.name().equals(kind))
                .findFirst()
                .<Said>map(each -> new OrderSaid.OfKind(part, (Said) each, told))
                .orElseGet(() -> new OrderSaid.OfText(part, told));
    }
}
