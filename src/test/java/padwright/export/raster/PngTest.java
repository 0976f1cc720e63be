package padwright.export.raster;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Random;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** Read back by the Java library's own reader of PNG. */
class PngTest {
  private static BufferedImage read(Pixels p) throws IOException {
    return ImageIO.read(new ByteArrayInputStream(Png.of(p)));
  }

  @Test
  void another_reader_finds_every_dot_as_it_was() throws IOException {
    Random random = new Random(7);
    for (int[] size : new int[][] {{1, 1}, {3, 5}, {257, 100}}) {
      int[] argb = random.ints((long) size[0] * size[1]).toArray();
      argb[0] = 0x80123456;
      BufferedImage image = read(new Pixels(size[0], size[1], argb));
      assertThat(image.getWidth()).isEqualTo(size[0]);
      assertThat(image.getHeight()).isEqualTo(size[1]);
      assertThat(image.getRGB(0, 0, size[0], size[1], null, 0, size[0])).isEqualTo(argb);
    }
  }

  @Test
  void an_opaque_picture_has_no_channel_for_opacity() throws IOException {
    int[] argb = {0xFFFF0000, 0xFF00FF00, 0xFF0000FF, 0xFFFFFFFF, 0xFF000000, 0xFF7F7F7F};
    BufferedImage image = read(new Pixels(2, 3, argb));
    assertThat(image.getColorModel().hasAlpha()).isFalse();
    assertThat(image.getRGB(0, 0, 2, 3, null, 0, 2)).isEqualTo(argb);
  }

  @Test
  void a_large_picture_comes_in_several_chunks_and_is_whole() throws IOException {
    int[] argb = new Random(11).ints(1000 * 400).map(i -> i | 0xFF000000).toArray();
    BufferedImage image = read(new Pixels(1000, 400, argb));
    assertThat(image.getRGB(0, 0, 1000, 400, null, 0, 1000)).isEqualTo(argb);
  }

  @Test
  void dots_that_do_not_fill_the_picture_are_refused() {
    assertThatThrownBy(() -> new Pixels(2, 3, new int[5]))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("2 x 3 with 5 dots");
  }
}
