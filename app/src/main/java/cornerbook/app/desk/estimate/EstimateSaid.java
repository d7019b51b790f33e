package cornerbook.app.desk.estimate;

import cornerbook.core.say.Said;

/** What the pages of estimates refuse. */
sealed interface EstimateSaid extends Said {
    /** The shop has not said whose taxes it bears. */
    record NoPlaceYet() implements EstimateSaid {}

    /** The findings are others than when the page was shown. */
    record FindingsChanged() implements EstimateSaid {}

    record NoDay() implements EstimateSaid {}

    record NoEstimate() implements EstimateSaid {}

    /** A line of the estimate has no answer yet. */
    record AnswerMissing(String words) implements EstimateSaid {}

    record NoWay() implements EstimateSaid {}

    record NoSuchWork() implements EstimateSaid {}

    /**
     * What would be agreed to is not what was read.
     *
     * @param shown whether the page shows what came in its place
     */
    record ChangedMeanwhile(boolean shown) implements EstimateSaid {}
}
