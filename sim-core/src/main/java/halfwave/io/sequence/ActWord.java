package halfwave.io.sequence;

import halfwave.bench.Change;
import halfwave.bench.Disorder;
import halfwave.bench.Parameter;
import halfwave.sequence.Deed;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What can be done, one word each: the same in {@code --act} and in the file of a script. */
public enum ActWord {
  /** The thermostat calls. */
  CALL_ON(new Deed.Call(true)),
  /** The call ends. */
  CALL_OFF(new Deed.Call(false)),
  /** The furnace switch is thrown on. */
  POWER_ON(new Deed.Supply(true)),
  /** And off. */
  POWER_OFF(new Deed.Supply(false)),
  /** The air turns damp. */
  DAMP_ON(new Deed.Damp(true)),
  /** The air turns dry. */
  DAMP_OFF(new Deed.Damp(false)),
  /** Someone tugs at the sense lead. */
  TOUCH(new Deed.Touch()),
  /** A service meter is put on. */
  METER_ON,
  /** The meter is taken off. */
  METER_OFF(new Deed.TakeOff()),
  /** The sense lead is pulled. */
  LEAD_OFF(turned(Double.POSITIVE_INFINITY)),
  /** The sense lead is plugged in. */
  LEAD_ON(turned(0)),
  /** The gas cock is shut. */
  GAS_SHUT(upset(Disorder.GAS_SHUT, true)),
  /** The gas cock is opened. */
  GAS_OPEN(upset(Disorder.GAS_SHUT, false)),
  /** The door is taken off. */
  DOOR_OPEN(upset(Disorder.DOOR_OPEN, true)),
  /** The door is put on. */
  DOOR_CLOSE(upset(Disorder.DOOR_OPEN, false)),
  /** A number of the bench takes a value. */
  SET,
  /** A part goes wrong. */
  BREAK,
  /** A part is put right. */
  MEND,
  /** The flame takes another time from burner to burner. */
  CARRY_OVER,
  /** A fault that comes and goes is there from now on. */
  LURK,
  /** A repair is done. */
  REPAIR,
  /** Something goes wrong in someone's hands. */
  MISHANDLE;

  private final transient @Nullable Deed plain;

  ActWord() {
    this(null);
  }

  ActWord(@Nullable Deed plain) {
    this.plain = plain;
  }

  /** The deed of a word that needs no other words; nothing for those that do. */
  public Optional<Deed> plain() {
    return Optional.ofNullable(plain);
  }

  private static Deed turned(double ohms) {
    return new Deed.Alter(Change.Turned.to(Parameter.CONNECTOR, ohms));
  }

  private static Deed upset(Disorder disorder, boolean present) {
    return new Deed.Alter(new Change.Upset(disorder, present));
  }
}
