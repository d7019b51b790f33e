package cornerbook.app.desk.shop;

import cornerbook.app.picture.tyre.ReadsMore;
import cornerbook.app.request.Told;
import cornerbook.core.reread.PersonReads;
import cornerbook.core.reread.ReadingStudy;
import cornerbook.core.reread.RereadSaid;
import cornerbook.core.reread.StudyLines;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How well the people of the shop read.
 *
 * @param all of all that was read twice, one sentence each
 * @param people each person's sentences
 * @param picture what each reads more or less than the others; null where nobody was compared
 */
public record RereadPage(
        List<String> all,
        List<List<String>> people,
        @Nullable String picture) {
    static RereadPage of(@Nullable ReadingStudy study) {
        return study == null
                ? new RereadPage(List.of(Told.say(RereadSaid.Plainly.TOO_FEW)), List.of(), null)
                : new RereadPage(
                        StudyLines.ofAll(study).stream().map(Told::say).toList(),
                        study.persons().stream().map(RereadPage::sentences).toList(),
                        ReadsMore.find(study, Told.reader()).orElse(null));
    }

    private static List<String> sentences(PersonReads person) {
        return StudyLines.of(person).stream().map(Told::say).toList();
    }
}
