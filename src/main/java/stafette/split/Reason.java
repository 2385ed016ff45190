package stafette.split;

import java.util.Optional;
import stafette.score.Place;
import stafette.words.Sentence;

/**
 * Why there is no plan.
 *
 * @param place where it fails, if that is one place
 * @param text a sentence that names the limit and ends with what to try
 */
public record Reason(Optional<Place> place, Sentence text) {}
