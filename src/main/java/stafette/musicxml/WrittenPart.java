package stafette.musicxml;

import java.util.List;

/**
 * One part as it is written.
 *
 * @param id as in the file, may be empty
 * @param listed what the part-list says about it
 * @param whole the whole element
 * @param measures in order
 */
record WrittenPart(
    String id, PartList.Entry listed, TextSpan whole, List<WrittenMeasure> measures) {}
