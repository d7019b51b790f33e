package cornerbook.app.door;

import cornerbook.core.say.Said;
import cornerbook.core.say.Saying;

/** The pages cannot be served, with the one sentence that a person is told. */
public final class DoorException extends IllegalStateException implements Saying {
    private static final long serialVersionUID = 1;

    private final transient Said said;

    DoorException(Said said) {
        super(said.toString());
        this.said = said;
    }

    @Override
    public Said said() {
        return said;
    }
}
