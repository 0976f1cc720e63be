package padwright.desk.screen;

import javafx.scene.layout.Region;
import padwright.desk.model.Desk;

final class SectionPane extends Region {
  SectionPane(Desk d) {}

  void setDark(boolean b) {}

  void focusField(String s) {}
}
