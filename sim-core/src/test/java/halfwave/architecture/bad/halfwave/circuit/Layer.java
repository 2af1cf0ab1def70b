package halfwave.architecture.bad.halfwave.circuit;

/** Matches the component "circuit" of the diagram. */
public final class Layer {}
