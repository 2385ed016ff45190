package stafette.trials;

import java.util.List;

/** Fills bars with fast notes of many kinds. */
final class FastBar {
  private static final List<String> STEPS = List.of("C", "D", "E", "F", "G", "A", "B");

  private final Dice dice;
  private final int quarter;
  private final boolean drums;
  private final boolean chords;
  private int step;

  FastBar(Dice dice, int divisions, boolean drums, boolean chords) {
    this.dice = dice;
    this.quarter = divisions;
    this.drums = drums;
    this.chords = chords;
    this.step = dice.between(0, 10);
  }

  /** A note in the order that the schema asks for. */
  static Node note(String step, int octave, int duration, int voice, int staff) {
    return Node.of(
        "note",
        Node.of("pitch", Node.of("step", step), Node.of("octave", octave)),
        Node.of("duration", duration),
        Node.of("voice", voice),
        Node.of("staff", staff));
  }

  void fill(Node measure, int length) {
    int place = 0;
    int kind = dice.between(0, 99);
    while (place < length) {
      place +=
          length - place < quarter
              ? plain(measure, length - place, 1)
              : beat(measure, dice.in100(85) ? kind : dice.between(0, 99));
    }
  }

  private int beat(Node measure, int kind) {
    if (kind < 50) {
      return plain(measure, quarter / 4, 4);
    }
    if (kind < 70) {
      return tuplet(measure, dice.of(3, 6), 2);
    }
    if (kind < 80) {
      return plain(measure, quarter / 8, 8);
    }
    if (kind < 90) {
      return slashed(measure);
    }
    return kind < 95 ? alternating(measure) : tied(measure);
  }

  private int plain(Node measure, int value, int count) {
    boolean slurred = count > 1 && dice.in100(10);
    for (int i = 0; i < count; i++) {
      Node note = next(value);
      if (slurred && (i == 0 || i == count - 1)) {
        notate(note, Node.of("slur").with("type", i == 0 ? "start" : "stop").with("number", "1"));
      } else if (dice.in100(5)) {
        notate(note, Node.of("articulations", Node.of(dice.of("staccato", "accent", "tenuto"))));
      }
      if (dice.in100(3)) {
        measure.add(grace());
      }
      measure.add(note);
      if (chords && dice.in100(10)) {
        measure.add(above(note));
      }
    }
    return value * count;
  }

  private int tuplet(Node measure, int count, int bracketed) {
    for (int i = 0; i < count; i++) {
      Node note = next(quarter / count);
      modify(note, count, count / 3 * 2);
      if (i == 0 || i == count - 1) {
        Node bracket = Node.of("tuplet").with("type", i == 0 ? "start" : "stop");
        notate(note, bracketed > 1 ? bracket.with("number", "1") : bracket);
      }
      measure.add(note);
    }
    return quarter;
  }

  private int slashed(Node measure) {
    Node note = next(quarter);
    notate(
        note,
        Node.of(
            "ornaments", Node.of("tremolo", dice.of("2", "2", "3", "1")).with("type", "single")));
    note.children().add(note.children().size() - 2, Node.of("type", "quarter"));
    measure.add(note);
    return quarter;
  }

  private int alternating(Node measure) {
    for (String type : List.of("start", "stop")) {
      Node note = next(quarter / 2);
      note.children().add(note.children().size() - 1, Node.of("type", "quarter"));
      modify(note, 2, 1);
      notate(note, Node.of("ornaments", Node.of("tremolo", 2).with("type", type)));
      measure.add(note);
    }
    return quarter;
  }

  private int tied(Node measure) {
    Node first = next(quarter / 2);
    Node second = first.copy();
    first.children().add(2, Node.of("tie").with("type", "start"));
    second.children().add(2, Node.of("tie").with("type", "stop"));
    notate(first, Node.of("tied").with("type", "start"));
    notate(second, Node.of("tied").with("type", "stop"));
    measure.add(first, second);
    return quarter;
  }

  private Node next(int value) {
    if (dice.in100(4)) {
      return SmallScore.rest(value, 1, 1);
    }
    step = Math.max(0, Math.min(13, step + dice.of(0, 0, 0, 1, -1, 2)));
    Node note = note(STEPS.get(step % 7), 4 + step / 7, value, 1, 1);
    if (drums) {
      note.children()
          .set(0, Node.of("unpitched", Node.of("display-step", "C"), Node.of("display-octave", 5)));
    }
    return note;
  }

  private Node grace() {
    Node grace = note("D", 5, 1, 1, 1);
    grace.children().remove(1);
    grace.children().add(0, Node.of("grace").with("slash", "yes"));
    return grace;
  }

  private static Node above(Node note) {
    Node above = note.copy();
    above.children().removeIf(child -> child.name().equals("notations"));
    above.child("pitch").flatMap(p -> p.child("octave")).ifPresent(octave -> octave.say("6"));
    above.children().add(0, Node.of("chord"));
    return above;
  }

  private static void modify(Node note, int actual, int normal) {
    note.children()
        .add(
            note.children().size() - 1,
            Node.of(
                "time-modification",
                Node.of("actual-notes", actual),
                Node.of("normal-notes", normal)));
  }

  private static void notate(Node note, Node mark) {
    if (note.child("rest").isEmpty()) {
      note.child("notations")
          .ifPresentOrElse(
              notations -> notations.add(mark), () -> note.add(Node.of("notations", mark)));
    }
  }
}
