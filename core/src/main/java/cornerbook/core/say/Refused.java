package cornerbook.core.say;

/** Input that cannot stand, with the one sentence that a person is told. */
public class Refused extends IllegalArgumentException {
    private final transient Said said;

    public Refused(Said said) {
        super(said.toString());
        this.said = said;
    }

    public Said said() {
        return said;
    }
}
