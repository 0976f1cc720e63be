package padwright.desk.screen;

import javafx.scene.layout.Region;
import padwright.desk.model.Desk;

final class StapleGaugePane extends Region {
  StapleGaugePane(Desk d) {}

  void setDark(boolean b) {}
}
