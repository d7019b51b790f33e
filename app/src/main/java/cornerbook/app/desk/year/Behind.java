package cornerbook.app.desk.year;

/** The lists that stand behind pictures of the year, each on a page of its own and as a file for spreadsheets. */
public enum Behind {
    VISITS("visits", "load"),
    SETS("sets", "sets-at-risk"),
    TYRES("tyres", "tyres-coming"),
    CALLS("calls", "calls"),
    SEIZED("seized", "pads-each"),
    READ_TWICE("read-twice", "read-twice");

    private final String address;
    private final String label;

    Behind(String address, String label) {
        this.address = address;
        this.label = label;
    }

    /** The last part of the address of its page; its file has the same with ".csv". */
    public String address() {
        return address;
    }

    /** Of its title. */
    String label() {
        return label;
    }
}
