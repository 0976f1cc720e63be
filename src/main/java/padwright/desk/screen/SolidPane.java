package padwright.desk.screen;

import javafx.scene.layout.Region;

final class SolidPane extends Region {
  void setDark(boolean b) {}

  void show(padwright.desk.solid.Solid s) {}
}
