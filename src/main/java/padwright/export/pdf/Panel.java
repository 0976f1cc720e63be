package padwright.export.pdf;

import java.io.IOException;

/** Something of a known size that is placed on a sheet; draws from its lower left corner. mm. */
interface Panel {
  double width();

  double height();

  void draw(PdfPainter p) throws IOException;
}
