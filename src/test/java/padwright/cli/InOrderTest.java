package padwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import padwright.output.InOrder;

class InOrderTest {
  @ParameterizedTest
  @ValueSource(ints = {0, 1, 5, 200})
  void resultsComeInTheOrderOfTheItems(int count) throws Exception {
    List<Integer> items = IntStream.range(0, count).boxed().toList();
    List<Integer> taken = new ArrayList<>();
    InOrder.each(
        items,
        i -> {
          // The first take longest, so that later ones are ready before them.
          Thread.sleep(Math.max(0, 20 - i));
          return i;
        },
        taken::add);
    assertThat(taken).isEqualTo(items);
  }

  @ParameterizedTest
  @ValueSource(ints = {5, 200})
  void firstFailureInOrderIsThrownWhenAllWorkHasEnded(int count) {
    List<Integer> items = IntStream.range(0, count).boxed().toList();
    List<Integer> taken = new ArrayList<>();
    AtomicInteger going = new AtomicInteger();
    assertThatThrownBy(
            () ->
                InOrder.each(
                    items,
                    i -> {
                      going.incrementAndGet();
                      try {
                        if (i >= 3) {
                          Thread.sleep(i == 3 ? 20 : 1);
                          throw new IOException("item " + i);
                        }
                        return i;
                      } finally {
                        going.decrementAndGet();
                      }
                    },
                    taken::add))
        .isInstanceOf(IOException.class)
        .hasMessage("item 3");
    assertThat(taken).containsExactly(0, 1, 2);
    assertThat(going).hasValue(0);
  }
}
