package cornerbook.app.desk;

import cornerbook.app.picture.VerdictMark;
import cornerbook.app.request.Told;
import cornerbook.core.finding.Finding;

/** The mark of a verdict on a page; its word stands beside it. */
public final class Mark {
    private Mark() {}

    public static String svg(Finding finding, int sizePx) {
        return VerdictMark.svg(finding.verdict(), finding.lifeLeft(), sizePx, Told.reader());
    }
}
