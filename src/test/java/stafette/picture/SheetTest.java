package stafette.picture;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import stafette.check.Judge;
import stafette.check.TempoWindow;
import stafette.picture.sheet.Sheet;
import stafette.picture.sheet.SheetContent;
import stafette.plan.Hocket;
import stafette.plan.Plan;

class SheetTest {
  public static void main(String[] a) throws IOException {
    write("long", InventedRelays.rotation(200, 8, 3), Paper.A4);
    write("beats", InventedRelays.rotation(40, 2, 1), Paper.LETTER);
    write("hocket", InventedRelays.hocket(Hocket.GROUP), Paper.LETTER);
    write("doubled", InventedRelays.doubled(), Paper.A4);
    for (int s = 0; s < 6; s++) write("mixed" + s, MixedRelays.any(s), Paper.A4);
  }
  static void write(String n, Plan p, Paper paper) throws IOException {
    long t = System.nanoTime();
    var d = Sheet.of(new SheetContent(p, Judge.judge(p), TempoWindow.of(p), Optional.of("A Title"), LocalDate.of(2026, 11, 25)), paper);
    System.out.println(n + " " + d.size() + " pages " + (System.nanoTime() - t) / 1e6 + " ms");
    Files.write(Path.of("/tmp/sheets/" + n + ".pdf"), PdfInk.pdf(d, "t"));
  }
}
