package cornerbook.app.log;

import java.util.HexFormat;
import java.util.concurrent.ThreadLocalRandom;
import java.util.logging.Logger;

/** Faults of the program itself, as against bad input and a book that refuses. */
public final class Faults {
    private static final Logger LOG = Logger.getLogger(Faults.class.getName());

    private Faults() {}

    /**
     * Writes a fault to the log and gives the id that it has there, eight hexadecimal digits, to be shown to the person.
     *
     * @param during what was being done, with identities of rows but without personal data: "judging visit demo-03-v7"
     */
    public static String note(String during, Throwable fault) {
        var id = HexFormat.of().toHexDigits(ThreadLocalRandom.current().nextInt());
        LOG.log(new FaultRecord(id, during, fault));
        return id;
    }
}
