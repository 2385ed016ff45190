package stafette.musicxml.read;

import java.util.List;
import stafette.musicxml.text.TextSpan;

/**
 * One part as it is written.
 *
 * @param id as in the file, may be empty
 * @param listed what the part-list says about it
 * @param whole the whole element
 * @param measures in order
 */
record WrittenPart(
    String id, PartList.ListedPart listed, TextSpan whole, List<WrittenMeasure> measures) {}
