package stafette.score;

import java.util.Optional;
import stafette.time.Position;

/**
 * Words that stand in a part: "pizz.", "a 2", "muta in Piccolo".
 *
 * @param at where
 * @param staff counted from 1
 * @param voice for which voice alone, if that is said
 * @param text as printed
 */
public record Words(Position at, int staff, Optional<String> voice, String text) {
  /** Whether they say in what character notes are played: "sempre stacc.", "leggiero". */
  public boolean areForCharacter() {
    return CharacterWords.are(text);
  }
}
