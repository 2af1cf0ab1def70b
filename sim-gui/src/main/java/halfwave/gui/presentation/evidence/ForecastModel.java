package halfwave.gui.presentation.evidence;

import halfwave.forecast.FlameLog;
import halfwave.forecast.Forecasting;
import halfwave.forecast.Question;
import halfwave.gui.presentation.Inquiry;
import halfwave.gui.presentation.Listeners;
import halfwave.gui.presentation.bench.State;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** A forecast of the flame signal of the bench that is open. Belongs to the screen's thread. */
public final class ForecastModel {

  /** What is to be forecast, and from when its dates are counted. */
  private record Asked(Question question, FlameLog log) {}

  private final Inquiry<Asked, ForecastAnswer> inquiry;
  private final Supplier<LocalDate> today;
  private final Listeners listeners = new Listeners();
  private @Nullable ForecastForm form;

  /**
   * Nothing is asked yet.
   *
   * @param background runs a forecast; it may keep nobody else waiting
   * @param screen runs what touches panels
   * @param today the day on which hours are counted from where there is no log
   * @param failed is told of an error in the program itself
   */
  public ForecastModel(
      Executor background, Executor screen, Supplier<LocalDate> today, Consumer<Throwable> failed) {
    this.today = today;
    inquiry = new Inquiry<>(background, screen, ForecastModel::answer, listeners::tell, failed);
  }

  private static void answer(Asked asked, Inquiry.Hearing<ForecastAnswer> hearing) {
    hearing.tell(new ForecastAnswer(Forecasting.of(asked.question), asked.log.calendar()));
  }

  /** Is told whenever something changed. */
  public Runnable subscribe(Runnable watcher) {
    return listeners.add(watcher);
  }

  /** What stands in the form, or null: nobody has filled it in. */
  public @Nullable ForecastForm form() {
    return form;
  }

  /** Keeps what stands in the form. */
  public void keep(ForecastForm filled) {
    form = filled;
  }

  /** Another log. */
  public void log(ForecastForm filled, List<LogEntry> entries) {
    form = new ForecastForm(filled.texts(), filled.touched(), filled.scratches(), entries);
    listeners.tell();
  }

  /**
   * Forecasts the bench that is open; of a sealed one only its kind.
   *
   * @param filled with all fields right
   * @return whether the log spans no more than can be
   */
  public boolean forecast(State shown, ForecastForm filled) {
    form = filled;
    FlameLog log = filled.flameLog(today.get());
    if (log == null) {
      return false;
    }
    inquiry.ask(new Asked(filled.question(MatchModel.start(shown), log), log));
    listeners.tell();
    return true;
  }

  /** Whether a forecast is being made. */
  public boolean busy() {
    return inquiry.busy();
  }

  /** Gives it up. */
  public void cancel() {
    inquiry.cancel();
    listeners.tell();
  }

  /** The last answer, or null before the first. */
  public @Nullable ForecastAnswer answer() {
    return inquiry.answer();
  }
}
