package cornerbook.app.cli.knowledge;

import cornerbook.app.book.Book;
import cornerbook.app.book.knowledge.TakenKnowledge;
import cornerbook.app.book.knowledge.TrustedKey;
import cornerbook.app.cli.print.Printed;
import cornerbook.app.cli.print.Terminal;
import cornerbook.app.desk.knowledge.NumberChanges;
import cornerbook.app.desk.knowledge.OthersPage;
import cornerbook.app.knowledge.PublicKeyText;
import cornerbook.app.knowledge.SigningKey;
import cornerbook.app.text.PlainText;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;

/** Takes other shops' knowledge into a book and back, and makes and trusts the keys that sign it. */
@CommandLine.Command(name = "knowledge", description = "verb-knowledge")
public final class KnowledgeVerb implements Runnable {
    private final Terminal terminal;
    private final Supplier<Book> open;
    private final Function<Path, String> read;

    @CommandLine.Parameters(
            index = "0",
            paramLabel = "${bundle:label-action}",
            defaultValue = "show",
            descriptionKey = "param-knowledge-action")
    private String word = "show";

    @CommandLine.Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "${bundle:label-file}",
            descriptionKey = "param-knowledge-file")
    private @Nullable Path file;

    @CommandLine.Option(names = "--name", paramLabel = "${bundle:label-name}", descriptionKey = "option-knowledge-name")
    private String name = "";

    /**
     * The verb on a book.
     *
     * @param open opens it when the verb runs
     * @param read gives the text of a file, or says that there is none
     */
    public KnowledgeVerb(Terminal terminal, Supplier<Book> open, Function<Path, String> read) {
        this.terminal = terminal;
        this.open = open;
        this.read = read;
    }

    private enum Action {
        SHOW(false),
        LOOK(true),
        TAKE(true),
        TAKE_BACK(false),
        MAKE_KEY(true),
        TRUST(true),
        DISTRUST(true);

        private final boolean ofFile;

        Action(boolean ofFile) {
            this.ofFile = ofFile;
        }

        private String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /** The action of a word that somebody wrote. */
    private static Action action(String word) {
        return Arrays.stream(Action.values())
                .filter(each -> each.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new Refused(new KnowledgeVerbSaid.NoSuchAction(PlainText.shown(word))));
    }

    /**
     * Runs it.
     *
     * @throws Refused with one sentence when the file or the key is refused
     */
    @Override
    public void run() {
        var action = action(word);
        var named = file;
        if (action.ofFile && named == null) {
            throw new Refused(new KnowledgeVerbSaid.NeedsFile(word));
        }
        if (!action.ofFile && named != null) {
            throw new Refused(new KnowledgeVerbSaid.TakesNoFile(word));
        }
        if (action == Action.MAKE_KEY && named != null) {
            var key = SigningKey.make(named).publicKey();
            terminal.say(new KnowledgeVerbSaid.KeyMade(named.toString(), key.fingerprint()));
            terminal.out().print(key.pem());
            return;
        }
        var text = named == null ? "" : read.apply(named);
        try (var book = open.get()) {
            run(book, action, text);
        }
    }

    private void run(Book book, Action action, String text) {
        var clock = Clock.system(ZoneId.systemDefault());
        var today = LocalDate.now(clock);
        var others = book.others();
        var id = UUID.randomUUID().toString();
        switch (action) {
            case SHOW -> show(book);
            case LOOK -> look(book, others.look(text, today), today);
            case TAKE -> {
                others.take(id, text, "", clock.instant(), today);
                book.knowledge().learn(today);
                others.find()
                        .ifPresent(taken -> terminal.say(
                                new KnowledgeVerbSaid.Taken(taken.others().origin())));
            }
            case TAKE_BACK -> {
                others.takeBack(id, "", clock.instant());
                book.knowledge().learn(today);
                terminal.say(new KnowledgeVerbSaid.TakenBack());
            }
            case TRUST -> {
                var key = PublicKeyText.parse(text);
                others.trust(id, key, name, "", clock.instant());
                terminal.say(new KnowledgeVerbSaid.Trusted(name, key.fingerprint()));
            }
            case DISTRUST -> {
                var key = PublicKeyText.parse(text);
                others.distrust(id, key, "", clock.instant());
                book.knowledge().learn(today);
                terminal.say(new KnowledgeVerbSaid.TrustedNoLonger(key.fingerprint()));
            }
            case MAKE_KEY -> throw new IllegalStateException("needs no book");
        }
    }

    private void show(Book book) {
        var standing = book.others().find();
        standing.map(KnowledgeVerb::standing)
                .ifPresentOrElse(terminal::say, () -> terminal.say(new KnowledgeVerbSaid.NothingStands()));
        book.others().listKeys().stream()
                .filter(TrustedKey::trusted)
                .forEach(key -> terminal.say(
                        new KnowledgeVerbSaid.Trusted(key.name(), key.key().fingerprint())));
    }

    private static Said standing(TakenKnowledge taken) {
        return new KnowledgeVerbSaid.Standing(taken.others().origin(), OthersPage.behindOf(taken));
    }

    private void look(Book book, TakenKnowledge looked, LocalDate today) {
        terminal.say(new KnowledgeVerbSaid.WouldBring(looked.others().origin(), OthersPage.behindOf(looked)));
        var knowledge = book.knowledge();
        List<NumberChanges.Group> groups = NumberChanges.of(knowledge.read(), knowledge.learn(today, looked.others()));
        for (var group : groups) {
            terminal.say(group.about());
            group.changes()
                    .forEach(change -> terminal.out()
                            .println("  "
                                    + Printed.line(terminal.reader()
                                            .say(new KnowledgeVerbSaid.Change(
                                                    change.number(), change.now(), change.then())))));
        }
    }
}
