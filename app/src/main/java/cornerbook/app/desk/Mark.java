package cornerbook.app.desk;

import cornerbook.app.picture.VerdictMark;
import cornerbook.app.request.Told;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Verdict;

/** The mark of a verdict on a page; its word stands beside it. */
public final class Mark {
    private Mark() {}

    public static String svg(Finding finding, int sizePx) {
        return svg(finding.verdict(), finding.lifeLeft(), sizePx);
    }

    /**
     * The same of a finding of which only this is kept.
     *
     * @param lifeLeft share of the usable life that is left, 0 to 1
     */
    public static String svg(Verdict verdict, double lifeLeft, int sizePx) {
        return VerdictMark.svg(verdict, lifeLeft, sizePx, Told.reader());
    }
}
