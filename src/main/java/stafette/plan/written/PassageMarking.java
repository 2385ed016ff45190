package stafette.plan.written;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stafette.plan.LevelSteps;
import stafette.plan.written.PassageMarks.MarkedDynamic;
import stafette.plan.written.PassageMarks.MarkedWords;
import stafette.plan.written.PassageMarks.Swell;
import stafette.score.Dynamic;
import stafette.score.Expression;
import stafette.score.Hairpin;
import stafette.score.Line;
import stafette.score.Stroke;
import stafette.score.Words;
import stafette.time.Length;
import stafette.time.Position;
import stafette.time.Span;

/** Finds what stands beside the notes of a passage. */
final class PassageMarking {
  /** One note alone bears a hairpin only if it is long. */
  private static final Length LONG_NOTE = Length.ofQuarters(2, 1);

  private final Line line;
  private final int first;
  private final int last;
  private final WrittenPassage passage;
  private final Expression expression;
  private final Landings beside;
  private final LastRead before;
  private final List<MarkedWords> characters = new ArrayList<>();
  private final List<MarkedDynamic> dynamics = new ArrayList<>();
  private final List<Swell> swells = new ArrayList<>();

  PassageMarking(WrittenPassage passage, LastRead before, Landings beside) {
    this.passage = passage;
    this.before = before;
    this.beside = beside;
    line = passage.line();
    first = passage.played().first();
    last = passage.played().last();
    expression = line.expression();
    addCharacters();
    addDynamics();
    expression.hairpins().forEach(this::add);
    passage.shaded().fadesFrom(passage.strokes().size()).ifPresent(from -> fade(first + from));
  }

  PassageMarks marks() {
    return new PassageMarks(characters, dynamics, swells);
  }

  /** What the player has read when it leaves. */
  LastRead read() {
    Optional<MarkedDynamic> lastMark = dynamics.stream().reduce((one, later) -> later);
    Optional<Dynamic> known = lastMark.map(MarkedDynamic::dynamic).or(before::dynamic);
    boolean isMoved =
        swells.stream()
            .anyMatch(
                swell ->
                    lastMark.stream().noneMatch(mark -> mark.at().isAfter(swell.span().start())));
    return new LastRead(
        expression.wordsAt(passage.landing().onset()),
        isMoved ? Optional.empty() : known,
        passage.landing().span().end());
  }

  private void addCharacters() {
    Optional<Words> known = before.words();
    for (int j = first; j <= last; j++) {
      Optional<Words> now = expression.wordsAt(line.stroke(j).onset());
      if (now.isPresent() && !now.map(Words::text).equals(known.map(Words::text))) {
        characters.add(new MarkedWords(line.stroke(j).onset(), now.get().text()));
        known = now;
      }
    }
  }

  private void addDynamics() {
    Dynamic reached = reached(first);
    int full = first + passage.shaded().entering();
    boolean isShaded = full > first && full <= last;
    Dynamic entering = played(isShaded ? LevelSteps.softer(reached, 1) : reached);
    if (before.mustHear(entering, passage, beside)) {
      dynamics.add(new MarkedDynamic(line.stroke(first).onset(), entering));
    }
    for (int j = first + 1; j <= last; j++) {
      Dynamic written = line.stroke(j).dynamic();
      if (written != line.stroke(j - 1).dynamic()) {
        reached = written;
        add(j, written);
      } else if (isShaded && j == full) {
        add(j, reached(j));
      }
    }
    if (last > first && within(last).isPresent() && arrival() != reached) {
      add(last, arrival());
    }
  }

  /** What a hairpin that has not ended before has come to with the last note. */
  private Dynamic arrival() {
    return last < line.count() - 1 ? reached(last) : endOfLine();
  }

  private boolean hasArrival() {
    return dynamics.stream().anyMatch(mark -> mark.at().equals(line.stroke(last).onset()));
  }

  /** A hairpin that leads beyond the line has its goal with the last note. */
  private Dynamic endOfLine() {
    Stroke stroke = line.stroke(last);
    return within(last)
        .filter(hairpin -> !hairpin.span().end().isBefore(stroke.span().end()))
        .flatMap(Hairpin::goal)
        .orElse(stroke.dynamic());
  }

  private void add(int index, Dynamic dynamic) {
    dynamics.add(new MarkedDynamic(line.stroke(index).onset(), played(dynamic)));
  }

  /** How it is marked where louder instruments are marked softer. */
  private Dynamic played(Dynamic dynamic) {
    return LevelSteps.softer(dynamic, passage.softer());
  }

  /** Who leaves fades where others play along for long, unless the line has a hairpin there. */
  private void fade(int from) {
    Span swell = new Span(line.stroke(from).onset(), endOf(last));
    if (expression.hairpins().stream().noneMatch(hairpin -> hairpin.span().overlaps(swell))) {
      swells.add(new Swell(swell, line.stroke(last).onset(), false, Optional.empty(), false));
    }
  }

  /** How loud it is at a stroke, hairpins included. */
  private Dynamic reached(int index) {
    Stroke stroke = line.stroke(index);
    return within(index)
        .flatMap(
            hairpin ->
                goal(hairpin)
                    .filter(goal -> hairpin.leadsTo(goal, stroke.dynamic()))
                    .map(goal -> hairpin.at(stroke.onset(), stroke.dynamic(), goal)))
        .orElse(stroke.dynamic());
  }

  /** The hairpin that has begun before a stroke and goes on after it. */
  private Optional<Hairpin> within(int index) {
    Position at = line.stroke(index).onset();
    return expression.hairpins().stream()
        .filter(hairpin -> hairpin.span().contains(at) && hairpin.span().start().isBefore(at))
        .findFirst();
  }

  /** The dynamic to which a hairpin leads; else that with which the line goes on there. */
  private Optional<Dynamic> goal(Hairpin hairpin) {
    return hairpin
        .goal()
        .or(
            () ->
                line.strokes().stream()
                    .filter(stroke -> !stroke.onset().isBefore(hairpin.span().end()))
                    .findFirst()
                    .map(Stroke::dynamic));
  }

  private void add(Hairpin hairpin) {
    int begin = first;
    while (begin <= last && !line.stroke(begin).span().end().isAfter(hairpin.span().start())) {
      begin++;
    }
    int end = last;
    while (end >= first && !line.stroke(end).onset().isBefore(hairpin.span().end())) {
      end--;
    }
    if (end == last && end > begin && hasArrival()) {
      end--;
    }
    boolean isShort = end == begin && line.stroke(begin).length().compareTo(LONG_NOTE) < 0;
    if (end < begin || isShort) {
      return;
    }
    swells.add(
        new Swell(
            new Span(line.stroke(begin).onset(), endOf(end)),
            line.stroke(end).onset(),
            hairpin.louder(),
            hairpin.words(),
            hairpin.dashed()));
  }

  /** Where what is written of a stroke in its own bar ends. */
  private Position endOf(int index) {
    Stroke stroke = passage.strokes().get(index - first);
    Position end = stroke.span().end();
    if (index < last && line.stroke(index + 1).onset().isBefore(end)) {
      end = line.stroke(index + 1).onset();
    }
    Position bar = line.bars().at(stroke.onset()).span().end();
    return bar.isBefore(end) ? bar : end;
  }
}
