package stafette.musicxml.write;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import stafette.musicxml.write.ReadPage.Bar;
import stafette.musicxml.write.ReadPage.Metre;
import stafette.musicxml.write.ReadPage.Note;
import stafette.musicxml.write.ReadPage.Part;
import stafette.musicxml.write.WrittenRule.Wrong;
import stafette.time.Rational;

/** Beams begin, go on and end, and keep to the beats. */
final class BeamRules {
  private static final Rational EIGHTH = Rational.of(1, 2);

  static final List<WrittenRule> ALL =
      List.of(
          new WrittenRule("beams begin, go on and end", BeamRules::order),
          new WrittenRule("a beam bears no rest longer than its notes", BeamRules::rests),
          new WrittenRule(WrittenRules.BEAM_KEEPS_TO_GROUP, BeamRules::groups));

  private BeamRules() {}

  private static void order(ReadPage source, ReadPage page, Part part, Wrong wrong) {
    for (Bar bar : part.bars()) {
      for (List<Note> voice : bar.voices().values()) {
        Set<String> open = new TreeSet<>();
        for (Note note : voice) {
          if (!note.rest()) {
            order(bar, note, open, wrong);
          }
        }
        if (!open.isEmpty()) {
          wrong.say(bar, "beams " + open + " have no end");
        }
      }
    }
  }

  private static void order(Bar bar, Note note, Set<String> open, Wrong wrong) {
    note.beams()
        .forEach(
            (level, state) -> {
              boolean goesOn = state.equals("continue") || state.equals("end");
              if (goesOn != open.contains(level)) {
                wrong.say(
                    bar,
                    "beam "
                        + level
                        + " says "
                        + state
                        + " at "
                        + note.onset()
                        + (goesOn ? " and none is open" : " while one is open"));
              }
              if (state.equals("begin")) {
                open.add(level);
              } else if (state.equals("end")) {
                open.remove(level);
              }
            });
    Set<String> passed = new TreeSet<>(open);
    passed.removeAll(note.beams().keySet());
    if (!passed.isEmpty()) {
      wrong.say(bar, note.called() + " at " + note.onset() + " lacks beams " + passed);
      open.removeAll(passed);
    }
  }

  private static void rests(ReadPage source, ReadPage page, Part part, Wrong wrong) {
    for (Bar bar : part.bars()) {
      for (List<Note> group : beamed(bar)) {
        Rational sounds =
            group.stream()
                .filter(note -> !note.rest())
                .map(Note::length)
                .reduce(Rational.ZERO, Rational::plus);
        group.stream()
            .filter(note -> note.rest() && note.length().compareTo(sounds) > 0)
            .forEach(
                rest ->
                    wrong.say(
                        bar,
                        "a beam of "
                            + sounds
                            + " quarters bears a rest of "
                            + rest.length()
                            + " at "
                            + rest.onset()));
      }
    }
  }

  private static void groups(ReadPage source, ReadPage page, Part part, Wrong wrong) {
    for (Bar bar : part.bars()) {
      if (source.incomplete(bar)) {
        continue;
      }
      List<List<Note>> model =
          source.bars(bar.index()).stream().flatMap(other -> beamed(other).stream()).toList();
      for (List<Note> group : beamed(bar).stream().filter(group -> !isOneTuplet(group)).toList()) {
        borders(bar.metre().orElseThrow(), group, model)
            .filter(border -> crosses(group, border))
            .filter(border -> model.stream().noneMatch(other -> crosses(other, border)))
            .forEach(
                border ->
                    wrong.say(
                        bar,
                        "the beam from "
                            + group.get(0).onset()
                            + " to "
                            + end(group)
                            + " goes over "
                            + border));
      }
    }
  }

  /** Such a beam goes where its bracket goes. */
  private static boolean isOneTuplet(List<Note> group) {
    List<String> edges =
        group.stream()
            .flatMap(note -> note.notations("tuplet").stream())
            .map(tuplet -> tuplet.attribute("type", ""))
            .toList();
    return edges.equals(List.of("start", "stop"))
        && isEdge(group.get(0))
        && isEdge(group.get(group.size() - 1));
  }

  private static boolean isEdge(Note note) {
    return !note.notations("tuplet").isEmpty();
  }

  /** Where groups of the metre begin; by the source's beams where the metre doesn't say. */
  private static Stream<Rational> borders(Metre metre, List<Note> group, List<List<Note>> model) {
    if (metre.beats().size() > 1) {
      List<Rational> borders = new ArrayList<>();
      int beats = 0;
      for (int some : metre.beats()) {
        beats += some;
        borders.add(Rational.of(4L * beats, metre.beatType()));
      }
      return borders.stream();
    }
    boolean eighths = group.stream().noneMatch(note -> note.length().compareTo(EIGHTH) < 0);
    if (metre.compound()) {
      return multiples(Rational.of(3, 2), metre);
    }
    if (metre.simple() && metre.beatType() == 4) {
      Rational most = Rational.of(metre.is(3, 4) ? 3 : 2);
      return multiples(eighths ? most : Rational.ONE, metre);
    }
    return model.stream().map(other -> other.get(0).onset());
  }

  private static Stream<Rational> multiples(Rational step, Metre metre) {
    return Stream.iterate(step, at -> at.compareTo(metre.length()) < 0, at -> at.plus(step));
  }

  private static boolean crosses(List<Note> group, Rational border) {
    return group.get(0).onset().compareTo(border) < 0 && end(group).compareTo(border) > 0;
  }

  private static Rational end(List<Note> group) {
    return group.get(group.size() - 1).end();
  }

  /** The notes under each beam of a bar, with the rests between them. */
  private static List<List<Note>> beamed(Bar bar) {
    List<List<Note>> groups = new ArrayList<>();
    for (List<Note> voice : bar.voices().values()) {
      List<Note> group = new ArrayList<>();
      for (Note note : voice) {
        String state = note.beams().getOrDefault("1", "");
        if (state.equals("begin")) {
          group = new ArrayList<>();
        }
        if (state.equals("begin") || !group.isEmpty()) {
          group.add(note);
        }
        if (state.equals("end") && !group.isEmpty()) {
          groups.add(group);
          group = new ArrayList<>();
        }
      }
    }
    return groups;
  }
}
