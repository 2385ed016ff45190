package stafette.musicxml.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import stafette.musicxml.text.Element;
import stafette.musicxml.text.TextSpan;

/**
 * What the part-list says about the parts.
 *
 * @param span the whole element
 * @param entries by the part's id
 */
record PartList(TextSpan span, Map<String, ListedPart> entries) {
  /**
   * One score-part element.
   *
   * @param name as printed, may be empty
   * @param sounds the ids of instrument sounds
   * @param instrumentNames the names of its instruments
   * @param instrumentCount how many instruments it has
   * @param span the whole element
   */
  record ListedPart(
      String name,
      List<String> sounds,
      List<String> instrumentNames,
      int instrumentCount,
      Optional<TextSpan> span) {

    /** What is known of a part that the list does not hold. */
    static ListedPart unlisted() {
      return new ListedPart("", List.of(), List.of(), 0, Optional.empty());
    }

    /** The printed name, else that of the first instrument, else the id. */
    String nameOr(String id) {
      return Stream.concat(Stream.of(name), instrumentNames.stream())
          .filter(text -> !text.isEmpty())
          .findFirst()
          .orElse(id);
    }

    /** Sounds first: they say most exactly what it is. */
    List<String> instruments() {
      return Stream.concat(sounds.stream(), instrumentNames.stream()).distinct().toList();
    }
  }

  static PartList of(Element partList) {
    Map<String, ListedPart> entries = new LinkedHashMap<>();
    for (Element scorePart : partList.all("score-part")) {
      entries.putIfAbsent(scorePart.attribute("id").orElse(""), entry(scorePart));
    }
    return new PartList(partList.span(), entries);
  }

  ListedPart entry(String id) {
    return entries.getOrDefault(id, ListedPart.unlisted());
  }

  private static ListedPart entry(Element scorePart) {
    List<String> sounds = new ArrayList<>();
    List<String> names = new ArrayList<>();
    List<Element> instruments = scorePart.all("score-instrument");
    for (Element instrument : instruments) {
      instrument.textOf("instrument-sound").ifPresent(sounds::add);
      instrument.textOf("instrument-name").map(PartList::oneLine).ifPresent(names::add);
    }
    return new ListedPart(
        scorePart.textOf("part-name").map(PartList::oneLine).orElse(""),
        sounds,
        names,
        instruments.size(),
        Optional.of(scorePart.span()));
  }

  private static String oneLine(String text) {
    return text.replaceAll("\\s+", " ");
  }
}
