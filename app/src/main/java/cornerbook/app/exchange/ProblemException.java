package cornerbook.app.exchange;

import cornerbook.core.finding.Problem;
import cornerbook.core.say.Said;

/** Leaves the object that cannot be read; whoever reads its neighbours keeps the problem and goes on. */
final class ProblemException extends RuntimeException {
    private final transient Problem problem;

    ProblemException(String where, String message) {
        super(message);
        problem = new Problem(where, message);
    }

    ProblemException(String where, Said said) {
        super(said.toString());
        problem = new Problem(where, said);
    }

    Problem problem() {
        return problem;
    }
}
