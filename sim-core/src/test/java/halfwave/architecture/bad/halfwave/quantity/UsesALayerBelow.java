package halfwave.architecture.bad.halfwave.quantity;

import halfwave.architecture.bad.halfwave.circuit.Layer;

/** Matches the component "quantity", which stands above "circuit" and must not know it. */
final class UsesALayerBelow {
  Layer layer;
}
