package cornerbook.app.desk;

import cornerbook.app.request.Caller;
import cornerbook.words.UnitSystem;

/** The units of the person who asks. */
public final class UnitChoice {
    private UnitChoice() {}

    /** The units of the request that is being answered; metric outside of one. */
    public static UnitSystem current() {
        return Caller.current().preferences().units();
    }
}
