package halfwave.matching;

import halfwave.instrument.MeterModel;

/**
 * A reading that can be taken.
 *
 * @param kind what is read
 * @param setting what it is taken under
 * @param meter with what
 */
public record Sight(ReadingKind kind, Setting setting, MeterModel meter) {}
