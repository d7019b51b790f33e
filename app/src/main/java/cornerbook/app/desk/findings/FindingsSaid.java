package cornerbook.app.desk.findings;

import cornerbook.core.say.Said;

/** What the page of findings may have to say. */
sealed interface FindingsSaid extends Said {
    record NoSuchPhoto() implements FindingsSaid {}

    record UnknownPart() implements FindingsSaid {}

    /** Something of one wheel among those of its set. */
    record OfWheel(String tag, Said what) implements FindingsSaid {}
}
