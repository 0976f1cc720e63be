package padwright.export;

import java.util.List;
import padwright.export.Drawing.Item;

/** Something of a fixed size that can be put anywhere on a sheet: a block of notes, an arrow. */
interface Patch {
  double width();

  double height();

  /** What it draws when it fills {@code box}, which has its size and any place and angle. */
  List<Item> drawn(Box box);
}
