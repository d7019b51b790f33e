package cornerbook.core.brake;

/** A brake that nobody has looked up: whether it has discs or drums is not known, nor any of its limits. */
public record UnknownBrake() implements FrictionBrake {}
