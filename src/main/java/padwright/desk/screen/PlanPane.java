package padwright.desk.screen;

import javafx.scene.layout.Region;
import padwright.desk.model.Desk;

final class PlanPane extends Region {
  PlanPane(Desk d) {}

  void setDark(boolean b) {}

  void focusField(String s) {}
}
