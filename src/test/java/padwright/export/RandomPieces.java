package padwright.export;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import padwright.pattern.PatternPiece;

/** Seeded random pieces: rests 40 mm wide, circles, covers, up to 1.5 m. */
final class RandomPieces {
  static final long SEED = 20_260_314L;

  private RandomPieces() {}

  static List<PatternPiece> some(int count) {
    Random random = new Random(SEED);
    List<PatternPiece> list = new ArrayList<>();
    list.add(Pieces.base(400, 40, 20));
    list.add(Pieces.base(40, 400, 20));
    list.add(Pieces.base(60, 60, 20));
    list.add(Pieces.base(1500, 700, 25));
    list.add(Pieces.cover(1500, 600, 90, true));
    list.add(Pieces.round(1500, 300, true));
    while (list.size() < count) {
      double a = 40 + random.nextDouble() * random.nextDouble() * 1460;
      double b = 40 + random.nextDouble() * random.nextDouble() * 900;
      double spacing = 12 + 15 * random.nextDouble();
      list.add(
          switch (random.nextInt(5)) {
            case 0 -> Pieces.base(a, b, spacing);
            case 1 -> Pieces.base(b, a, spacing);
            case 2 -> Pieces.cover(a, b, 35 + 80 * random.nextDouble(), random.nextBoolean());
            case 3 ->
                Pieces.round(
                    Math.max(a, 70), (int) (Math.max(a, 70) * 3.1 / spacing / 1.4), a > 200);
            default -> Pieces.base(a, 40, spacing);
          });
    }
    return list;
  }
}
