package cornerbook.app.desk.customer;

import cornerbook.app.exchange.card.PersonCard;
import cornerbook.core.car.Customer;
import java.util.List;

/**
 * A card with what may become of it.
 *
 * @param alike customers who may be the same person, the likeliest first
 */
public record CardRow(PersonCard card, List<Alike> alike) {
    /** Chosen where the card is that of a new customer. */
    static final String NEW = "new";

    /** Chosen where nothing of the card is taken. */
    static final String LEFT = "left";

    public CardRow {
        alike = List.copyOf(alike);
    }

    /** By what a customer is like the card. */
    public enum Sign {
        TELEPHONE,
        E_MAIL,
        NAME
    }

    /**
     * A customer who may be the same.
     *
     * @param sign the surest one
     * @param lacks whether the card has something that the book has not of the customer
     */
    public record Alike(Customer customer, Sign sign, boolean lacks) {}

    /** Name of the field in which a person chooses. */
    public String field() {
        return "card." + card.number();
    }

    /** What is proposed: who shares a telephone or an address is the same, who only has the same name is for a person to say. */
    public String proposed() {
        if (alike.isEmpty()) {
            return NEW;
        }
        var first = alike.getFirst();
        return first.sign() != Sign.NAME && first.lacks() ? first.customer().id() : LEFT;
    }
}
