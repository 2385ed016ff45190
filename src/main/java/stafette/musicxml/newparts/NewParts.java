package stafette.musicxml.newparts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.audiveris.proxymusic.ScorePart;
import stafette.musicxml.make.Fragments;
import stafette.musicxml.make.UnwritablePlan;
import stafette.musicxml.share.Assigned;
import stafette.musicxml.share.EntryCue;
import stafette.musicxml.text.Origin;
import stafette.musicxml.text.Origin.PartText;
import stafette.musicxml.text.Replacement;
import stafette.musicxml.text.TextSpan;
import stafette.musicxml.text.TextStyle;
import stafette.score.Line;

/** Puts new parts among those of a score, in its part list and in its body. */
public final class NewParts {
  private final Origin origin;
  private final Fragments fragments;
  private final PlayerNames names;
  private final TextStyle style;
  private final PartListing listing;
  private final MidiChannels channels;
  private final Set<String> takenIds = new HashSet<>();
  private final Map<Integer, List<Inserted>> insertions = new LinkedHashMap<>();

  /** Whether a part stands above all of the score; they come from the top. */
  private boolean hasTop;

  /** For a part list that is not there, or is one empty tag. */
  private final StringBuilder firstEntries = new StringBuilder();

  /** Text of a new part, and where that part goes. */
  private record Inserted(PartPlace place, String text) {
    static String inOrder(List<Inserted> all) {
      return all.stream()
          .sorted(Comparator.comparing(Inserted::place))
          .map(Inserted::text)
          .collect(Collectors.joining());
    }
  }

  public NewParts(Origin origin, Fragments fragments, PlayerNames names) {
    this.origin = origin;
    this.fragments = fragments;
    this.names = names;
    this.style = TextStyle.of(origin);
    this.listing = new PartListing(origin);
    this.channels = new MidiChannels(origin);
    origin.parts().forEach(part -> takenIds.add(part.id()));
  }

  /** Takes note of a name that no new part's id may be. */
  public void take(String name) {
    takenIds.add(name);
  }

  private String newId() {
    int number = origin.parts().size() + 1;
    while (origin.text().contains("\"P" + number + "\"")
        || origin.text().contains("'P" + number + "'")
        || !takenIds.add("P" + number)) {
      number++;
    }
    return "P" + number;
  }

  /**
   * Adds a part with what a player has of a line.
   *
   * @param cues before the player's entries
   * @param wanted where it goes; the end of the score if empty
   * @throws UnwritablePlan if its lengths have no common part
   */
  public void add(Line line, Assigned assigned, List<EntryCue> cues, Optional<PartPlace> wanted)
      throws UnwritablePlan {
    PartText last = origin.parts().get(origin.parts().size() - 1);
    PartPlace place = wanted.orElse(PartPlace.atEnd(last.id()));
    PartText beside = origin.part(place.part()).orElse(last);
    String id = newId();
    ScorePart entry = new NewEntry(origin, assigned.player(), names).scorePart(id, channels);
    list(place, fragments.text("score-part", ScorePart.class, entry));
    PartText model = origin.part(line.source().part()).orElseThrow();
    NewPart part =
        new NewPart(origin, model, line, assigned, cues, fragments, id, saysTempi(place));
    String lineBreak = style.breakLike(origin.text(), beside.whole().start());
    insert(place, beside.whole(), lineBreak, part.part(lineBreak));
  }

  /** As the score has it: in each part, else in the top one alone. */
  private boolean saysTempi(PartPlace place) {
    boolean isAboveAll =
        place.side() == PartPlace.Side.ABOVE && place.part().equals(origin.parts().get(0).id());
    boolean isTop = isAboveAll && !hasTop;
    hasTop |= isAboveAll;
    return isTop || ModelMarks.standInEachPart(origin);
  }

  private void list(PartPlace place, String scorePart) {
    TextSpan list = origin.partList();
    Optional<TextSpan> beside = listing.beside(place);
    String entryBreak =
        beside
            .map(span -> style.breakLike(origin.text(), span.start()))
            .orElseGet(() -> style.deeper(style.breakLike(origin.text(), list.start())));
    String entry = style.set(scorePart, entryBreak);
    if (beside.isPresent()) {
      insert(place, beside.get(), entryBreak, entry);
    } else if (list.in(origin.text()).contains("</")) {
      insert(PartPlace.atEnd(place.part()), endOfList(), entryBreak, entry);
    } else {
      firstEntries.append(entryBreak).append(entry);
    }
  }

  /** Where the part list's last element ends. */
  private TextSpan endOfList() {
    int end = origin.text().lastIndexOf("</", origin.partList().end());
    while (Character.isWhitespace(origin.text().charAt(end - 1))) {
      end--;
    }
    return new TextSpan(end, end);
  }

  /** Inserts a line beside what stands at a place. */
  private void insert(PartPlace place, TextSpan beside, String lineBreak, String text) {
    boolean below = place.side() == PartPlace.Side.BELOW;
    insertions
        .computeIfAbsent(below ? beside.end() : beside.start(), at -> new ArrayList<>())
        .add(new Inserted(place, below ? lineBreak + text : text + lineBreak));
  }

  /** All that is added. */
  public List<Replacement> replacements() {
    List<Replacement> all = new ArrayList<>();
    if (!firstEntries.isEmpty()) {
      all.add(partListOf(firstEntries.toString()));
    }
    insertions.forEach(
        (at, texts) -> all.add(new Replacement(new TextSpan(at, at), Inserted.inOrder(texts))));
    return all;
  }

  private Replacement partListOf(String entries) {
    String listBreak = style.breakLike(origin.text(), origin.partList().start());
    String list = "<part-list>" + entries + listBreak + "</part-list>";
    boolean isThere = !origin.partList().isEmpty();
    return new Replacement(origin.partList(), isThere ? list : list + listBreak);
  }
}
