package stafette.score.source;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import stafette.score.Tone;
import stafette.score.source.SourceNote.Became;
import stafette.time.Bars;
import stafette.words.Sentence;

/** What became of the source, as an orchestrator would note it. */
public final class SourceInWords {
  private SourceInWords() {}

  /** "192 notes, all taken", or "192 notes: 180 taken, 12 moved by an octave". */
  public static Sentence summary(SourceAccount account) {
    int all = account.notes().size();
    if (account.count(Became.TAKEN) == all) {
      return Sentence.of("{0} notes, all taken", all);
    }
    List<Sentence> parts = new ArrayList<>();
    parts.add(Sentence.of("{0} taken", account.count(Became.TAKEN)));
    if (account.count(Became.MOVED) > 0) {
      parts.add(Sentence.of("{0} moved by octaves", account.count(Became.MOVED)));
    }
    if (account.count(Became.GIVEN) > 0) {
      parts.add(Sentence.of("{0} played by others", account.count(Became.GIVEN)));
    }
    if (account.count(Became.OMITTED) > 0) {
      parts.add(Sentence.of("{0} left out", account.count(Became.OMITTED)));
    }
    return Sentence.of("{0} notes: {1}", all, Sentence.list(parts));
  }

  /** A sentence for each bar with notes that are not taken as they stand. */
  public static List<Sentence> list(SourceAccount account, Bars bars) {
    Map<Integer, List<SourceNote>> byBar =
        account.notes().stream()
            .filter(note -> note.became() != Became.TAKEN)
            .collect(
                Collectors.groupingBy(
                    note -> bars.at(note.at()).index(), LinkedHashMap::new, Collectors.toList()));
    List<Sentence> all = new ArrayList<>();
    byBar.forEach(
        (bar, notes) -> all.add(Sentence.of("bar {0}: {1}", bars.get(bar).number(), inBar(notes))));
    return all;
  }

  private static Sentence inBar(List<SourceNote> notes) {
    Map<Sentence, List<SourceNote>> alike =
        notes.stream()
            .collect(
                Collectors.groupingBy(
                    SourceInWords::fate, LinkedHashMap::new, Collectors.toList()));
    List<Sentence> parts = new ArrayList<>();
    alike.forEach(
        (fate, those) ->
            parts.add(
                Sentence.of(
                    "{0} {1}",
                    Sentence.list(" ", those.stream().map(SourceNote::tone).distinct().toList()),
                    fate)));
    return Sentence.list("; ", parts);
  }

  private static Sentence fate(SourceNote note) {
    return switch (note.became()) {
      case TAKEN -> Sentence.NONE;
      case MOVED -> note.octaves() > 0 ? Sentence.of("moved up") : Sentence.of("moved down");
      case GIVEN -> Sentence.of("played by {0}", note.by().orElse(""));
      case OMITTED -> Sentence.of("left out");
    };
  }

  /** What sounds on under the pedal and is held by nobody, a sentence for each pedal. */
  public static List<Sentence> notHeld(SourceAccount account, Bars bars) {
    return account.notHeld().stream()
        .map(
            resonance ->
                notHeld(
                    bars.at(resonance.pedal().start()).number(),
                    Sentence.list(" ", List.<Tone>copyOf(resonance.tones())),
                    resonance.tones().size()))
        .toList();
  }

  private static Sentence notHeld(String bar, Sentence tones, int count) {
    return count == 1
        ? Sentence.of(
            "pedalled from bar {0}: {1} sounds on, and nobody holds it; give it to somebody who"
                + " sustains",
            bar, tones)
        : Sentence.of(
            "pedalled from bar {0}: {1} sound on, and nobody holds them; give them to somebody who"
                + " sustains",
            bar, tones);
  }
}
