package cornerbook.core.say;

/** Input that cannot stand, with the one sentence that a person is told. */
public final class Refused extends IllegalArgumentException implements Saying {
    private final transient Said said;

    public Refused(Said said) {
        super(said.toString());
        this.said = said;
    }

    /** What a person is told of a refusal. */
    public static Said said(IllegalArgumentException refusal) {
        return refusal instanceof Refused refused ? refused.said() : Said.verbatim(String.valueOf(refusal.getMessage()));
    }

    @Override
    public Said said() {
        return said;
    }
}
