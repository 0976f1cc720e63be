package padwright.desk.model;

import java.util.Optional;
import java.util.OptionalDouble;
import padwright.design.Assumption;
import padwright.design.PadSpec;
import padwright.design.WrappedPad;
import padwright.desk.edit.PartEdit;
import padwright.desk.edit.PartField;
import padwright.desk.edit.TypedLength;
import padwright.measure.InputRefused;
import padwright.measure.LengthUnit;
import padwright.pattern.PartResult;

/** What the fields of a part hold, asked for or taken. */
final class FieldValues {
  private final PartEdit edit;
  private final WrappedPad pad;
  private final Optional<PartResult> result;

  FieldValues(PartEdit edit, WrappedPad pad, Optional<PartResult> result) {
    this.edit = edit;
    this.pad = pad;
    this.result = result;
  }

  Optional<Double> value(PartField field) {
    String text = edit.shown(pad, field);
    if (text.isEmpty()) {
      return taken(field.place()).stream().boxed().findFirst();
    }
    try {
      return switch (field.kind()) {
        case LENGTH -> Optional.of(TypedLength.parse(text, edit.plain()));
        case PERCENT, COUNT, NUMBER -> Optional.of(Double.valueOf(text));
        case CHOICE, WORDS, FLAG -> Optional.empty();
      };
    } catch (InputRefused | NumberFormatException none) {
      return Optional.empty();
    }
  }

  /** The words of the default taken for a field that is left empty; else empty. */
  String taken(PartField field) {
    if (!edit.shown(pad, field).isEmpty() || result.isEmpty()) {
      return "";
    }
    OptionalDouble mm = taken(field.place());
    if (mm.isPresent() && field.kind() == PartField.Kind.LENGTH) {
      return PartEdit.shown(mm.getAsDouble(), edit.plain() == LengthUnit.MM);
    }
    return result.get().spec().assumptions().stream()
        .filter(a -> a.field().equals(field.place()))
        .map(Assumption::value)
        .findFirst()
        .orElse("");
  }

  private OptionalDouble taken(String place) {
    if (result.isEmpty()) {
      return OptionalDouble.empty();
    }
    PadSpec spec = result.get().spec();
    if (place.startsWith("foam[") && place.endsWith(".overhang")) {
      int layer = Integer.parseInt(place.replaceAll("\\D", ""));
      return layer < spec.foam().size()
          ? OptionalDouble.of(spec.foam().get(layer).overhang())
          : OptionalDouble.empty();
    }
    return switch (place) {
      case "cover.thickness" -> OptionalDouble.of(spec.coverThickness());
      case "cover.turnUnder" -> OptionalDouble.of(spec.turnUnder());
      case "cover.grip" -> OptionalDouble.of(spec.grip());
      case "cover.stretchAllowance.along", "cover.stretchAllowance.across", "base.backArris" ->
          OptionalDouble.of(0);
      case "base.measured" -> OptionalDouble.of(spec.boardThickness());
      case "base.clearance" -> OptionalDouble.of(spec.clearance());
      case "base.outline.rectangle.radius" -> OptionalDouble.of(0);
      case "wadding.thickness" -> OptionalDouble.of(spec.waddingThickness());
      case "corners.reliefStop" -> OptionalDouble.of(spec.reliefStop());
      case "corners.pleatDepth" -> OptionalDouble.of(spec.pleatDepth());
      case "staples.spacing" -> OptionalDouble.of(spec.spacing());
      case "staples.edgeDistance" -> OptionalDouble.of(spec.edgeDistance());
      case "staples.leg" -> OptionalDouble.of(result.get().staples().leg());
      case "dustCover.inset" -> OptionalDouble.of(spec.dustCoverInset());
      case "dustCover.turn" -> OptionalDouble.of(spec.dustCoverTurn());
      case "mirrored" -> OptionalDouble.of(0);
      default -> OptionalDouble.empty();
    };
  }
}
