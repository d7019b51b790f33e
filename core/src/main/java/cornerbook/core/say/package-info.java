/**
 * What is said to a person, as data: one record per sentence, its components the facts. The words stand in a catalogue for
 * each room, in every language, and a reader turns facts into words once, at the edge. It knows no language and no units of a person.
 */
@NullMarked
package cornerbook.core.say;

import org.jspecify.annotations.NullMarked;
