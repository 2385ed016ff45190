package stafette.trials;

import java.util.List;
import java.util.Optional;

/** Spoils a score in one place, as damaged, odd and misread files are spoilt. */
final class ScoreSpoiler {
  private static final List<String> FIGURES =
      List.of(
          "divisions",
          "duration",
          "beats",
          "beat-type",
          "fifths",
          "octave",
          "alter",
          "staff",
          "staves",
          "voice",
          "actual-notes",
          "normal-notes",
          "tremolo",
          "per-minute",
          "chromatic",
          "diatonic",
          "offset",
          "midi-channel",
          "line");

  private static final List<String> TYPES =
      List.of("1024th", "256th", "64th", "32nd", "16th", "eighth", "quarter", "breve", "maxima");

  private final Dice dice;
  private final Node score;

  private ScoreSpoiler(Dice dice, Node score) {
    this.dice = dice;
    this.score = score;
  }

  /** Spoils a score in some places. */
  static void spoil(Node score, int places, Dice dice) {
    ScoreSpoiler spoiler = new ScoreSpoiler(dice, score);
    for (int i = 0; i < places; i++) {
      spoiler.once();
    }
  }

  private void once() {
    switch (dice.between(0, 15)) {
      case 0 -> anywhere().ifPresent(this::remove);
      case 1 -> anywhere().ifPresent(node -> insertBeside(node, node.copy()));
      case 2 -> move();
      case 3 -> swap();
      case 4, 5, 6 -> figure();
      case 7 -> anywhere().filter(n -> n.children().isEmpty()).ifPresent(n -> n.say(Odd.any(dice)));
      case 8, 9 -> attribute();
      case 10, 11 -> in("measure").ifPresent(this::odd);
      case 12 -> in("note").ifPresent(this::oddNote);
      case 13 -> bars();
      case 14 -> names();
      default -> list();
    }
  }

  private Optional<Node> anywhere() {
    List<Node> all = score.all();
    return all.size() < 2
        ? Optional.empty()
        : Optional.of(all.get(dice.between(1, all.size() - 1)));
  }

  private Optional<Node> in(String name) {
    List<Node> found = score.all(name);
    return found.isEmpty() ? Optional.empty() : Optional.of(dice.of(found));
  }

  private Optional<Node> parentOf(Node node) {
    return score.all(parent -> parent.children().stream().anyMatch(c -> c == node)).stream()
        .findFirst();
  }

  private void remove(Node node) {
    parentOf(node).ifPresent(parent -> parent.children().removeIf(child -> child == node));
  }

  private void insertBeside(Node node, Node other) {
    parentOf(node)
        .ifPresent(
            parent -> parent.children().add(dice.between(0, parent.children().size()), other));
  }

  private void move() {
    anywhere()
        .ifPresent(
            node ->
                anywhere()
                    .filter(target -> !node.all().contains(target))
                    .ifPresent(
                        target -> {
                          remove(node);
                          target.children().add(dice.between(0, target.children().size()), node);
                        }));
  }

  private void swap() {
    List<Node> parents = score.all(node -> node.children().size() > 1);
    if (!parents.isEmpty()) {
      List<Node> children = dice.of(parents).children();
      int one = dice.between(0, children.size() - 1);
      int other = dice.between(0, children.size() - 1);
      Node kept = children.get(one);
      children.set(one, children.get(other));
      children.set(other, kept);
    }
  }

  private void figure() {
    String name = dice.of(FIGURES);
    in(name).ifPresent(node -> node.say(Odd.number(dice)));
  }

  private void attribute() {
    List<Node> with = score.all(node -> !node.attributes().isEmpty());
    if (with.isEmpty()) {
      return;
    }
    Node node = dice.of(with);
    int which = dice.between(0, node.attributes().size() - 1);
    Node.Attribute old = node.attributes().get(which);
    switch (dice.between(0, 3)) {
      case 0 -> node.attributes().remove(which);
      case 1 -> {
        if (dice.in100(20)) {
          node.attributes().add(old);
        }
      }
      default ->
          node.attributes()
              .set(which, new Node.Attribute(old.name(), dice.of(Odd.any(dice), other(old))));
    }
  }

  /** What an attribute of that name says elsewhere. */
  private String other(Node.Attribute attribute) {
    return dice.of(score.all(node -> node.attribute(attribute.name()).isPresent()))
        .attribute(attribute.name())
        .orElse("");
  }

