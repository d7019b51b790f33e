package cornerbook.app.cli.print;

import java.io.Console;
import java.util.Optional;

/** How far a long work is, on a terminal where somebody looks on; into a file nothing of it goes. */
public final class Progress {
    private static final int WIDTH = 40;
    private static final long SHOWN_EVERY_NS = 200_000_000;

    private final int all;
    private final boolean shown;
    private int done;
    private long shownAt = System.nanoTime();

    private Progress(int all, boolean shown) {
        this.all = all;
        this.shown = shown;
    }

    /** Of a work that has so many parts. */
    public static Progress of(int all) {
        return new Progress(
                all,
                Optional.ofNullable(System.console())
                        .filter(Console::isTerminal)
                        .isPresent());
    }

    /** One part more is done. */
    public void advance() {
        done++;
        if (shown && System.nanoTime() - shownAt > SHOWN_EVERY_NS) {
            shownAt = System.nanoTime();
            System.err.print("\r" + bar(done, all));
        }
    }

    /** Takes the bar away. */
    public void end() {
        if (shown) {
            System.err.print("\r" + " ".repeat(bar(all, all).length()) + "\r");
        }
    }

    static String bar(int done, int all) {
        int full = (int) ((long) WIDTH * done / all);
        return "[" + "=".repeat(full) + " ".repeat(WIDTH - full) + "] " + done + " / " + all;
    }
}
