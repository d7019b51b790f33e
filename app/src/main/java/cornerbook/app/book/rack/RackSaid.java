package cornerbook.app.book.rack;

import cornerbook.core.say.Said;
import java.time.LocalDate;

/** What people are told when the book refuses something of the store. */
sealed interface RackSaid extends Said {
    /** Another rack has a place of that name. */
    record NameTaken(String place) implements RackSaid {}

    record NoRack() implements RackSaid {}

    /** Somebody changed the rack since the form was shown. */
    record RackChanged() implements RackSaid {}

    /** Sets lie there: the rack cannot be taken down or named otherwise before they lie elsewhere. */
    record SetsLieThere(int sets, String place) implements RackSaid {}

    record NoWheel(String code) implements RackSaid {}

    record NoPlace(String code) implements RackSaid {}

    /** As many sets as fit lie there. */
    record PlaceFull(String place, String lying) implements RackSaid {}

    record LiesThere(String tag, String place) implements RackSaid {}

    /** The book has these wheels on the car since its last visit. */
    record IsOnCar(String car, String tag) implements RackSaid {}

    /** The set is of another car than the one that it is fetched for. */
    record WrongCar(String tag, String carOfSet, String plateOfSet, String car, String plate) implements RackSaid {}

    record NoVisit() implements RackSaid {}

    record NoSet() implements RackSaid {}

    record NoPressure() implements RackSaid {}

    /** Nobody stores a set until such a day. */
    record NoTerm(LocalDate first, LocalDate last) implements RackSaid {}

    /** No rack stands in a room of that name. */
    record NoSuchRoom(String room) implements RackSaid {}

    /** The set lies in the shop's own store by now, or is out or on its car. */
    record NotElsewhere() implements RackSaid {}

    /** No set is asked for for such a day. */
    record NoDayToCome(LocalDate first, LocalDate last) implements RackSaid {}

    record NoCount() implements RackSaid {}

    /** A count goes on: a second one would not know what is counted. */
    record CountGoesOn() implements RackSaid {}

    record CountEnded() implements RackSaid {}

    /** Nothing of the kind can be done about what the count found. */
    record NoAnswer() implements RackSaid {}

    /** The set lies elsewhere than when the count ended. */
    record MovedSince() implements RackSaid {}
}
