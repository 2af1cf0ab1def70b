package halfwave.exchange;

import java.util.ArrayList;
import java.util.List;

/** Reads comma-separated values by the grammar of RFC 4180, section 2, and nothing else. */
final class Csv {

  private final String text;
  private int at;

  private Csv(String text) {
    this.text = text;
  }

  /** The records of a file, each with its fields. */
  static List<List<String>> records(String text) {
    Csv csv = new Csv(text);
    List<List<String>> records = new ArrayList<>();
    while (csv.at < text.length()) {
      records.add(csv.row());
    }
    return records;
  }

  private List<String> row() {
    List<String> fields = new ArrayList<>();
    fields.add(field());
    while (at < text.length() && text.charAt(at) == ',') {
      at++;
      fields.add(field());
    }
    if (!text.startsWith("\r\n", at)) {
      throw new IllegalArgumentException("no line end at " + at + " of " + text);
    }
    at += 2;
    return fields;
  }

  private String field() {
    if (at < text.length() && text.charAt(at) == '"') {
      return escaped();
    }
    int from = at;
    while (at < text.length() && ",\"\r\n".indexOf(text.charAt(at)) < 0) {
      at++;
    }
    return text.substring(from, at);
  }

  private String escaped() {
    StringBuilder field = new StringBuilder();
    at++;
    while (true) {
      char c = text.charAt(at++);
      if (c != '"') {
        field.append(c);
      } else if (at < text.length() && text.charAt(at) == '"') {
        field.append('"');
        at++;
      } else {
        return field.toString();
      }
    }
  }
}
