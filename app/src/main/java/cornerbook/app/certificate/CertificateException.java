package cornerbook.app.certificate;

import cornerbook.core.say.Said;
import cornerbook.core.say.Saying;

/** The shop's certificates cannot be made or read, with the one sentence that a person is told. */
public final class CertificateException extends RuntimeException implements Saying {
    private static final long serialVersionUID = 1;

    private final transient Said said;

    CertificateException(Said said) {
        super(said.toString());
        this.said = said;
    }

    CertificateException(Said said, Throwable cause) {
        super(said.toString(), cause);
        this.said = said;
    }

    @Override
    public Said said() {
        return said;
    }
}
