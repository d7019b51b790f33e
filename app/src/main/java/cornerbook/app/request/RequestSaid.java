package cornerbook.app.request;

import cornerbook.core.say.Said;

/** What people are told when a request comes to nothing, whatever it asked for. */
public interface RequestSaid extends Said {
    record CutOff() implements RequestSaid {}

    record NotUnderstood() implements RequestSaid {}

    /**
     * The program's own fault.
     *
     * @param id that it has in the log
     */
    record ProgramFault(String id) implements RequestSaid {}
}
