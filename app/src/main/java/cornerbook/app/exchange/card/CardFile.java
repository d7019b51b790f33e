package cornerbook.app.exchange.card;

import cornerbook.app.mail.MailServer;
import cornerbook.app.text.PlainText;
import cornerbook.core.say.Refused;
import cornerbook.core.say.Said;
import cornerbook.words.Language;
import ezvcard.VCard;
import ezvcard.io.text.VCardReader;
import ezvcard.parameter.TelephoneType;
import ezvcard.parameter.VCardParameters;
import ezvcard.property.StructuredName;
import ezvcard.property.Telephone;
import ezvcard.property.VCardProperty;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Reads cards (vCard 4.0, RFC 6350; 3.0 and 2.1 as well). Of each are taken the name (FN, 6.2.1; else N, 6.2.2), one telephone (TEL, 6.4.1)
 * and one e-mail address (EMAIL, 6.4.2), the preferred ones (PREF, 5.3), a mobile telephone before another of the same preference,
 * and the language (LANG, 6.4.4). The rest is left.
 */
public final class CardFile {
    private static final int MOST_CARDS = 5000;
    private static final int LONGEST = 200;

    /** Where none is given, the least preferred (RFC 6350, section 5.3). */
    private static final int NO_PREFERENCE = 101;

    private static final Pattern BEGIN = Pattern.compile("(?im)^BEGIN:VCARD\\s*$");
    private static final Pattern END = Pattern.compile("(?im)^END:VCARD\\s*$");

    private CardFile() {}

    /**
     * All cards of a file, in their order.
     *
     * @throws Refused when it has none, or too many
     */
    public static List<PersonCard> read(String text) {
        long begun = BEGIN.matcher(text).results().count();
        if (begun == 0) {
            throw new Refused(new CardSaid.NoCard());
        }
        if (begun > MOST_CARDS) {
            throw new Refused(new CardSaid.TooMany(MOST_CARDS));
        }
        boolean cut = END.matcher(text).results().count() < begun;
        var cards = new ArrayList<PersonCard>();
        try (var reader = new VCardReader(text)) {
            for (var card = reader.readNext(); card != null; card = reader.readNext()) {
                int number = cards.size() + 1;
                cards.add(
                        cut && number == begun
                                ? refused(number, nameOf(card), new CardSaid.NotFinished())
                                : of(number, card));
            }
        } catch (IOException e) {
            // Nothing is read but a text in memory.
            throw new UncheckedIOException(e);
        }
        return cards;
    }

    private static PersonCard of(int number, VCard card) {
        var name = nameOf(card);
        var notes = new ArrayList<Said>();
        var phone = phone(card, notes);
        var email = email(card, notes);
        return problem(card, name, phone, email)
                .map(problem -> refused(number, PlainText.shown(name), problem))
                .orElseGet(() -> new PersonCard(number, name, phone, email, language(card), null, notes));
    }

    private static PersonCard refused(int number, String name, Said why) {
        return new PersonCard(number, name, null, null, null, why, List.of());
    }

    private static Optional<Said> problem(VCard card, String name, @Nullable String phone, @Nullable String email) {
        var kind = card.getKind();
        if (kind != null && !kind.isIndividual() && !kind.isOrg()) {
            return Optional.of(new CardSaid.NobodysCard());
        }
        if (name.isEmpty()) {
            return Optional.of(new CardSaid.NoName());
        }
        if (name.length() > LONGEST) {
            return Optional.of(new CardSaid.NameTooLong(LONGEST));
        }
        if (Stream.of(Optional.of(name), Optional.ofNullable(phone), Optional.ofNullable(email))
                .flatMap(Optional::stream)
                .anyMatch(text ->
                        text.length() > LONGEST || PlainText.findUnfit(text).isPresent())) {
            return Optional.of(new CardSaid.UnfitText());
        }
        return phone == null && email == null ? Optional.of(new CardSaid.NoWayToReach()) : Optional.empty();
    }

    private static String nameOf(VCard card) {
        var formatted = card.getFormattedName();
        if (formatted != null
                && formatted.getValue() != null
                && !formatted.getValue().isBlank()) {
            return formatted.getValue().strip();
        }
        StructuredName structured = card.getStructuredName();
        return structured == null
                ? ""
                : Stream.of(structured.getGiven(), structured.getFamily())
                        .filter(Objects::nonNull)
                        .map(String::strip)
                        .filter(part -> !part.isEmpty())
                        .reduce((given, family) -> given + " " + family)
                        .orElse("");
    }

    private static @Nullable String phone(VCard card, List<Said> notes) {
        var preferred = card.getTelephoneNumbers().stream()
                .filter(each -> number(each).isPresent())
                .filter(each -> !each.getTypes().contains(TelephoneType.FAX))
                .min(Comparator.<Telephone>comparingInt(CardFile::preference)
                        .thenComparing(each -> !each.getTypes().contains(TelephoneType.CELL)));
        preferred
                .map(Telephone::getUri)
                .map(uri -> uri.getExtension())
                .ifPresent(extension -> notes.add(new CardSaid.ExtensionLeftOut(PlainText.shown(extension))));
        return preferred.flatMap(CardFile::number).orElse(null);
    }

    private static Optional<String> number(Telephone telephone) {
        var uri = telephone.getUri();
        return Optional.ofNullable(uri == null ? telephone.getText() : uri.getNumber())
                .map(String::strip)
                .filter(number -> number.chars().anyMatch(Character::isDigit));
    }

    private static @Nullable String email(VCard card, List<Said> notes) {
        var addresses = card.getEmails().stream()
                .sorted(Comparator.comparingInt(CardFile::preference))
                .flatMap(each -> Stream.ofNullable(each.getValue()))
                .map(String::strip)
                .filter(address -> !address.isEmpty())
                .toList();
        addresses.stream()
                .filter(address -> !MailServer.isAddress(address))
                .forEach(address -> notes.add(new CardSaid.NoAddress(PlainText.shown(address))));
        return addresses.stream().filter(MailServer::isAddress).findFirst().orElse(null);
    }

    private static @Nullable String language(VCard card) {
        return card.getLanguages().stream()
                .sorted(Comparator.comparingInt(CardFile::preference))
                .flatMap(each -> Stream.ofNullable(each.getValue()))
                .flatMap(tag -> Language.find(tag.toLowerCase(Locale.ROOT)).stream())
                .map(Language::tag)
                .findFirst()
                .orElse(null);
    }

    /** 1 is the most preferred; what is no such number prefers nothing (RFC 6350, section 5.3). Older cards say PREF as a type. */
    private static int preference(VCardProperty property) {
        var said = property.getParameters().first(VCardParameters.PREF);
        if (said != null && said.matches("[0-9]{1,3}")) {
            return Integer.parseInt(said);
        }
        return property.getParameters().getTypes().stream().anyMatch("pref"::equalsIgnoreCase) ? 1 : NO_PREFERENCE;
    }
}
