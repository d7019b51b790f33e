package cornerbook.app.book.record;

import cornerbook.core.say.Said;

/** What people are told when notes of a car cannot be taken into the book. */
public interface RecordSaid extends Said {
    record ThereAlready(Note note, String id) implements RecordSaid {}

    /** What was entered beside readings. */
    enum Note {
        TICK,
        READING,
        DEPARTURE,
        PHOTO,
        REMARK,
        DECLINED
    }
}
