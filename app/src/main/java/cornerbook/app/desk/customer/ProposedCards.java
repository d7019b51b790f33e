package cornerbook.app.desk.customer;

import cornerbook.app.book.customer.CardLedger.Taken;
import cornerbook.app.exchange.card.CardFile;
import cornerbook.app.exchange.card.PersonCard;
import cornerbook.core.car.Customer;
import java.util.List;
import java.util.stream.Stream;

/** Cards with what may become of each, and what is taken of them where nobody chooses otherwise. */
public record ProposedCards(List<CardRow> rows, String id) {
    public ProposedCards {
        rows = List.copyOf(rows);
    }

    /**
     * The cards of a text.
     *
     * @param known customers of the book
     * @param id of what is taken: the same once more counts once
     * @throws cornerbook.core.say.Refused when it has none, or too many
     */
    public static ProposedCards of(List<Customer> known, String text, String id) {
        var alike = new AlikeCustomers(known);
        return new ProposedCards(
                CardFile.read(text).stream()
                        .map(card -> new CardRow(card, alike.of(card)))
                        .toList(),
                id);
    }

    public int count() {
        return rows.size();
    }

    private Stream<CardRow> fit() {
        return rows.stream().filter(row -> row.card().refused() == null);
    }

    /** What is proposed of those that can be taken. */
    public List<Taken> taken() {
        return fit().flatMap(row -> taken(row, row.proposed())).toList();
    }

    /** Those that share a name, and nothing else, with a customer: they are left. */
    public List<CardRow> sameName() {
        return fit().filter(
                        row -> !row.alike().isEmpty() && row.alike().getFirst().sign() == CardRow.Sign.NAME)
                .toList();
    }

    /** Those of which nothing can be taken. */
    public List<PersonCard> unfit() {
        return rows.stream()
                .map(CardRow::card)
                .filter(card -> card.refused() != null)
                .toList();
    }

    /** What is taken of a card when this was chosen for it. */
    Stream<Taken> taken(CardRow row, String chosen) {
        if (chosen.equals(CardRow.NEW)) {
            return Stream.of(new Taken(customer(id + "-" + row.card().number(), row.card()), true));
        }
        return row.alike().stream()
                .map(CardRow.Alike::customer)
                .filter(customer -> customer.id().equals(chosen))
                .map(customer -> new Taken(customer(customer.id(), row.card()), false));
    }

    private static Customer customer(String id, PersonCard card) {
        return new Customer(id, card.name(), card.phone(), card.email(), card.language());
    }
}
