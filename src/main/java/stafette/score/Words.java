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
public record Words(Position at, int staff, Optional<String> voice, String text) {}
