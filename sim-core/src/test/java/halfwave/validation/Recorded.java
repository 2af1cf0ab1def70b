package halfwave.validation;

import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.platform.commons.annotation.Testable;
import org.junit.platform.commons.support.AnnotationSupport;
import org.junit.platform.commons.support.HierarchyTraversalMode;

/**
 * Keeps the checks of a class while it runs. In the end they go to the report that is being made,
 * or are compared with the report that is there, so that it cannot go out of date unnoticed.
 */
final class Recorded implements BeforeAllCallback, AfterEachCallback, AfterAllCallback {

  private static final List<Checked> CHECKS = new ArrayList<>();
  private static final Set<Method> RUN = new HashSet<>();

  /** Numbers that were taken up and not compared yet; in the end there must be none. */
  private static int unjudged;

  private static @Nullable BiConsumer<List<Row>, List<Checked>> report;

  /** From now on checks go there, and no report is compared. */
  static void into(@Nullable BiConsumer<List<Row>, List<Checked>> taker) {
    report = taker;
  }

  static void begun() {
    unjudged++;
  }

  static void judged() {
    unjudged--;
  }

  static void add(Checked checked) {
    CHECKS.add(checked);
  }

  @Override
  public void beforeAll(ExtensionContext context) {
    CHECKS.clear();
    RUN.clear();
    unjudged = 0;
  }

  @Override
  public void afterEach(ExtensionContext context) {
    if (context.getExecutionException().isEmpty()) {
      RUN.add(context.getRequiredTestMethod());
    }
  }

  @Override
  public void afterAll(ExtensionContext context) {
    Class<?> type = context.getRequiredTestClass();
    Area area = type.getAnnotation(Validated.class).value();
    boolean whole = RUN.containsAll(tests(type));
    if (whole && unjudged != 0) {
      throw new AssertionError(unjudged + " checks without a verdict in " + name(type));
    }
    List<Row> rows = Row.of(name(type), area, CHECKS);
    if (report != null) {
      report.accept(rows, List.copyOf(CHECKS));
    } else if (whole && !Boolean.getBoolean("halfwave.deep")) {
      demandSame(name(type), rows, RowFile.of(name(type)));
    }
  }

  private static void demandSame(String test, List<Row> found, List<Row> written) {
    Set<Row> now = found.stream().map(Row::lasting).collect(Collectors.toSet());
    Set<Row> then = written.stream().map(Row::lasting).collect(Collectors.toSet());
    String changed =
        Stream.concat(
                then.stream().filter(r -> !now.contains(r)).map(r -> "there: " + r.words()),
                now.stream().filter(r -> !then.contains(r)).map(r -> "now: " + r.words()))
            .sorted(Comparator.reverseOrder())
            .collect(Collectors.joining("\n  "));
    if (!changed.isEmpty()) {
      throw new AssertionError(
          "docs/validation.md is out of date for %s; write it anew: %s%n  %s"
              .formatted(test, Page.MAKE, changed));
    }
  }

  /** One test of many says nothing about the whole class. */
  private static List<Method> tests(Class<?> type) {
    return AnnotationSupport.findAnnotatedMethods(
        type, Testable.class, HierarchyTraversalMode.TOP_DOWN);
  }

  private static String name(Class<?> type) {
    return type.getName().replaceFirst("^halfwave\\.", "");
  }
}
