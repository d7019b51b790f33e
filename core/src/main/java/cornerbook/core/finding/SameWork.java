package cornerbook.core.finding;

/** A title that asks for work which its parts may ask for, too: whoever is told of it is told once, by the part. */
public interface SameWork {
    /** Whether this finding, about a part, asks for the very same work. */
    boolean isAskedForBy(Finding finding);
}
