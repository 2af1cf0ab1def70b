package halfwave.notebook.kernel;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import jdk.jshell.DeclarationSnippet;
import jdk.jshell.Diag;
import jdk.jshell.EvalException;
import jdk.jshell.ExpressionSnippet;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.Snippet.Status;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.SourceCodeAnalysis.Completeness;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;
import jdk.jshell.SourceCodeAnalysis.Documentation;
import jdk.jshell.SourceCodeAnalysis.Suggestion;
import jdk.jshell.VarSnippet;
import jdk.jshell.execution.LocalExecutionControlProvider;
import org.jspecify.annotations.Nullable;

/** The cells of one notebook, evaluated one after the other; knows nothing of any protocol. */
final class Cells implements AutoCloseable {

  private final JShell shell;
  private volatile boolean stopped;

  /** Begins with the imports of {@link Preamble}. */
  Cells() {
    shell =
        JShell.builder()
            .executionEngine(new LocalExecutionControlProvider(), null)
            .compilerOptions("--class-path", System.getProperty("java.class.path"))
            .build();
    Preamble.statements().forEach(this::evaluate);
  }

  /**
   * Evaluates a cell.
   *
   * @param source its text
   * @return the value of its last expression; null where it ends with another statement or with a
   *     semicolon
   * @throws CellFailure where a statement does not compile or throws
   */
  @Nullable Object evaluate(String source) {
    stopped = false;
    Handover.take();
    SourceCodeAnalysis analysis = shell.sourceCodeAnalysis();
    List<Snippet> waiting = new ArrayList<>();
    String name = null;
    String rest = source;
    while (!rest.isBlank()) {
      CompletionInfo info = analysis.analyzeCompletion(rest);
      if (info.completeness() == Completeness.EMPTY) {
        break;
      }
      boolean whole = info.completeness().isComplete();
      String statement = whole ? info.source() : rest;
      int begin = source.indexOf(rest.stripLeading(), source.length() - rest.length());
      name = null;
      for (SnippetEvent event : shell.eval(statement.strip())) {
        if (event.causeSnippet() == null) {
          refuse(event, source, begin);
          name = nameOfValue(event.snippet());
          waiting.add(event.snippet());
        }
      }
      rest = whole ? info.remaining() : "";
    }
    waiting.forEach(this::refuseUnresolved);
    if (name == null || source.stripTrailing().endsWith(";")) {
      return null;
    }
    shell.eval(Handover.class.getName() + ".leave(" + name + ");");
    return Handover.take();
  }

  private static @Nullable String nameOfValue(Snippet snippet) {
    if (snippet.subKind() == Snippet.SubKind.TEMP_VAR_EXPRESSION_SUBKIND) {
      return ((VarSnippet) snippet).name();
    }
    return snippet.subKind() == Snippet.SubKind.VAR_VALUE_SUBKIND
        ? ((ExpressionSnippet) snippet).name()
        : null;
  }

  private void refuse(SnippetEvent event, String source, int begin) {
    if (event.status() == Status.REJECTED) {
      String said =
          shell
              .diagnostics(event.snippet())
              .filter(Diag::isError)
              .map(diag -> compileError(diag, source, begin))
              .collect(Collectors.joining("\n"));
      throw new CellFailure(said);
    }
    if (event.exception() instanceof EvalException thrown) {
      throw new CellFailure(Thrown.text(thrown, event.snippet(), lineAt(source, begin)));
    }
    if (event.exception() != null) {
      refuseUnresolved(event.snippet());
      throw new CellFailure(String.valueOf(event.exception().getMessage()));
    }
    if (stopped) {
      throw new CellFailure(Words.of("cell.stopped"));
    }
  }

  /** A method that waits for something to be declared later is no use when the cell has ended. */
  private void refuseUnresolved(Snippet snippet) {
    Status status = shell.status(snippet);
    if ((status == Status.RECOVERABLE_DEFINED || status == Status.RECOVERABLE_NOT_DEFINED)
        && snippet instanceof DeclarationSnippet declaration) {
      String missing = shell.unresolvedDependencies(declaration).collect(Collectors.joining(", "));
      String wrong =
          shell
              .diagnostics(snippet)
              .map(diag -> diag.getMessage(Locale.ENGLISH).strip())
              .collect(Collectors.joining("; "));
      shell.drop(snippet);
      throw new CellFailure(
          Words.of("cell.unresolved", declaration.name(), missing.isEmpty() ? wrong : missing));
    }
  }

  private static String compileError(Diag diag, String source, int begin) {
    int line = lineAt(source, begin + (int) Math.max(0, diag.getStartPosition()));
    String text = diag.getMessage(Locale.getDefault()).strip().replaceAll("\\s*\\R\\s*", "; ");
    // the class that a cell is wrapped in has no name worth telling
    text = text.replaceAll("; [^;]*: class\\s*$", "");
    return Words.of("cell.compile", line, text, source.lines().toList().get(line - 1).strip());
  }

  /** The line of a cell (from 1) that a position is on. */
  private static int lineAt(String source, int position) {
    int before = Math.max(0, Math.min(position, source.stripTrailing().length() - 1));
    return 1 + (int) source.substring(0, before).chars().filter(c -> c == '\n').count();
  }

  /** Ends the cell that is running, if one is. */
  void stop() {
    stopped = true;
    shell.stop();
  }

  /** What may stand at a place of a cell. */
  List<String> completions(String source, int cursor, int[] anchor) {
    return shell.sourceCodeAnalysis().completionSuggestions(source, cursor, anchor).stream()
        .map(Suggestion::continuation)
        .distinct()
        .toList();
  }

  /** What the signature of the call or type at a place of a cell is; empty where there is none. */
  String signature(String source, int cursor) {
    return shell.sourceCodeAnalysis().documentation(source, cursor, false).stream()
        .map(Documentation::signature)
        .distinct()
        .collect(Collectors.joining("\n"));
  }

  /** Whether a text ends within a statement. */
  boolean unfinished(String source) {
    Completeness completeness = completeness(source);
    return completeness == Completeness.DEFINITELY_INCOMPLETE;
  }

  private Completeness completeness(String source) {
    String rest = source;
    while (true) {
      CompletionInfo info = shell.sourceCodeAnalysis().analyzeCompletion(rest);
      if (!info.completeness().isComplete() || info.remaining().isBlank()) {
        return info.completeness();
      }
      rest = info.remaining();
    }
  }

  @Override
  public void close() {
    shell.close();
  }
}
