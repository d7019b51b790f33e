package cornerbook.app.fuzz;

/** The class that Jazzer starts; a system property says which target it feeds. */
public final class FuzzEntry {
    static final String TARGET = "fuzz.target";

    private static final FuzzTarget OPEN = FuzzTargets.open(String.valueOf(System.getProperty(TARGET)));

    private FuzzEntry() {}

    /** Called by name. */
    public static void fuzzerTestOneInput(byte[] input) throws Exception {
        OPEN.take(input);
    }
}
