package cornerbook.core.brake;

/** What rubs at both wheels of an axle when the pedal is pressed. */
public sealed interface FrictionBrake permits DiscBrake, DrumBrake, UnknownBrake {}
