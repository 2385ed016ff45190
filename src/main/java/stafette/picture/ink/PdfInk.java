package stafette.picture.ink;

import java.awt.Color;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** Writes drawings as the pages of a PDF: lines and letters only, the fonts embedded. */
public final class PdfInk implements Mark.Hand {
  private final PDPageContentStream page;
  private final double height;
  private final Fonts fonts;

  private PdfInk(PDPageContentStream page, double height, Fonts fonts) {
    this.page = page;
    this.height = height;
    this.fonts = fonts;
  }

  /**
   * The document; the same drawings give the same bytes.
   *
   * @param title for the reader's window
   * @param creator the program that draws, with its version
   */
  public static byte[] pdf(List<Drawing> pages, String title, String creator) {
    try (PDDocument document = new PDDocument();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
      document.setDocumentId(1L);
      document.getDocumentInformation().setTitle(title);
      document.getDocumentInformation().setCreator(creator);
      Fonts fonts = new Fonts(document);
      for (Drawing drawing : pages) {
        add(document, drawing, fonts);
      }
      document.save(bytes);
      return bytes.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void add(PDDocument document, Drawing drawing, Fonts fonts) throws IOException {
    PDPage page = new PDPage(new PDRectangle((float) drawing.width(), (float) drawing.height()));
    document.addPage(page);
    try (PDPageContentStream stream = new PDPageContentStream(document, page)) {
      PdfInk ink = new PdfInk(stream, drawing.height(), fonts);
      drawing.marks().forEach(mark -> mark.show(ink));
    }
  }

  @Override
  public void fill(Mark.Fill fill) {
    on(
        page -> {
          page.setNonStrokingColor(new Color(fill.ink().rgb()));
          fill.path().trace(new PdfSteps(page, height));
          page.fill();
        });
  }

  @Override
  public void stroke(Mark.Outline stroke) {
    on(
        page -> {
          page.setStrokingColor(new Color(stroke.ink().rgb()));
          page.setLineWidth((float) stroke.width());
          stroke.path().trace(new PdfSteps(page, height));
          page.stroke();
        });
  }

  @Override
  public void words(Mark.Lettering words) {
    on(
        page -> {
          page.setNonStrokingColor(new Color(words.ink().rgb()));
          page.beginText();
          page.setFont(fonts.of(words.face()), (float) words.size());
          page.newLineAtOffset((float) words.x(), (float) (height - words.y()));
          page.showText(words.face().writable(words.text()));
          page.endText();
        });
  }

  @Override
  public void group(Mark.MarkGroup group) {
    group.marks().forEach(mark -> mark.show(this));
  }

  private void on(PdfWriting writing) {
    writing.to(page);
  }

  /** Something written to a page in memory, where reading and writing can't fail. */
  private interface PdfWriting {
    void write(PDPageContentStream page) throws IOException;

    default void to(PDPageContentStream page) {
      try {
        write(page);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  /** The fonts that a document uses, each loaded when it is first needed. */
  private static final class Fonts {
    private final PDDocument document;
    private final Map<Face, PDFont> loaded = new HashMap<>();

    Fonts(PDDocument document) {
      this.document = document;
    }

    PDFont of(Face face) throws IOException {
      PDFont known = loaded.get(face);
      if (known != null) {
        return known;
      }
      try (InputStream file = face.open()) {
        PDFont font = PDType0Font.load(document, file, true);
        loaded.put(face, font);
        return font;
      }
    }
  }

  private record PdfSteps(PDPageContentStream page, double height) implements Path.Tracer {
    @Override
    public void move(double x, double y) {
      step(p -> p.moveTo((float) x, (float) (height - y)));
    }

    @Override
    public void line(double x, double y) {
      step(p -> p.lineTo((float) x, (float) (height - y)));
    }

    @Override
    public void curve(double x1, double y1, double x2, double y2, double x, double y) {
      step(
          p ->
              p.curveTo(
                  (float) x1,
                  (float) (height - y1),
                  (float) x2,
                  (float) (height - y2),
                  (float) x,
                  (float) (height - y)));
    }

    @Override
    public void close() {
      step(PDPageContentStream::closePath);
    }

    private void step(PdfWriting writing) {
      writing.to(page);
    }
  }
}
