package stafette.tables;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/** The tables, by file and columns. */
enum Table {
  INSTRUMENTS(
      "instruments.csv",
      "instrument, family, low, high, diatonic, chromatic, clef, level, program, source, grade",
      "aliases, comfortable low, comfortable high, breath, catch, full, note"),
  TECHNIQUES(
      "techniques.csv",
      "instrument, technique, act, peak, deviation, source, grade",
      "pitches, slurs, groups, twin strings, takers, expected, sustained, stamina, recovery, moving,"
          + " lowest, note"),
  STATEMENTS(
      "statements.csv",
      "instrument, technique, kind, source, grade",
      "figure, of, low, high, seconds, conditions, set aside"),
  FACTORS("factors.csv", "instrument, technique, condition, factor, source, grade", "note"),
  REPERTOIRE(
      "repertoire.csv",
      "instrument, stroking, scores, passages, of 100, rate, seconds, strokes",
      ""),
  REGISTERS("registers.csv", "instrument, from, to, word, decibel, source, grade", "note"),
  WEIGHTS("weights.csv", "name, value", "comment"),
  BLEND("blend.csv", "one, other, points", "comment");

  private final String file;
  private final String required;
  private final String optional;

  Table(String file, String required, String optional) {
    this.file = file;
    this.required = required;
    this.optional = optional;
  }

  String file() {
    return file;
  }

  List<String> required() {
    return Arrays.asList(required.split(", "));
  }

  List<String> columns() {
    return Stream.of(required, optional)
        .filter(list -> !list.isEmpty())
        .flatMap(list -> Stream.of(list.split(", ")))
        .toList();
  }
}
