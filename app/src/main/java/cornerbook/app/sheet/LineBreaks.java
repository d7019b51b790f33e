package cornerbook.app.sheet;

import com.openhtmltopdf.extend.FSTextBreaker;
import java.text.BreakIterator;
import java.util.Locale;

/**
 * Where a line may end: as Java has it, but not behind an apostrophe, which French joins to the next word, nor before a mark that it
 * sets behind a blank.
 */
final class LineBreaks implements FSTextBreaker {
    private static final String MARKS = ":;!?»";

    private final BreakIterator breaks = BreakIterator.getLineInstance(Locale.ROOT);
    private String text = "";

    @Override
    public void setText(String newText) {
        text = newText;
        breaks.setText(newText);
    }

    @Override
    public int next() {
        int place = breaks.next();
        while (place > 0 && place < text.length() && isJoined(place)) {
            place = breaks.next();
        }
        return place;
    }

    private boolean isJoined(int place) {
        return text.charAt(place - 1) == '’' || MARKS.indexOf(text.charAt(place)) >= 0;
    }
}
