package stafette.musicxml.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stafette.musicxml.text.TextSpan;
import stafette.musicxml.text.UnreadableScore;
import stafette.musicxml.text.XmlWalk;
import stafette.words.Fault;
import stafette.words.Sentence;

/** Reads a whole score in one pass. */
final class ScoreWalk {
  private static final int MOST_PARTS = 1_000;
  private static final int MOST_MEASURES = 99_999;

  private final XmlWalk walk;
  private final List<WrittenPart> parts = new ArrayList<>();
  private final TimeGrid grid = new TimeGrid();
  private Optional<String> workTitle = Optional.empty();
  private Optional<String> movementTitle = Optional.empty();
  private Optional<PartList> partList = Optional.empty();

  private ScoreWalk(XmlWalk walk) {
    this.walk = walk;
  }

  /**
   * A score as it is written.
   *
   * @param title the work's, else the movement's
   * @param movementTitle the movement's
   * @param partListSpan the part-list; an empty span before the first part if there is none
   * @param parts in the order in which they stand, at least one, and at least one measure in all
   */
  record WalkedScore(
      String version,
      Optional<String> title,
      Optional<String> movementTitle,
      TextSpan partListSpan,
      List<WrittenPart> parts) {}

  static WalkedScore read(String text) throws UnreadableScore {
    if (text.isBlank()) {
      throw new UnreadableScore(Sentence.of("The file is empty. Export the score again."));
    }
    if (!text.stripLeading().startsWith("<")) {
      throw new UnreadableScore(
          Sentence.of(
              "This is no MusicXML: it does not begin with \"<\". Export the score as MusicXML"
                  + " (.musicxml or .mxl) from the notation program."));
    }
    return new ScoreWalk(XmlWalk.open(text)).read();
  }

  private WalkedScore read() throws UnreadableScore {
    checkRoot(walk.name());
    String version = walk.attribute("version").orElse("1.0");
    while (walk.nextChild()) {
      switch (walk.name()) {
        case "work" -> workTitle = walk.element().textOf("work-title");
        case "movement-title" ->
            movementTitle = Optional.of(walk.element().text()).filter(t -> !t.isEmpty());
        case "part-list" -> partList = Optional.of(list());
        case "part" -> parts.add(part());
        default -> walk.skip();
      }
    }
    walk.finish();
    if (parts.stream().allMatch(part -> part.measures().isEmpty())) {
      throw new UnreadableScore(
          parts.isEmpty()
              ? Sentence.of("The score holds no parts. Export the whole score again.")
              : Sentence.of("The score holds no measures. Export the whole score again."));
    }
    int first = parts.get(0).whole().start();
    return new WalkedScore(
        version,
        workTitle.or(() -> movementTitle),
        movementTitle,
        partList.map(PartList::span).orElse(new TextSpan(first, first)),
        List.copyOf(parts));
  }

  private PartList list() throws UnreadableScore {
    if (!parts.isEmpty()) {
      throw new UnreadableScore(
          Sentence.of(
              "The list of the score's parts stands after a part. Export the whole score again."));
    }
    return PartList.of(walk.element());
  }

  private static void checkRoot(String root) throws UnreadableScore {
    switch (root) {
      case "score-partwise" -> {}
      case "score-timewise" ->
          throw new UnreadableScore(
              Sentence.of(
                  "The score is in the timewise form (<score-timewise>). Convert it to"
                      + " <score-partwise>: open it in a notation program and export it again."));
      case "opus" ->
          throw new UnreadableScore(
              Sentence.of(
                  "This is a list of scores (<opus>). Open one of the scores that it names."));
      default ->
          throw new UnreadableScore(
              Sentence.of(
                  "This is no MusicXML score: its root is <{0}>, not <score-partwise>. Export the"
                      + " score as MusicXML.",
                  root.length() > 40 ? root.substring(0, 40) + "…" : root));
    }
  }

  private WrittenPart part() throws UnreadableScore {
    if (parts.size() == MOST_PARTS) {
      throw new UnreadableScore(
          Sentence.of("The score has more than {0} parts, which are not read.", MOST_PARTS));
    }
    int start = walk.start();
    String id = walk.attribute("id").orElse("");
    PartList.ListedPart listed =
        partList.map(list -> list.entry(id)).orElse(PartList.ListedPart.unlisted());
    AttributesInForce attributes = new AttributesInForce(grid);
    List<WrittenMeasure> measures = new ArrayList<>();
    while (walk.nextChild()) {
      if (measures.size() == MOST_MEASURES) {
        throw new UnreadableScore(
            Sentence.of(
                "Part {0} has more than {1} bars, which are not read. Divide the score.",
                listed.nameOr(id), MOST_MEASURES));
      }
      if (walk.name().equals("measure")) {
        String number = walk.attribute("number").orElse("?");
        measures.add(
            Fault.at(
                () -> Sentence.of("{0}, bar {1}", listed.nameOr(id), number),
                () -> measure(listed, id, attributes)));
      } else {
        walk.skip();
      }
    }
    return new WrittenPart(id, listed, new TextSpan(start, walk.end()), List.copyOf(measures));
  }

  private WrittenMeasure measure(
      PartList.ListedPart listed, String id, AttributesInForce attributes) throws UnreadableScore {
    return MeasureWalk.read(
        walk, attributes, listed.instrumentCount() > 1, "Part " + listed.nameOr(id));
  }
}
