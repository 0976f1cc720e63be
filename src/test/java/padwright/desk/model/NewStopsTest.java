package padwright.desk.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padwright.desk.edit.Shipped;

/** A stop is announced when it comes, once, and taken back when it goes. */
class NewStopsTest {
  @TempDir Path folder;

  private final ByHand work = new ByHand();
  private final ByHand window = new ByHand();

  private void settled() {
    do {
      work.all();
      window.all();
    } while (work.waiting() > 0);
  }

  @Test
  void aStopIsSaidWhenItComesAndNotAgain() {
    Desk desk = new Desk(Shipped.CATALOGUE, Shipped.demo(), window, work, new FaultLog(folder));
    settled();
    NewStops stops = new NewStops();
    assertThat(stops.look(desk.bench())).contains("");

    desk.type(desk.field("cover.turnUnder").orElseThrow(), "8");
    settled();
    assertThat(stops.look(desk.bench()).orElseThrow())
        .startsWith("New stop: ")
        .contains("turn-under of 8.0");
    assertThat(stops.look(desk.bench())).isEmpty();

    desk.undo();
    settled();
    assertThat(stops.look(desk.bench())).contains("");
    assertThat(stops.look(desk.bench())).isEmpty();
  }

  @Test
  void anotherPartsStopsAreNotNew() {
    Desk desk = new Desk(Shipped.CATALOGUE, Shipped.demo(), window, work, new FaultLog(folder));
    settled();
    NewStops stops = new NewStops();
    stops.look(desk.bench());
    desk.look(1);
    assertThat(stops.look(desk.bench())).isEmpty();
    settled();
    assertThat(stops.look(desk.bench())).contains("");
  }
}
