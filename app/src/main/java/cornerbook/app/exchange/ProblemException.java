package cornerbook.app.exchange;

import cornerbook.core.say.Said;
import cornerbook.core.finding.Problem;

/** Leaves the object that cannot be read; whoever reads its neighbours keeps the problem and goes on. */
final class ProblemException extends RuntimeException {
    private final transient Problem problem;

    ProblemException(String where, Said message) {
        super(message.toString());
        problem = new Problem(where, message);
    }

    Problem problem() {
        return problem;
    }
}
