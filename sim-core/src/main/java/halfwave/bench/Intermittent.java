package halfwave.bench;

/**
 * A fault that comes and goes: the change is there as long as the trigger is.
 *
 * @param trigger what brings it out
 * @param change what is then different
 */
public record Intermittent(Trigger trigger, Change change) {}
