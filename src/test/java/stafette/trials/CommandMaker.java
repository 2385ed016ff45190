package stafette.trials;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Makes up command lines for a score: mostly what somebody would type, at times what nobody would.
 */
final class CommandMaker {
  private static final String FILE = Trial.FOLDER + "/";

  /** So many of a hundred values are odd. */
  private static final int ODD = 2;

  private final Dice dice;
  private final Node score;
  private final String file;
  private final List<String> args = new ArrayList<>();

  CommandMaker(Dice dice, Node score, String file) {
    this.dice = dice;
    this.score = score;
    this.file = FILE + file;
  }

  /** What is asked of a score. */
  List<String> forScore() {
    int kind = dice.between(0, 99);
    if (kind < 30) {
      check();
    } else if (kind < 72) {
      split();
    } else if (kind < 84) {
      preview();
    } else if (kind < 92) {
      tempo();
    } else {
      thin();
    }
    if (dice.in100(2)) {
      args.add(dice.between(1, args.size()), Odd.any(dice));
    }
    return args;
  }

  private void check() {
    args.addAll(List.of("check", file));
    if (dice.in100(35)) {
      line();
      maybe(70, "--as", dice.of("flute, harp, violin", "oboe", "piano", "snare drum"));
    }
    reading();
    maybe(10, "--allow", dice.of("double tonguing", "Flute 1: double tonguing"));
    flag(40, "--json");
  }

  private void split() {
    args.addAll(List.of("split", file));
    planned();
    file(90, "-o", dice.of("out.musicxml", "out.mxl", "out.xml"));
    maybe(35, "--source", dice.of("keep", "cue", "remove"));
    file(25, "--plan", "kept.json");
    maybe(8, "--colour", dice.of("Trumpet 1", "Clarinet 9", player()));
    maybe(6, "--alternatives", dice.of("1", "3"));
    flag(30, "--json");
    flag(5, "--force");
    flag(10, "--explain");
  }

  /** A plan of a sound score, kept in a file. */
  List<String> keeping(String plan) {
    args.addAll(List.of("split", file, "--part", "P1", "--players"));
    args.add("Flute 1, Oboe 1, Clarinet 2, " + dice.of("Violin 3", "Anna = bassoon", "Harp"));
    args.addAll(List.of("--allow", "double tonguing", "--time", "1", "--plan", FILE + plan));
    args.addAll(List.of("--tone", "top", "--tempo", "quarter = " + dice.of(40, 60, 80)));
    maybe(20, "--lock", "Oboe 1: " + bar() + ".1");
    maybe(20, "--hocket", dice.of("stroke", "beat"));
    return args;
  }

  /** What is asked of a kept plan. */
  List<String> forPlan(String plan) {
    args.addAll(List.of("preview", FILE + plan));
    outputs();
    flag(30, "--json");
    flag(20, "--explain");
    return args;
  }

  private void preview() {
    args.addAll(List.of("preview", file));
    planned();
    outputs();
    flag(20, "--json");
    flag(10, "--explain");
  }

  private void outputs() {
    file(
        25,
        "--timeline",
        dice.of("line.svg", "line.svg", "line.svg", "line.svg", "line.pdf", "line.png"));
    flag(args.contains("--timeline") ? 50 : 1, "--notes");
    maybe(10, "--paper", dice.of("a4", "letter", "sheet", "wide"));
    file(6, "--sheet", "sheet.pdf");
    file(20, "--sound", dice.in100(8) ? "sound.wav" : "sound.mid");
    if (args.contains("--sound")) {
      flag(30, "--with-score");
      flag(10, "--compare");
      maybe(20, "--handoff", dice.of("1", "2"));
      maybe(20, "--speed", dice.of("50%", "150%"));
      maybe(10, "--solo", player());
      maybe(10, "--spread", "off");
    }
  }

  private void tempo() {
    args.addAll(List.of("tempo", file));
    planned();
    maybe(40, "--tempi", dice.of("80-120", "80-120/20", "quarter = 60-90", "1-1"));
    flag(30, "--json");
  }

