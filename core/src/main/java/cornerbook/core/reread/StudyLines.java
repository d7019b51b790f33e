package cornerbook.core.reread;

import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.Said;
import java.util.ArrayList;
import java.util.List;

/** A study in sentences: of all that was read twice, and of each person. */
public final class StudyLines {
    private StudyLines() {}

    public static List<Said> ofAll(ReadingStudy study) {
        var lines = new ArrayList<Said>();
        lines.add(new RereadSaid.RestsOn(study.pairs(), study.occasions(), study.leftOut()));
        lines.add(new RereadSaid.Repeats(mm(study.repeatabilityLimitMm())));
        var occasions = study.occasionsMm();
        if (occasions != null) {
            lines.add(new RereadSaid.OverVisits(mm(ReadingStudy.limitMm(occasions))));
            lines.add(new RereadSaid.Reproduces(mm(study.reproducibilityLimitMm())));
        }
        return lines;
    }

    public static List<Said> of(PersonReads person) {
        var lines = new ArrayList<Said>();
        var repeats = person.repeatabilityMm();
        var name = person.person().isEmpty() ? null : person.person();
        lines.add(new RereadSaid.OfPerson(
                name, person.pairs(), repeats == null ? null : mm(ReadingStudy.limitMm(repeats))));
        var offset = person.offset();
        if (offset != null) {
            boolean more = offset.mm() >= 0;
            lines.add(new RereadSaid.ReadsOff(
                    name,
                    more,
                    mm(Math.abs(offset.mm())),
                    more
                            ? new Between(offset.lowMm(), offset.highMm(), "mm", 2)
                            : new Between(-offset.highMm(), -offset.lowMm(), "mm", 2)));
            if (offset.matters() && name != null) {
                lines.add(new RereadSaid.PutRight(name, more));
            }
        }
        return lines;
    }

    private static Amount mm(double value) {
        return new Amount(value, "mm", 2);
    }
}
