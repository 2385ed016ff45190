package stafette.musicxml.share;

import java.util.ArrayList;
import java.util.List;
import stafette.musicxml.share.Sign.SignKind;
import stafette.plan.written.PassageMarks;
import stafette.plan.written.PassageMarks.Swell;

/** What stands beside the notes of a passage, as signs of a file. */
final class PassageSigns {
  private PassageSigns() {}

  /** The signs by what they are and then by place. */
  static List<Sign> of(PassageMarks marks) {
    List<Sign> signs = new ArrayList<>();
    marks.characters().forEach(mark -> signs.add(Sign.character(mark.at(), mark.text())));
    marks.dynamics().forEach(mark -> signs.add(Sign.of(mark.at(), mark.dynamic())));
    marks.swells().forEach(swell -> add(swell, signs));
    return signs;
  }

  private static void add(Swell swell, List<Sign> signs) {
    if (swell.words().isPresent()) {
      signs.add(begins(SignKind.SWELL_WORDS, swell.words().get(), swell));
    } else {
      signs.add(begins(swell.louder() ? SignKind.LOUDER : SignKind.SOFTER, "", swell));
      signs.add(Sign.ends(SignKind.WEDGE_STOP, swell.last(), swell.span()));
    }
    if (swell.dashed()) {
      signs.add(begins(SignKind.DASHES, "", swell));
      signs.add(Sign.ends(SignKind.DASHES_STOP, swell.last(), swell.span()));
    }
  }

  private static Sign begins(SignKind kind, String text, Swell swell) {
    return Sign.begins(kind, swell.span().start(), text, swell.span());
  }
}
