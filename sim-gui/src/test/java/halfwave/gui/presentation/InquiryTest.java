package halfwave.gui.presentation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.junit.jupiter.api.Test;

class InquiryTest {

  private final Deque<Runnable> background = new ArrayDeque<>();
  private final List<Integer> begun = new ArrayList<>();
  private final List<Throwable> failures = new ArrayList<>();

  /** What happens in the middle of the work on a question. */
  private Runnable meanwhile = () -> {};

  private final Inquiry<Integer, String> inquiry =
      new Inquiry<>(background::add, Runnable::run, this::work, () -> {}, failures::add);

  private void work(Integer question, Inquiry.Hearing<String> hearing) {
    begun.add(question);
    hearing.tell(question + " roughly");
    hearing.done(0.5);
    meanwhile.run();
    if (question < 0) {
      throw new IllegalStateException("no answer to that");
    }
    if (hearing.wanted()) {
      hearing.tell(question + " exactly");
    }
  }

  private void runAll() {
    while (!background.isEmpty()) {
      background.remove().run();
    }
  }

  @Test
  void ofThoseThatWaitOnlyTheNewestIsWorkedOn() {
    inquiry.ask(1);
    inquiry.ask(2);
    inquiry.ask(3);
    assertThat(inquiry.busy()).isTrue();
    runAll();
    assertThat(begun).containsExactly(3);
    assertThat(inquiry.answer()).isEqualTo("3 exactly");
    assertThat(inquiry.busy()).isFalse();
  }

  @Test
  void aNewQuestionEndsTheWorkOnTheOld() {
    meanwhile =
        () -> {
          meanwhile = () -> {};
          inquiry.ask(2);
        };
    inquiry.ask(1);
    background.remove().run();
    assertThat(inquiry.answer()).isEqualTo("1 roughly");
    assertThat(inquiry.busy()).isTrue();
    runAll();
    assertThat(begun).containsExactly(1, 2);
    assertThat(inquiry.answer()).isEqualTo("2 exactly");
  }

  @Test
  void whatIsCancelledKeepsTheLastAnswer() {
    meanwhile = inquiry::cancel;
    inquiry.ask(1);
    runAll();
    assertThat(inquiry.answer()).isEqualTo("1 roughly");
    assertThat(inquiry.busy()).isFalse();
    inquiry.ask(2);
    inquiry.cancel();
    runAll();
    assertThat(begun).containsExactly(1);
  }

  @Test
  void aMistakeIsToldAndTheNextQuestionIsAnswered() {
    inquiry.ask(-1);
    runAll();
    assertThat(failures).hasSize(1);
    assertThat(inquiry.busy()).isFalse();
    inquiry.ask(1);
    runAll();
    assertThat(inquiry.answer()).isEqualTo("1 exactly");
  }
}
