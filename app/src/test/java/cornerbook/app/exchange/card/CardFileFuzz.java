package cornerbook.app.exchange.card;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.InEnglish;
import cornerbook.app.fuzz.FuzzTarget;
import cornerbook.app.fuzz.Input;
import cornerbook.app.fuzz.Sentences;
import cornerbook.app.text.PlainText;
import cornerbook.core.say.Refused;
import java.util.List;

/**
 * A text is a file of cards or is refused with a sentence; a card is refused with one, or has a name and a way to reach the person that fit
 * into the book.
 */
public final class CardFileFuzz implements FuzzTarget {
    @Override
    public void take(byte[] input) {
        var text = new Input(input).text();
        List<PersonCard> cards;
        try {
            cards = CardFile.read(text);
        } catch (Refused e) {
            Sentences.check(InEnglish.told(e), text);
            return;
        }
        for (var card : cards) {
            card.notes().forEach(note -> Sentences.check(InEnglish.say(note), text));
            var refused = card.refused();
            if (refused != null) {
                Sentences.check(InEnglish.say(refused), text);
                continue;
            }
            assertThat(PlainText.findUnfit(card.name())).isEmpty();
            assertThat(card.name()).isNotBlank().hasSizeLessThanOrEqualTo(200);
            assertThat(card.phone() != null || card.email() != null).isTrue();
        }
        assertThat(CardFile.read(text)).isEqualTo(cards);
    }
}
