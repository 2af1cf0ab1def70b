package halfwave.gui.swing;

import halfwave.gui.presentation.Settings;
import halfwave.quiz.Rules;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** Paints the windows of the menu Quiz into target/screens. No test: asked for by name only. */
final class QuizScreens {

  @Test
  void paint() throws Exception {
    shoot("en", false, 1);
    shoot("es", true, 1);
    shoot("es", false, 2);
  }

  private void shoot(String language, boolean dark, double text) throws Exception {
    Path own = Files.createTempDirectory("quiz");
    Settings settings = OpenWindow.PLAIN.withLanguage(language).withDark(dark).withTextRatio(text);
    try (OpenWindow open = OpenWindow.with(own, settings)) {
      String name = language + (dark ? "-dark-" : "-light-") + Math.round(100 * text);
      Shots pictures = Shots.seen(open);
      QuizHands hands = new QuizHands(open, new Hand(open), own);
      hands.window();
      hands.fill(new Rules(45, true), "A-17");
      pictures.beside("quiz", "quiz-start-" + name);
      hands.begin();
      boolean spanish = language.equals("es");
      hands.act(0, spanish ? "termostato" : "thermostat");
      hands.act(0, spanish ? "desde cuándo" : "since when");
      hands.offer(1, "");
      pictures.beside("quiz", "quiz-repairs-" + name);
      hands.front("visit.tabs", 1);
      hands.front("visit.offers", 2);
      pictures.beside("quiz", "quiz-furnace-" + name);
      hands.front("visit.tabs", 2);
      hands.choose("visit.cause", 4);
      hands.offer(0, spanish ? "varilla" : "rod");
      pictures.beside("quiz", "quiz-conclude-" + name);
      hands.act(0, spanish ? "separación" : "gap");
      hands.front("visit.tabs", 0);
      pictures.beside("quiz", "quiz-danger-" + name);
    }
    // a quiz that is being taken covers the menus of practice
    try (OpenWindow open = OpenWindow.with(own, settings)) {
      String name = language + (dark ? "-dark-" : "-light-") + Math.round(100 * text);
      practice(Shots.seen(open), new QuizHands(open, new Hand(open), own), name);
    }
  }

  private void practice(Shots pictures, QuizHands hands, String name) throws Exception {
    hands.practise();
    pictures.beside("practice", "practice-choice-" + name);
    hands.choose("practice.objective", 1);
    hands.press("routine.show");
    hands.press("routine.open");
    hands.hand().choose(Path.of("..", "docs", "examples", "routine.json"));
    hands.idle();
    hands.row("routine.steps", 1);
    hands.press("routine.compare");
    hands.idle();
    pictures.beside("practice", "practice-routine-" + name);
    hands.press("routine.back");
    hands.choose("practice.objective", 0);
    hands.choose("practice.help", 1);
    hands.first();
    for (int k = 0; k < 5; k++) {
      hands.press("practice.follow");
      hands.idle();
    }
    pictures.beside("practice", "practice-worked-" + name);
    hands.follow();
    pictures.beside("practice", "practice-marks-" + name);
    hands.press("practice.leave");
    hands.choose("practice.help", 3);
    hands.first();
    hands.front("visit.offers", 0);
    hands.act(0, "");
    pictures.beside("practice", "practice-asking-" + name);
    hands.press("practice.answer");
    hands.idle();
    pictures.beside("practice", "practice-answered-" + name);
  }
}
