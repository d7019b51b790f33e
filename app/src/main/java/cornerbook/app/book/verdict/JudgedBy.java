package cornerbook.app.book.verdict;

import org.jdbi.v3.core.Handle;

/**
 * The number of what cars are judged by beside their own history: what was learned, the climate, and the program with its limits.
 * Every method runs inside the caller's transaction.
 */
public final class JudgedBy {
    private JudgedBy() {}

    public static long number(Handle handle) {
        return handle.select("select number from judged_by").mapTo(Long.class).one();
    }

    /** What cars are judged by is another: all verdicts are old. */
    public static void countChange(Handle handle) {
        handle.execute("update judged_by set number = number + 1");
    }

    /**
     * Cars are judged by this program from now on.
     *
     * @param program a digest of its judges and limits
     */
    static int changeProgram(Handle handle, String program) {
        return handle.execute(
                "update judged_by set number = number + 1, program = ? where program <> ?", program, program);
    }
}
