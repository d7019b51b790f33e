package cornerbook.core.say;

/** An exception with the one sentence that a person is told. */
public interface Saying {
    Said said();

    /** What a person is told of something that was refused or failed. */
    static Said of(Throwable thrown) {
        return thrown instanceof Saying saying ? saying.said() : Said.verbatim(String.valueOf(thrown.getMessage()));
    }
}
