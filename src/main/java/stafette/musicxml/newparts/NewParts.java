package stafette.musicxml.newparts;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import stafette.musicxml.make.UnwritablePlan;
import stafette.musicxml.text.Origin;
import stafette.musicxml.text.Origin.PartText;
import stafette.musicxml.text.Replacement;
import stafette.musicxml.text.TextSpan;
import stafette.musicxml.text.TextStyle;

/** Puts new parts among those of a score, in its part list and in its body. */
public final class NewParts {
  private static final Pattern OPENS =
      Pattern.compile("<part-group\\s[^>]*type\\s*=\\s*[\"']start");

  private final Origin origin;
  private final TextStyle style;
  private final MidiChannels channels;
  private final Set<String> takenIds = new HashSet<>();
  private final Map<Integer, StringBuilder> insertions = new LinkedHashMap<>();

  /** For a part list that is not there, or is one empty tag. */
  private final StringBuilder firstEntries = new StringBuilder();

  public NewParts(Origin origin) {
    this.origin = origin;
    this.style = TextStyle.of(origin);
    this.channels = new MidiChannels(origin);
    origin.parts().forEach(part -> takenIds.add(part.id()));
  }

  /** Takes note of a name that no new part's id may be. */
  public void take(String name) {
    takenIds.add(name);
  }

  /** An id that no part has yet. */
  public String newId() {
    int number = origin.parts().size() + 1;
    while (origin.text().contains("\"P" + number + "\"")
        || origin.text().contains("'P" + number + "'")
        || !takenIds.add("P" + number)) {
      number++;
    }
    return "P" + number;
  }

  /**
   * Adds a part: after another, else above another, else at the end.
   *
   * @throws UnwritablePlan if its lengths have no common part
   */
  public void add(NewPart part, Optional<PartText> after, Optional<Seating.PartBelow> above)
      throws UnwritablePlan {
    Optional<PartText> next = above.flatMap(below -> origin.part(below.part()));
    Optional<TextSpan> entry = after.or(() -> next).flatMap(PartText::scorePart);
    String entryBreak =
        entry
            .or(this::lastEntry)
            .map(span -> style.breakLike(origin.text(), span.start()))
            .orElseGet(
                () -> style.deeper(style.breakLike(origin.text(), origin.partList().start())));
    PartText beside = after.or(() -> next).orElse(origin.parts().get(origin.parts().size() - 1));
    String partBreak = style.breakLike(origin.text(), beside.whole().start());
    String listed = part.scorePart(entryBreak, channels);
    if (after.isEmpty() && next.isPresent() && entry.isPresent()) {
      boolean inBracket = above.map(Seating.PartBelow::isOfFamily).orElse(false);
      int at = inBracket ? entry.get().start() : beforeBrackets(entry.get().start());
      insert(at, listed + entryBreak);
      insert(beside.whole().start(), part.part(partBreak) + partBreak);
    } else {
      list(after.flatMap(PartText::scorePart), entryBreak + listed);
      insert(beside.whole().end(), partBreak + part.part(partBreak));
    }
  }

  /** Where the brackets begin that open right before a part's entry. */
  private int beforeBrackets(int entry) {
    String text = origin.text();
    int at = entry;
    while (true) {
      int end = at;
      while (Character.isWhitespace(text.charAt(end - 1))) {
        end--;
      }
      int start = text.lastIndexOf("<part-group", end - 1);
      boolean isRightBefore =
          start > origin.partList().start()
              && text.substring(start, end).split("</?part-group", -1).length <= 3
              && text.substring(start, end).matches("(?s)<part-group[^>]*/>|.*</part-group>")
              && !text.substring(start, end).contains("</score-part>");
      if (!isRightBefore || !OPENS.matcher(text.substring(start, end)).lookingAt()) {
        return at;
      }
      at = start;
    }
  }

  private Optional<TextSpan> lastEntry() {
    return origin.parts().get(origin.parts().size() - 1).scorePart();
  }

  private void list(Optional<TextSpan> neighbour, String entry) {
    if (neighbour.isPresent()) {
      insert(neighbour.get().end(), entry);
    } else if (origin.partList().in(origin.text()).contains("</")) {
      insert(endOfList(), entry);
    } else {
      firstEntries.append(entry);
    }
  }

  /** Where the part list's last element ends, brackets that close after the last part included. */
  private int endOfList() {
    int end = origin.text().lastIndexOf("</", origin.partList().end());
    while (Character.isWhitespace(origin.text().charAt(end - 1))) {
      end--;
    }
    return end;
  }

  private void insert(int at, String text) {
    insertions.computeIfAbsent(at, a -> new StringBuilder()).append(text);
  }

  /** All that is added. */
  public List<Replacement> replacements() {
    List<Replacement> all = new ArrayList<>();
    if (!firstEntries.isEmpty()) {
      all.add(partListOf(firstEntries.toString()));
    }
    insertions.forEach(
        (at, text) -> all.add(new Replacement(new TextSpan(at, at), text.toString())));
    return all;
  }

  private Replacement partListOf(String entries) {
    String listBreak = style.breakLike(origin.text(), origin.partList().start());
    String list = "<part-list>" + entries + listBreak + "</part-list>";
    boolean isThere = !origin.partList().isEmpty();
    return new Replacement(origin.partList(), isThere ? list : list + listBreak);
  }
}
