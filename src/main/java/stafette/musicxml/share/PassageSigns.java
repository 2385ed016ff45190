package stafette.musicxml.share;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stafette.musicxml.share.Sign.SignKind;
import stafette.plan.LevelSteps;
import stafette.score.Dynamic;
import stafette.score.Expression;
import stafette.score.Hairpin;
import stafette.score.Line;
import stafette.score.Stroke;
import stafette.score.Words;
import stafette.time.Length;
import stafette.time.Position;
import stafette.time.Span;

/**
 * What stands beside the notes of one passage: its dynamics, hairpins and words for its character.
 *
 * <p>A hairpin that goes on where another player takes over is divided: who leaves arrives at the
 * dynamic that it has reached there, who enters begins with it, and has the rest and the goal.
 */
final class PassageSigns {
  /** One note alone bears a hairpin only if it is long. */
  private static final Length LONG_NOTE = Length.ofQuarters(2, 1);

  private final Line line;
  private final int first;
  private final int last;
  private final WrittenPassage passage;
  private final Expression expression;
  private final List<Sign> signs = new ArrayList<>();

  private PassageSigns(WrittenPassage passage) {
    this.passage = passage;
    this.line = passage.line();
    this.first = passage.played().first();
    this.last = passage.played().last();
    this.expression = line.expression();
  }

  /**
   * The signs of a passage, by what they are and then by place.
   *
   * @param said the words for its character that the player was told before, if any
   */
  static List<Sign> of(WrittenPassage passage, Optional<Words> said) {
    PassageSigns all = new PassageSigns(passage);
    all.character(said);
    all.dynamics();
    all.expression.hairpins().forEach(all::swell);
    passage
        .shaded()
        .fadesFrom(passage.strokes().size())
        .ifPresent(from -> all.fade(all.first + from));
    return all.signs;
  }

  private void character(Optional<Words> said) {
    Optional<Words> known = said;
    for (int j = first; j <= last; j++) {
      Optional<Words> now = expression.wordsAt(line.stroke(j).onset());
      if (now.isPresent() && !now.map(Words::text).equals(known.map(Words::text))) {
        signs.add(Sign.character(line.stroke(j).onset(), now.get().text()));
        known = now;
      }
    }
  }

  private void dynamics() {
    Dynamic reached = reached(first);
    int full = first + passage.shaded().entering();
    boolean isShaded = full > first && full <= last;
    add(first, isShaded ? LevelSteps.softer(reached, 1) : reached);
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

  private boolean isArrival(Sign sign) {
    return sign.kind() == SignKind.DYNAMIC && sign.at().equals(line.stroke(last).onset());
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
    signs.add(Sign.of(line.stroke(index).onset(), LevelSteps.softer(dynamic, passage.softer())));
  }

  /** Who leaves fades where others play along for long, unless the line has a hairpin there. */
  private void fade(int from) {
    Span swell = new Span(line.stroke(from).onset(), endOf(last));
    if (expression.hairpins().stream().noneMatch(hairpin -> hairpin.span().overlaps(swell))) {
      signs.add(Sign.begins(SignKind.SOFTER, swell.start(), "", swell));
      signs.add(Sign.ends(SignKind.WEDGE_STOP, line.stroke(last).onset(), swell));
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

  private void swell(Hairpin hairpin) {
    int begin = first;
    while (begin <= last && !line.stroke(begin).span().end().isAfter(hairpin.span().start())) {
      begin++;
    }
    int end = last;
    while (end >= first && !line.stroke(end).onset().isBefore(hairpin.span().end())) {
      end--;
    }
    if (end == last && end > begin && signs.stream().anyMatch(this::isArrival)) {
      end--;
    }
    boolean isShort = end == begin && line.stroke(begin).length().compareTo(LONG_NOTE) < 0;
    if (end < begin || isShort) {
      return;
    }
    Position from = line.stroke(begin).onset();
    Position note = line.stroke(end).onset();
    Span swell = new Span(from, endOf(end));
    if (hairpin.words().isPresent()) {
      signs.add(Sign.begins(SignKind.SWELL_WORDS, from, hairpin.words().get(), swell));
    } else {
      signs.add(Sign.begins(hairpin.louder() ? SignKind.LOUDER : SignKind.SOFTER, from, "", swell));
      signs.add(Sign.ends(SignKind.WEDGE_STOP, note, swell));
    }
    if (hairpin.dashed()) {
      signs.add(Sign.begins(SignKind.DASHES, from, "", swell));
      signs.add(Sign.ends(SignKind.DASHES_STOP, note, swell));
    }
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
