package stafette.trials;

import java.util.ArrayList;
import java.util.List;

/** Makes up short scores: one fast line and some parts around it. */
final class SmallScore {
  private static final int DIVISIONS = 24;

  private final Dice dice;
  private final int beats;
  private final int beatType;
  private final int bars;
  private final int pickup;
  private final boolean numbersRepeat;
  private final List<Cast> cast = new ArrayList<>();

  /** An instrument of the score. */
  private record Cast(String id, String name, String sound, int chromatic, boolean twoStaves) {
    static Cast of(int number, String name, String sound, int chromatic) {
      return new Cast("P" + number, name, sound, chromatic, sound.startsWith("keyboard"));
    }
  }

  private SmallScore(Dice dice) {
    this.dice = dice;
    this.beats = dice.of(4, 4, 4, 3, 2, 6, 5, 12);
    this.beatType = beats > 4 ? 8 : dice.of(4, 4, 4, 2);
    this.bars = dice.between(1, 4);
    this.pickup = dice.in100(20) ? dice.between(1, 7) * DIVISIONS / 4 : 0;
    this.numbersRepeat = dice.in100(10);
  }

  static Node of(Dice dice) {
    return new SmallScore(dice).score();
  }

  private Node score() {
    cast.add(
        dice.of(
            Cast.of(1, "Piano", "keyboard.piano", 0),
            Cast.of(1, "Piano", "keyboard.piano", 0),
            Cast.of(1, "Violin", "strings.violin", 0),
            Cast.of(1, "Flute 1", "wind.flutes.flute", 0),
            Cast.of(1, "Trumpet in B-flat", "brass.trumpet.bflat", -2),
            Cast.of(1, "Harp", "pluck.harp", 0),
            Cast.of(1, "Snare Drum", "drum.snare-drum", 0)));
    for (int i = 2; i <= 1 + dice.between(0, 3); i++) {
      cast.add(
          dice.of(
              Cast.of(i, "Flute " + i, "wind.flutes.flute", 0),
              Cast.of(i, "Clarinet " + i + " in B-flat", "wind.reed.clarinet.bflat", -2),
              Cast.of(i, "Horn " + i, "brass.french-horn", -7),
              Cast.of(i, "Violin " + i, "strings.violin", 0),
              Cast.of(i, "Bassoon " + i, "wind.reed.bassoon", 0)));
    }
    Node list = Node.of("part-list");
    Node score = Node.of("score-partwise").with("version", "4.0");
    score.add(Node.of("work", Node.of("work-title", "Small Trial")), list);
    for (Cast each : cast) {
      list.add(listed(each));
      score.add(part(each));
    }
    return score;
  }

  private static Node listed(Cast each) {
    return Node.of(
            "score-part",
            Node.of("part-name", each.name()),
            Node.of(
                    "score-instrument",
                    Node.of("instrument-name", each.name()),
                    Node.of("instrument-sound", each.sound()))
                .with("id", each.id() + "-I1"),
            Node.of("midi-instrument", Node.of("midi-channel", each.id().substring(1)))
                .with("id", each.id() + "-I1"))
        .with("id", each.id());
  }

  private Node part(Cast each) {
    Node part = Node.of("part").with("id", each.id());
    boolean fast = each.id().equals("P1");
    for (int bar = pickup > 0 ? 0 : 1; bar <= bars; bar++) {
      int length = bar == 0 ? pickup : beats * 4 * DIVISIONS / beatType;
      int number = numbersRepeat && bar > 1 ? bar - 1 : bar;
      Node measure = Node.of("measure").with("number", Integer.toString(number));
      if (bar == 0 && dice.in100(60)) {
        measure.with("implicit", "yes");
      }
      part.add(measure);
      if (part.children().size() == 1) {
        begin(each, measure);
      }
      if (fast) {
        new FastBar(dice, DIVISIONS, each.sound().startsWith("drum"), each.twoStaves())
            .fill(measure, length);
      } else {
        slow(measure, length);
      }
      if (each.twoStaves()) {
        measure.add(backup(length), rest(length, 5, 2));
      }
    }
    return part;
  }

  private void begin(Cast each, Node measure) {
    Node attributes =
        Node.of(
            "attributes",
            Node.of("divisions", DIVISIONS),
            Node.of("key", Node.of("fifths", dice.between(-3, 3))),
            Node.of("time", Node.of("beats", beats), Node.of("beat-type", beatType)));
    if (each.twoStaves()) {
      attributes.add(Node.of("staves", 2), clef("G", 2).with("number", "1"));
      attributes.add(clef("F", 4).with("number", "2"));
    } else {
      attributes.add(clef("G", 2));
    }
    if (each.chromatic() != 0) {
      attributes.add(
          Node.of(
              "transpose",
              Node.of("diatonic", each.chromatic() / 2),
              Node.of("chromatic", each.chromatic())));
    }
    measure.add(attributes);
    if (each.id().equals("P1") && dice.in100(90)) {
      measure.add(tempo(dice.between(90, 180)));
    }
  }

  private static Node clef(String sign, int line) {
    return Node.of("clef", Node.of("sign", sign), Node.of("line", line));
  }

  private Node tempo(int perMinute) {
    Node metronome =
        Node.of(
            "metronome",
            Node.of("beat-unit", dice.of("quarter", "quarter", "eighth", "half")),
            Node.of("per-minute", perMinute));
    return Node.of("direction", Node.of("direction-type", metronome))
        .add(Node.of("sound").with("tempo", Integer.toString(perMinute)));
  }

  private void slow(Node measure, int length) {
    int place = 0;
    while (place < length) {
      int value = Math.min(dice.of(DIVISIONS / 2, DIVISIONS, 2 * DIVISIONS), length - place);
      boolean silent = dice.in100(60);
      if (place == 0 && silent && dice.in100(60)) {
        value = length;
      }
      measure.add(silent ? rest(value, 1, 1) : FastBar.note("G", 4, value, 1, 1));
      place += value;
    }
  }

  static Node backup(int length) {
    return Node.of("backup", Node.of("duration", length));
  }

  static Node rest(int length, int voice, int staff) {
    return Node.of(
        "note",
        Node.of("rest"),
        Node.of("duration", length),
        Node.of("voice", voice),
        Node.of("staff", staff));
  }
}
