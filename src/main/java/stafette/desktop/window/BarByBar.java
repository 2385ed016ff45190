package stafette.desktop.window;

import java.util.ArrayList;
import java.util.List;
import stafette.desktop.texts.Texts;
import stafette.time.Bar;
import stafette.work.ChangedPart;

/** What writing changes, bar by bar, before and after; bars in a row that change alike together. */
final class BarByBar {
  private final Texts texts;

  BarByBar(Texts texts) {
    this.texts = texts;
  }

  List<String> lines(List<ChangedPart> parts) {
    return parts.stream().flatMap(part -> lines(part).stream()).toList();
  }

  private List<String> lines(ChangedPart part) {
    List<String> lines = new ArrayList<>();
    int from = 0;
    for (int to = 1; to <= part.bars().size(); to++) {
      if (to == part.bars().size() || !goesOn(part, to)) {
        lines.add(line(part, part.bars().get(from), part.bars().get(to - 1)));
        from = to;
      }
    }
    return lines;
  }

  private static boolean goesOn(ChangedPart part, int at) {
    Bar before = part.bars().get(at - 1);
    Bar bar = part.bars().get(at);
    return before.span().end().equals(bar.span().start())
        && part.strokesBefore(before) == part.strokesBefore(bar)
        && part.strokesAfter(before) == part.strokesAfter(bar);
  }

  private String line(ChangedPart part, Bar first, Bar last) {
    String after = notes(part.strokesAfter(first));
    String before = notes(part.strokesBefore(first));
    return first.equals(last)
        ? texts.get("write.bar", part.name(), first.number(), after, before)
        : texts.get("write.bars", part.name(), first.number(), last.number(), after, before);
  }

  private String notes(int count) {
    return texts.get("write.notes", count);
  }
}
