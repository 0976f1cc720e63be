package padwright.desk.model;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import padwright.design.Job;
import padwright.design.PaddedPart;
import padwright.design.Units;
import padwright.desk.edit.PartEdit;
import padwright.desk.solid.Solid;
import padwright.export.CornerDiagram;
import padwright.export.Drawing;
import padwright.export.NamedDrawing;
import padwright.export.PartHeader;
import padwright.export.PartSections;
import padwright.export.PieceDrawing;
import padwright.export.WrapMap;
import padwright.jobfile.JobReader;
import padwright.material.Catalogue;
import padwright.pattern.PartResult;
import padwright.pattern.PatternPiece;

/** Makes what is shown of a part from what the engine said. Runs on the working thread. */
final class BenchMaker {
  private final Catalogue catalogue;
  private final EngineRoom room;
  private final JobReader reader;

  BenchMaker(Catalogue catalogue, EngineRoom room, JobReader reader) {
    this.catalogue = catalogue;
    this.room = room;
    this.reader = reader;
  }

  /**
   * What is wanted.
   *
   * @param picture name of a picture that is drawn on request; empty for none
   * @param before what was shown of the same part until now
   */
  record Wish(Edition edition, String picture, Bench before) {}

  Bench of(PartAnswer answer, Wish wish) {
    if (answer.result().isEmpty()) {
      return last(answer, wish.before(), answer.fault());
    }
    try {
      return made(answer, wish);
    } catch (RuntimeException | StackOverflowError | AssertionError e) {
      return last(answer, wish.before(), Optional.of(room.faulted(e)));
    }
  }

  /** The last good result, and why it is not that of the part as it is. */
  private static Bench last(PartAnswer answer, Bench before, Optional<String> fault) {
    return new Bench(
        answer.asked(),
        before.result(),
        true,
        answer.refusal(),
        fault,
        before.drawings(),
        before.picture(),
        before.solid(),
        before.findings());
  }

  private Bench made(PartAnswer answer, Wish wish) {
    PartResult result = answer.result().get();
    PartHeader header = header(wish.edition().job(), result.asked());
    Optional<Drawing> picture =
        wish.picture().equals(Desk.WRAP_MAP)
            ? Optional.of(WrapMap.of(header, result))
            : Optional.empty();
    return new Bench(
        answer.asked(),
        Optional.of(result),
        false,
        Optional.empty(),
        Optional.empty(),
        drawings(header, result),
        picture,
        Optional.of(Solid.of(result)),
        finder(wish.edition().job().units()).rows(result));
  }

  List<FindingRow> remedies(PartResult result, Units units, BooleanSupplier stop) {
    RemedyFinder finder = finder(units);
    return finder.withRemedies(finder.rows(result), result, stop);
  }

  private RemedyFinder finder(Units units) {
    return new RemedyFinder(room, new PartEdit(reader, units), catalogue, units);
  }

  static PartHeader header(Job job, PaddedPart part) {
    String day = job.date().orElseGet(() -> LocalDate.now(ZoneId.systemDefault()).toString());
    return new PartHeader(
        job.title(), part.name(), part.id(), part.quantity(), part.mirrored(), day, job.units());
  }

  private static List<NamedDrawing> drawings(PartHeader header, PartResult result) {
    List<NamedDrawing> all = new ArrayList<>();
    for (PatternPiece piece : result.pieces()) {
      all.add(new NamedDrawing(piece.id(), PieceDrawing.of(header, piece)));
    }
    all.addAll(PartSections.all(header, result));
    all.addAll(CornerDiagram.all(header, result));
    return all;
  }
}
