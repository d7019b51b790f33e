package cornerbook.app;

import cornerbook.core.say.Said;
import cornerbook.core.say.Saying;
import cornerbook.words.Reader;

/** What a person is told, in metric English, for a test to look at; blanks that keep words together are blanks there. */
public final class InEnglish {
    private InEnglish() {}

    public static String told(Throwable refusal) {
        return say(Saying.of(refusal));
    }

    public static String say(Said said) {
        return Reader.DEFAULT.say(said).replace('\u00a0', ' ').replace('\u202f', ' ');
    }
}
