package cornerbook.app.exchange.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import cornerbook.core.say.Refused;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Cards whose lines are the examples of RFC 6350, with the section beside each; the others are invented. */
class CardFileReferenceTest {
    private static String card(String... lines) {
        return "BEGIN:VCARD\r\nVERSION:4.0\r\n" + String.join("\r\n", lines) + "\r\nEND:VCARD\r\n";
    }

    private static PersonCard only(String... lines) {
        var cards = CardFile.read(card(lines));
        assertThat(cards).hasSize(1);
        return cards.getFirst();
    }

    /** 6.2.1, 6.4.1, 6.4.2 and 6.4.4: the preferred of each (5.3). */
    @Test
    void theExamplesOfThePropertiesAreTaken() {
        var card = only(
                "FN:Mr. John Q. Public\\, Esq.",
                "N:Public;John;Quinlan,Paul;Mr.;Esq.",
                "TEL;VALUE=uri;TYPE=home:tel:+33-01-23-45-67",
                "TEL;VALUE=uri;PREF=1;TYPE=\"voice,home\":tel:+1-555-555-5555;ext=5555",
                "EMAIL;TYPE=work:jqpublic@xyz.example.com",
                "EMAIL;PREF=1:jane_doe@example.com",
                "LANG;TYPE=work;PREF=2:en",
                "LANG;TYPE=work;PREF=1:fr");
        assertThat(card.name()).isEqualTo("Mr. John Q. Public, Esq.");
        assertThat(card.phone()).isEqualTo("+1-555-555-5555");
        assertThat(card.email()).isEqualTo("jane_doe@example.com");
        assertThat(card.language()).isEqualTo("fr");
        assertThat(card.notes()).containsExactly(new CardSaid.ExtensionLeftOut("5555"));
        assertThat(card.refused()).isNull();
    }

    /** 3.2: a line that goes on after a break and a blank is one, even within a sign of several bytes' word. */
    @Test
    void foldedLinesAreOne() {
        assertThat(only("FN:Zoé Grand\r\n pré", "EMAIL:zoe@exam\r\n\tple.org"))
                .satisfies(card -> assertThat(card.name()).isEqualTo("Zoé Grandpré"))
                .satisfies(card -> assertThat(card.email()).isEqualTo("zoe@example.org"));
    }

    /** 6.1.4: the group of the example is nobody; 3.3 and 5.1: names of properties in small letters, and a group before them. */
    @Test
    void aGroupIsNobodyAndLettersMayBeSmall() {
        assertThat(only("KIND:group", "FN:The Doe family", "TEL:555-0100").refused())
                .isEqualTo(new CardSaid.NobodysCard());
        assertThat(only("kind:individual", "item1.fn:Ida Tern", "item1.tel:555-0100").phone())
                .isEqualTo("555-0100");
        assertThat(only("KIND:org", "FN:ABC Marketing", "TEL:555-0100").refused()).isNull();
    }

    /** A mobile telephone before another of the same preference; never a fax (6.4.1). */
    @Test
    void theTelephoneThatRingsIsTaken() {
        assertThat(only("FN:Ida Tern", "TEL;TYPE=fax:555-0101", "TEL:555-0102", "TEL;TYPE=cell:555-0103")
                        .phone())
                .isEqualTo("555-0103");
        assertThat(only("FN:Ida Tern", "TEL;TYPE=fax:555-0101").refused()).isEqualTo(new CardSaid.NoWayToReach());
    }

    @Test
    void whatCannotBeTakenIsToldCardByCard() {
        var cards = CardFile.read(card("FN:Ida Tern", "TEL:555-0100")
                + card("N:;;;;", "TEL:555-0100")
                + card("FN:Ole Gull")
                + card("FN:" + "x".repeat(201), "TEL:555-0100")
                + card("FN:Una Skua", "EMAIL:at home")
                + card("FN:Ana Wren", "EMAIL:at home", "EMAIL:ana@example.org")
                + "BEGIN:VCARD\r\nVERSION:4.0\r\nFN:Cut Off\r\nTEL:555-0");
        assertThat(cards).extracting(PersonCard::number).containsExactly(1, 2, 3, 4, 5, 6, 7);
        assertThat(cards)
                .extracting(PersonCard::refused)
                .containsExactly(
                        null,
                        new CardSaid.NoName(),
                        new CardSaid.NoWayToReach(),
                        new CardSaid.NameTooLong(200),
                        new CardSaid.NoWayToReach(),
                        null,
                        new CardSaid.NotFinished());
        assertThat(cards.get(5).email()).isEqualTo("ana@example.org");
        assertThat(cards.get(5).notes()).containsExactly(new CardSaid.NoAddress("at home"));
    }

    /** RFC 2426 (3.0) says a preference as a type; vCard 2.1 writes letters beyond ASCII as RFC 2045 has them. */
    @Test
    void olderCardsAreRead() {
        var cards = CardFile.read("BEGIN:VCARD\r\nVERSION:3.0\r\nFN:Ida Tern\r\nTEL;TYPE=home:555-0101\r\n"
                + "TEL;TYPE=work,pref:555-0102\r\nEND:VCARD\r\n"
                + "BEGIN:VCARD\r\nVERSION:2.1\r\nFN;CHARSET=UTF-8;ENCODING=QUOTED-PRINTABLE:Zo=C3=A9\r\nTEL;CELL:555-0103\r\nEND:VCARD\r\n");
        assertThat(cards).extracting(PersonCard::phone).containsExactly("555-0102", "555-0103");
        assertThat(cards).extracting(PersonCard::name).containsExactly("Ida Tern", "Zoé");
    }

    @Test
    void whatIsNoFileOfCardsIsRefused() {
        for (var text : List.of("", "name;telephone\nIda;555", "<html>BEGIN:VCARD</html>")) {
            assertThatThrownBy(() -> CardFile.read(text)).as(text).isInstanceOf(Refused.class);
        }
        assertThatThrownBy(() -> CardFile.read(card("FN:Ida").repeat(5001))).isInstanceOf(Refused.class);
    }
}
