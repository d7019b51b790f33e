package cornerbook.app.log;

import java.util.logging.Level;
import java.util.logging.LogRecord;

/** A fault on its way to the log. */
final class FaultRecord extends LogRecord {
    private static final long serialVersionUID = 1;

    private final String id;

    FaultRecord(String id, String during, Throwable fault) {
        super(Level.SEVERE, "Fault %s while %s".formatted(id, during));
        this.id = id;
        setLoggerName(Faults.class.getName());
        setThrown(fault);
    }

    String id() {
        return id;
    }
}
