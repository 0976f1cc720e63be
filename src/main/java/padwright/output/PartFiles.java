package padwright.output;

import java.io.IOException;
import java.io.OutputStream;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import padwright.design.Job;
import padwright.design.PaddedPart;
import padwright.export.CornerDiagram;
import padwright.export.Drawing;
import padwright.export.NamedDrawing;
import padwright.export.PartHeader;
import padwright.export.PartSections;
import padwright.export.PieceDrawing;
import padwright.export.PieceFiles;
import padwright.export.SvgWriter;
import padwright.export.WrapMap;
import padwright.export.pdf.PartPdf;
import padwright.export.pdf.PrintCorrection;
import padwright.material.Paper;
import padwright.pattern.PartResult;
import padwright.pattern.PatternPiece;
import padwright.pattern.PatternSet;

/**
 * The files of a job: for each part a folder named after its id, in it the PDF to print, one SVG a
 * piece, one more for the other hand where that differs, the section, the map of the wrap proof,
 * and one a different corner.
 */
public final class PartFiles {
  private static final String SVG = "svg";

  private final Job job;
  private final LocalDate day;
  private final Paper paper;
  private final PrintCorrection correction;
  private final boolean pdf;

  public PartFiles(Job job, LocalDate day, Paper paper, PrintCorrection correction, boolean pdf) {
    // The day is printed on everything, whether the job named it or not.
    this.job =
        new Job(job.title(), job.client(), Optional.of(day.toString()), job.units(), job.parts());
    this.day = day;
    this.paper = paper;
    this.correction = correction;
    this.pdf = pdf;
  }

  /** Writes the files of one part; returns how many. */
  public int write(OutputFolder out, PartResult result) throws IOException {
    PartHeader header = header(result.asked());
    String folder = result.asked().id() + "/";
    PieceFiles names = new PieceFiles();
    int count = 0;
    for (PatternPiece piece : result.pieces()) {
      svg(out, folder + names.unique("", piece.id(), SVG), PieceDrawing.of(header, piece));
      count++;
      Optional<Drawing> mirrored = PieceDrawing.mirroredHand(header, piece);
      if (mirrored.isPresent()) {
        svg(out, folder + names.unique(piece.id(), "mirrored", SVG), mirrored.get());
        count++;
      }
    }
    for (NamedDrawing section : PartSections.all(header, result)) {
      svg(out, folder + names.unique("", section.name(), SVG), section.drawing());
      count++;
    }
    svg(out, folder + names.unique("", "wrap-map", SVG), WrapMap.of(header, result));
    count++;
    for (NamedDrawing corner : CornerDiagram.all(header, result)) {
      svg(out, folder + names.unique("", corner.name(), SVG), corner.drawing());
      count++;
    }
    if (pdf) {
      try (OutputStream to = out.open(folder + result.asked().id() + ".pdf")) {
        PartPdf.write(new PatternSet(job, List.of(result)), result, paper, correction, day, to);
      }
      count++;
    }
    return count;
  }

  private PartHeader header(PaddedPart part) {
    return new PartHeader(
        job.title(),
        part.name(),
        part.id(),
        part.quantity(),
        part.mirrored(),
        day.toString(),
        job.units());
  }

  private static void svg(OutputFolder out, String name, Drawing drawing) throws IOException {
    out.write(name, SvgWriter.write(drawing));
  }
}