  private void thin() {
    args.addAll(List.of("thin", file));
    line();
    reading();
    Set<String> players = new LinkedHashSet<>(List.of(player(), player()));
    args.addAll(List.of("--players", String.join(", ", players), "--time", "1"));
    file(60, "-o", "out.musicxml");
    maybe(20, "--allow", "double tonguing");
    flag(30, "--json");
  }

  private void planned() {
    line();
    reading();
    Set<String> players = new LinkedHashSet<>();
    for (int i = dice.between(1, 4); i > 0; i--) {
      players.add(player());
    }
    args.addAll(List.of("--players", String.join(", ", players), "--time", "1"));
    maybe(20, "--allow", dice.in100(90) ? "double tonguing" : player() + ": double tonguing");
    maybe(12, "--overlap", dice.of("1", "1..3", "2..beat", "3", "12"));
    maybe(8, "--ready", dice.of("0", "2", "3600"));
    maybe(20, "--favour", dice.of("handoffs", "strain", "blend", "players", "regular"));
    maybe(12, "--hocket", dice.of("stroke", "group", "beat", "no"));
    maybe(8, "--double", dice.of("2", "2", "3"));
    maybe(12, "--lock", lock());
    maybe(5, "--seats", dice.of("Flute 1: -2 3.5", player() + ": 0 0"));
  }

  private String lock() {
    String bar = bar();
    return dice.of(
        player() + ": " + bar + ".1-" + bar + ".2",
        player() + " = " + bar + ".1-" + bar() + ".1",
        "not " + player() + ": " + bar + ".1",
        "handoff: " + bar + ".1",
        "handoff: " + bar + ".2",
        Odd.text(dice));
  }

  private void line() {
    args.addAll(List.of("--part", part()));
    maybe(40, "--staff", dice.of("1", "1", "2"));
    maybe(10, "--voice", dice.of("1", "5"));
    maybe(40, "--bars", bars());
    boolean chords = !score.all("chord").isEmpty();
    maybe(chords ? 85 : 8, "--tone", dice.of("top", "bottom", "all", "each", "2"));
  }

  private void reading() {
    maybe(15, "--tempo", dice.of("40", "100", "160", "dotted quarter = 92"));
    maybe(8, "--tremolo", dice.of("measured", "unmeasured"));
    maybe(8, "--assurance", dice.of("50", "95", "99.9"));
  }

  private String part() {
    if (dice.in100(70)) {
      return "P1";
    }
    List<Node> parts = score.all("score-part");
    return parts.isEmpty() || dice.in100(10)
        ? Odd.text(dice)
        : dice.of(dice.of(parts).attribute("id"), name(dice.of(parts))).orElse("P2");
  }

  private static Optional<String> name(Node part) {
    return part.child("part-name").map(Node::text);
  }

  private String player() {
    List<Node> parts = score.all("score-part");
    if (!parts.isEmpty() && dice.in100(45)) {
      return name(dice.of(parts)).orElse("Flute 1");
    }
    return dice.in100(93)
        ? dice.of("Flute 1", "Flute 7", "Oboe 1", "Clarinet 8", "Violin 3", "Anna = bassoon")
        : Odd.text(dice);
  }

  private String bars() {
    String first = bar();
    return dice.of(
        first + "-" + bar(), first, "#1-#2", "#1-#1", dice.in100(20) ? Odd.any(dice) : "#1-#1");
  }

  private String bar() {
    List<Node> measures = score.all("measure");
    return measures.isEmpty() ? "1" : dice.of(measures).attribute("number").orElse("1");
  }

  private void maybe(int share, String option, String value) {
    if (dice.in100(share)) {
      args.addAll(List.of(option, dice.in100(ODD) ? Odd.any(dice) : value));
    }
  }

  /** Where a file is written nobody is odd: it would stand outside the folder. */
  private void file(int share, String option, String name) {
    if (dice.in100(share)) {
      args.addAll(List.of(option, FILE + name));
    }
  }

  private void flag(int share, String option) {
    if (dice.in100(share)) {
      args.add(option);
    }
  }
}