  private void odd(Node measure) {
    Node made =
        switch (dice.between(0, 12)) {
          case 0 -> SmallScore.backup(dice.of(1, 6, 24, 96, 1_000_000));
          case 1 -> Node.of("forward", Node.of("duration", dice.of("1", "24", "7", "99999999")));
          case 2 -> Node.of("attributes", Node.of("divisions", Odd.number(dice)));
          case 3 ->
              Node.of(
                  "attributes",
                  Node.of(
                      "time",
                      Node.of("beats", dice.of("3", "7", "3+2", "1", "99", "senza")),
                      Node.of("beat-type", dice.of("4", "8", "16", "1", "3", "1024"))));
          case 4 -> Node.of("attributes", Node.of("key", Node.of("fifths", dice.between(-9, 9))));
          case 5 -> Node.of("sound").with("tempo", dice.of("0", "-5", "1", "400", "1e3", "0.01"));
          case 6 -> dynamics(dice.of("pppppp", "ffff", "sfz", "n", "other-dynamics"));
          case 7 -> Node.of("barline", Node.of("repeat").with("direction", "backward"));
          case 8 ->
              Node.of(
                  "attributes",
                  Node.of("measure-style", Node.of("measure-repeat", 1).with("type", "start")));
          case 9 ->
              Node.of("attributes", Node.of("transpose", Node.of("chromatic", Odd.number(dice))));
          case 10 ->
              FastBar.note("A", 4, dice.of(1, 5, 7, 24), dice.between(1, 6), dice.of(1, 2, 3));
          case 11 -> SmallScore.rest(dice.of(1, 24, 96), dice.between(1, 3), 1);
          default ->
              Node.of(dice.of("harmony", "figured-bass", "print", "nonsense", "note", "part"));
        };
    measure.children().add(dice.between(0, measure.children().size()), made);
  }

  private static Node dynamics(String sign) {
    return Node.of("direction", Node.of("direction-type", Node.of("dynamics", Node.of(sign))));
  }

  private void oddNote(Node note) {
    Node made =
        switch (dice.between(0, 11)) {
          case 0 -> Node.of("chord");
          case 1 -> Node.of("grace");
          case 2 -> Node.of("cue");
          case 3 -> Node.of("rest").with("measure", "yes");
          case 4 -> Node.of("tie").with("type", dice.of("start", "stop", "let-ring"));
          case 5 -> Node.of("type", dice.of(TYPES));
          case 6 -> Node.of("dot");
          case 7 ->
              Node.of(
                  "time-modification",
                  Node.of("actual-notes", Odd.number(dice)),
                  Node.of("normal-notes", dice.of("2", Odd.number(dice))));
          case 8 ->
              Node.of(
                  "notations",
                  Node.of(
                      "ornaments", Node.of("tremolo", dice.of("8", "3", "0", Odd.number(dice)))));
          case 9 ->
              Node.of(
                  "notations",
                  Node.of(dice.of("slur", "tied", "tuplet", "glissando"))
                      .with("type", dice.of("start", "stop", "continue"))
                      .with("number", dice.of("1", "2", "99", "")));
          case 10 -> Node.of("voice", dice.of("1", "2", "5", "", "x"));
          default -> Node.of("beam", dice.of("begin", "end", "continue")).with("number", "1");
        };
    note.children().add(dice.between(0, note.children().size()), made);
  }

  private void bars() {
    List<Node> parts = score.all("part");
    if (parts.isEmpty()) {
      return;
    }
    Node part = dice.of(parts);
    List<Node> measures = part.children();
    if (measures.isEmpty()) {
      return;
    }
    int at = dice.between(0, measures.size() - 1);
    switch (dice.between(0, 4)) {
      case 0 -> measures.subList(at, measures.size()).clear();
      case 1 -> measures.addAll(part.copy().children());
      case 2 ->
          parts.forEach(each -> each.children().stream().skip(at).limit(1).forEach(this::shorten));
      case 3 -> shorten(measures.get(0));
      default -> measures.get(at).children().clear();
    }
  }

  private void shorten(Node measure) {
    int most = Math.min(measure.children().size(), 12);
    for (int i = dice.between(0, most); i > 0; i--) {
      measure.children().remove(measure.children().size() - 1);
    }
  }

  private void names() {
    in(dice.of("part-name", "instrument-name", "instrument-sound", "work-title"))
        .ifPresent(node -> node.say(Odd.text(dice)));
  }

  private void list() {
    switch (dice.between(0, 4)) {
      case 0 -> in("part-list").ifPresent(list -> list.children().clear());
      case 1 -> in("part-list").ifPresent(this::remove);
      case 2 -> in("score-part").ifPresent(entry -> insertBeside(entry, entry.copy()));
      case 3 ->
          in("score-part")
              .ifPresent(
                  entry ->
                      insertBeside(
                          entry,
                          Node.of("part-group")
                              .with("type", dice.of("start", "stop"))
                              .with("number", "1")));
      default -> in("part").ifPresent(part -> insertBeside(part, part.copy()));
    }
  }
}
