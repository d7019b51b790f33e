package cornerbook.app.cli.customer;

import cornerbook.app.book.Book;
import cornerbook.app.cli.print.Terminal;
import cornerbook.app.desk.customer.CardRow;
import cornerbook.app.desk.customer.ProposedCards;
import cornerbook.core.say.Refused;
import java.nio.file.Path;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Function;
import java.util.function.Supplier;
import picocli.CommandLine;

/**
 * Takes customers from a file of cards, all or none, as the page proposes it: who shares a telephone or an e-mail address with a customer
 * is the same and gets what was missing, who has only the name of one is left for a person to choose on the page.
 */
@CommandLine.Command(name = "customers", description = "verb-customers")
public final class CustomersVerb implements Runnable {
    private final Terminal terminal;
    private final Supplier<Book> open;
    private final Function<Path, String> read;

    @CommandLine.Parameters(paramLabel = "${bundle:label-file}", descriptionKey = "param-customers")
    private Path file = Path.of("");

    /**
     * The verb on a book.
     *
     * @param open opens it when the verb runs
     * @param read gives the text of a file, or says that there is none
     */
    public CustomersVerb(Terminal terminal, Supplier<Book> open, Function<Path, String> read) {
        this.terminal = terminal;
        this.open = open;
        this.read = read;
    }

    /**
     * Runs it.
     *
     * @throws Refused with one sentence when the file has no cards, or too many
     */
    @Override
    public void run() {
        var text = read.apply(file);
        try (var book = open.get()) {
            var cards = ProposedCards.of(
                    book.cards().list(), text, UUID.randomUUID().toString());
            int taken = book.cards().take(cards.taken());
            cards.sameName().stream()
                    .map(CardRow::card)
                    .forEach(card -> terminal.say(new CustomersSaid.SameName(card.number(), card.name())));
            cards.unfit()
                    .forEach(card -> terminal.say(
                            new CustomersSaid.Unfit(card.number(), Objects.requireNonNull(card.refused()))));
            terminal.say(new CustomersSaid.Taken(taken, cards.count()));
        }
    }
}
