package cornerbook.core.wheelplan;

/** A rule that every assignment of a plan has to keep; each can be left out. */
public enum Rule {
    DIRECTIONAL("Directional tyres stay on their side"),
    SIZE("Each tyre size stays on its axle"),
    SAME_AXLE("The two tyres of an axle stay within the depth difference allowed"),
    ALL_WHEEL("The four tyres stay within the difference that all-wheel drive allows"),
    DEEPER_PAIR_REAR("The deeper pair goes to the rear axle when it is deeper by more than allowed");

    private final String words;

    Rule(String words) {
        this.words = words;
    }

    /** The rule as a sentence without its full stop. */
    public String words() {
        return words;
    }
}
