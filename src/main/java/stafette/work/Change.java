package stafette.work;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import stafette.ask.PlayerWish;
import stafette.check.alone.Thinning;
import stafette.limits.Instrument;
import stafette.plan.Hocket;
import stafette.plan.OverlapRule;
import stafette.score.Slurring;
import stafette.time.TempoMark;
import stafette.words.Sayable;
import stafette.words.Sentence;

/** What a remedy changes; said as a condition, "with overlaps of 1 to 3 notes". */
public sealed interface Change extends Sayable {
  /** Asks what is asked of the kind at hand. */
  <T> T match(ChangeKinds<T> kinds);

  /** What is asked of each kind. */
  interface ChangeKinds<T> {
    T tempo(Tempo change);

    T technique(AllowedTechnique change);

    T overlap(Overlap change);

    T rest(Readiness change);

    T turns(Turns change);

    T players(Players change);

    T slurred(Slurred change);

    T anyTurns(AnyTurns change);

    T divided(Divided change);

    T shaken(Shaken change);

    T thinned(Thinned change);
  }

  /** Another tempo at the line's start. */
  record Tempo(TempoMark mark, TempoMark present) implements Change {
    @Override
    public <T> T match(ChangeKinds<T> kinds) {
      return kinds.tempo(this);
    }

    @Override
    public Sentence inWords() {
      return Sentence.of("at {0}, now {1}", mark, present);
    }
  }

  /** A technique that not everybody has, allowed to all who can. */
  record AllowedTechnique(String name) implements Change {
    @Override
    public <T> T match(ChangeKinds<T> kinds) {
      return kinds.technique(this);
    }

    @Override
    public Sentence inWords() {
      return Sentence.of("with {0} by all who can", Sentence.name(name));
    }
  }

  /** Other overlaps. */
  record Overlap(OverlapRule rule) implements Change {
    @Override
    public <T> T match(ChangeKinds<T> kinds) {
      return kinds.overlap(this);
    }

    @Override
    public Sentence inWords() {
      return rule.max().isPresent()
          ? Sentence.of("with overlaps of {0} to {1} notes", rule.min(), rule.max().getAsInt())
          : Sentence.of("with overlaps of {0} to a beat of notes", rule.min());
    }
  }

  /** A shorter rest before entries. */
  record Readiness(BigDecimal seconds) implements Change {
    @Override
    public <T> T match(ChangeKinds<T> kinds) {
      return kinds.rest(this);
    }

    @Override
    public Sentence inWords() {
      return Sentence.of(
          "with {0} seconds of rest before entries (winds at least catch breath)", seconds);
    }
  }

  /** Pairs that take turns. */
  record Turns(Hocket by) implements Change {
    @Override
    public <T> T match(ChangeKinds<T> kinds) {
      return kinds.turns(this);
    }

    @Override
    public Sentence inWords() {
      return Sentence.of(
          "with pairs who take turns by the {0}",
          Sentence.name(by.name().toLowerCase(Locale.ROOT)));
    }
  }

  /** Turns of any length and in any order, where a regular rotation was asked for. */
  record AnyTurns() implements Change {
    @Override
    public <T> T match(ChangeKinds<T> kinds) {
      return kinds.anyTurns(this);
    }

    @Override
    public Sentence inWords() {
      return Sentence.of("with turns of any length");
    }
  }

  /** More players, all of one instrument. */
  record Players(Instrument instrument, List<PlayerWish> more) implements Change {
    public Players {
      more = List.copyOf(more);
    }

    @Override
    public <T> T match(ChangeKinds<T> kinds) {
      return kinds.players(this);
    }

    @Override
    public Sentence inWords() {
      return more.size() == 1
          ? Sentence.of("with 1 more {0}", instrument)
          : Sentence.of("with {0} more {1} players", more.size(), instrument);
    }
  }

  /** New slurs where the pitch changes. */
  record Slurred(Slurring how) implements Change {
    @Override
    public <T> T match(ChangeKinds<T> kinds) {
      return kinds.slurred(this);
    }

    @Override
    public Sentence inWords() {
      return switch (how) {
        case AS_WRITTEN -> Sentence.of("with no slurs but those of the score");
        case TWO_AND_TWO ->
            Sentence.of("with two notes slurred and two tongued, where the pitch changes");
        case PAIRS -> Sentence.of("with slurs in pairs where the pitch changes");
        case FOURS -> Sentence.of("with slurs in fours where the pitch changes");
      };
    }
  }

  /**
   * A section whose outside and inside players play in turn.
   *
   * @param whole the section
   * @param halves what stands in its place
   */
  record Divided(PlayerWish whole, PlayerWish halves, List<PlayerWish> each) implements Change {
    public Divided {
      each = List.copyOf(each);
    }

    @Override
    public <T> T match(ChangeKinds<T> kinds) {
      return kinds.divided(this);
    }

    @Override
    public Sentence inWords() {
      return Sentence.of("with {0} divided, in turn and half as loud", whole.name());
    }
  }

  /** Slashes read as tremolo that nobody counts. */
  record Shaken() implements Change {
    @Override
    public <T> T match(ChangeKinds<T> kinds) {
      return kinds.shaken(this);
    }

    @Override
    public Sentence inWords() {
      return Sentence.of("with the bows' tremolo unmeasured");
    }
  }

  /** Notes left out. */
  record Thinned(Thinning pattern) implements Change {
    @Override
    public <T> T match(ChangeKinds<T> kinds) {
      return kinds.thinned(this);
    }

    @Override
    public Sentence inWords() {
      return Sentence.name("with the whole line thinned, " + pattern.text());
    }
  }
}
