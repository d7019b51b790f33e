package cornerbook.app.request;

import cornerbook.core.say.Said;
import cornerbook.core.say.Saying;

/** A request that cannot be answered, with the one sentence that a person is told. */
public final class PageException extends RuntimeException implements Saying {
    private static final long serialVersionUID = 1;

    private final int status;
    private final transient Said said;

    public PageException(int status, Said said) {
        super(said.toString());
        this.status = status;
        this.said = said;
    }

    public int status() {
        return status;
    }

    @Override
    public Said said() {
        return said;
    }
}
