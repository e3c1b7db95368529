package io.github.holdpath.sim.scene.recording;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Finds the columns of a recording in its first line. */
final class RecordingHeader {
  private RecordingHeader() {}

  /**
   * Place of each wanted column, from 0.
   *
   * @param header fields of the first line, without surrounding spaces
   * @param spec wanted columns and separator
   * @param faults missing and doubled columns are added here, as faults of the line
   * @param line of the header
   */
  static int[] find(List<String> header, RecordingSpec spec, RecordingFaults faults, long line) {
    List<String> names = spec.columns().names();
    int[] places = new int[names.size()];
    if (header.size() == 1) {
      faults.at(line, oneField(header.get(0), spec.separator()));
      return places;
    }
    for (int i = 0; i < places.length; i++) {
      places[i] = header.indexOf(names.get(i));
      if (places[i] < 0) {
        faults.at(line, missing(i, spec.columns(), header));
      } else if (Collections.frequency(header, names.get(i)) > 1) {
        faults.at(line, "column \"" + RecordingText.quote(names.get(i)) + "\" is there twice");
      }
    }
    return places;
  }

  private static String oneField(String text, char separator) {
    String message = "no " + name(separator) + " in the first line, which must name the columns";
    for (char other : new char[] {';', ',', '\t'}) {
      if (other != separator && text.indexOf(other) >= 0) {
        return message + "; is the separator a " + name(other) + "?";
      }
    }
    return message;
  }

  private static String name(char separator) {
    return switch (separator) {
      case ',' -> "comma";
      case ';' -> "semicolon";
      case '\t' -> "tab";
      default -> "separator '" + separator + "'";
    };
  }

  private static String missing(int i, RecordingColumns columns, List<String> header) {
    String name = columns.names().get(i);
    String message =
        "no column \"" + RecordingText.quote(name) + "\" for " + columns.roles().get(i);
    List<String> known = new ArrayList<>(header);
    known.removeIf(String::isEmpty);
    if (known.stream().allMatch(RecordingText::isNumber)) {
      return message + "; the first line must name the columns, but names none";
    }
    known.removeAll(columns.names());
    return known.isEmpty()
        ? message + "; every other column has its use already"
        : message + "; the nearest is \"" + RecordingText.quote(nearest(name, known)) + "\"";
  }

  private static String nearest(String name, List<String> known) {
    String nearest = known.get(0);
    for (String candidate : known) {
      if (distance(candidate, name) < distance(nearest, name)) {
        nearest = candidate;
      }
    }
    return nearest;
  }

  /** Letters to insert, drop or replace on the way from one word to another. */
  private static int distance(String a, String b) {
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int corner = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int replaced = corner + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        corner = row[j];
        row[j] = Math.min(replaced, 1 + Math.min(row[j], row[j - 1]));
      }
    }
    return row[b.length()];
  }
}
