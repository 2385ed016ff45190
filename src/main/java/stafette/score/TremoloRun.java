package stafette.score;

/**
 * Notes of one voice in a row that are tremolo, read alike.
 *
 * @param part the part's id
 * @param partName its name
 * @param staff counted from 1
 * @param voice the voice's name
 * @param firstBar index of the bar in which it begins
 * @param lastBar index of the bar in which its last note begins
 * @param reading how they are read
 */
public record TremoloRun(
    String part,
    String partName,
    int staff,
    String voice,
    int firstBar,
    int lastBar,
    TremoloReading reading) {}
