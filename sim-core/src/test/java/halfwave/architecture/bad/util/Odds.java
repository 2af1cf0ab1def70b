package halfwave.architecture.bad.util;

/** Lives in a junk drawer. */
final class Odds {}
