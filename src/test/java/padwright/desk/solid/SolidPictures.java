package padwright.desk.solid;

import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;
import padwright.pattern.PartResult;

/** Paints every part of the demo to {@code target/solid}, to be looked at. */
final class SolidPictures {
  private static final int WIDE = 600;
  private static final int HIGH = 400;

  private SolidPictures() {}

  public static void main(String[] args) throws IOException {
    File folder = new File("target/solid");
    folder.mkdirs();
    int number = 0;
    for (PartResult part : args.length == 0 ? SolidParts.demo() : SolidParts.unusual()) {
      number++;
      Solid solid = Solid.of(part);
      Opening opening = Opening.of(solid);
      System.out.println(solid.name() + ": " + solid.bodies());
      BufferedImage sheet = new BufferedImage(2 * WIDE, 3 * HIGH, BufferedImage.TYPE_INT_ARGB);
      int half = opening.steps() / 2;
      var shots =
          List.of(
              Map.entry(0, Camera.View.CORNER),
              Map.entry(half, Camera.View.CORNER),
              Map.entry(opening.steps() - 1, Camera.View.CORNER),
              Map.entry(0, Camera.View.BACK_CORNER),
              Map.entry(opening.steps() - 1, Camera.View.FRONT),
              Map.entry(1, Camera.View.BACK_CORNER));
      for (int i = 0; i < shots.size(); i++) {
        Camera camera = Camera.of(shots.get(i).getValue()).fitted(solid, WIDE, HIGH);
        Palette palette = i == 2 || i == 5 ? Palette.dark() : Palette.light();
        SolidPainter painter = new SolidPainter();
        long best = Long.MAX_VALUE;
        int[] pixels = {};
        for (int k = 0; k < 10; k++) {
          long start = System.nanoTime();
          pixels =
              painter.paint(solid, opening.at(shots.get(i).getKey()), camera, palette, WIDE, HIGH);
          best = Math.min(best, System.nanoTime() - start);
        }
        System.out.println(
            "  "
                + opening.at(shots.get(i).getKey()).words()
                + " "
                + camera.words()
                + " "
                + best / 1000
                + " us");
        sheet.setRGB(i % 2 * WIDE, i / 2 * HIGH, WIDE, HIGH, pixels, 0, WIDE);
      }
      ImageIO.write(
          sheet,
          "png",
          new File(folder, (args.length == 0 ? part.asked().id() : "unusual-" + number) + ".png"));
    }
  }
}
