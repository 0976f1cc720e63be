package padwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.ServerSocket;
import java.net.SocketTimeoutException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import padwright.measure.InputRefused;

/** Drawings made to do harm, or broken: each is refused with its line, and nothing is touched. */
class HostileSvgTest {
  private static final String RECT = "<rect width='100' height='50'/>";

  private static InputRefused refused(String text) {
    try {
      Drawings.read(text);
    } catch (InputRefused r) {
      assertThat(r.file()).isEqualTo("a.svg");
      return r;
    }
    throw new AssertionError("it was read");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
      <script>alert(1)</script>|a script
      <g><defs><script href='#a'/></defs></g>|a script
      <g onload='alert(1)'/>|an event handler, "onload"
      <g ONCLICK='alert(1)'/>|an event handler
      <image href='http://example.org/a.png'/>|points out of the file
      <image xlink:href='file:///etc/passwd' xmlns:xlink='http://www.w3.org/1999/xlink'/>|points out of the file
      <use href='other.svg#a'/>|points out of the file
      <a href='javascript:alert(1)'><rect/></a>|points out of the file
      <use xlink:href='//host/a.svg#b' xmlns:xlink='http://www.w3.org/1999/xlink'/>|points out of the file
      <image href='data:text/html,x'/>|points out of the file
      <style>@import 'a.css';</style>|imports another file
      <style>g { fill: url(http://example.org/a) }</style>|url(...)
      <g style='fill: url( "a.svg#b" )'/>|url(...)
      <g fill='URL(a.svg)'/>|url(...)
      <style>rect { transform: scale(2) }</style>|moves shapes
      <g style='transform: scale(2)'/>|given by a style
      <rect width='9' height='9' style='fill:red; width: 90px'/>|given by a style
      <g style='TRANSFORM: scale(2)'/>|given by a style
      <g style='fill:red;/* ; */transform/**/:scale(2)'/>|given by a style
      <g style='\\74ransform: scale(2)'/>|given by a style
      <rect width='9' height='9' style='zoom: 2'/>|given by a style
      <g xml:base='http://example.org/'/>|xml:base
      <?xml-stylesheet href='a.css'?>|style sheet
      """)
  void scriptsHandlersAndWaysOutOfTheFileAreRefused(String content, String problem) {
    InputRefused r = refused(Drawings.svg(content + "\n" + RECT));
    assertThat(r.problem()).contains(problem);
    assertThat(r.line()).isEqualTo(2);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
      style='width:200mm'|width is given by a style
      style='fill:none; Height: 50%'|height is given by a style
      style='transform:rotate(3deg)'|transform is given by a style
      transform='scale(2)'|by a transform of the svg element itself
      """)
  void aRootThatIsMovedOrSizedOtherwiseIsRefused(String root, String problem) {
    InputRefused r = refused(Drawings.svg("viewBox='0 0 400 300' " + root, RECT));
    assertThat(r.problem()).contains(problem);
    assertThat(r.line()).isEqualTo(1);
  }

  /** Words in a string or in another property are no sizes. */
  @Test
  void stylesThatMoveNothingAreNoMatter() {
    DrawnOutline drawn =
        Drawings.read(
            Drawings.svg(
                "width='400mm' height='300mm' viewBox='0 0 400 300'"
                    + " style='background:white; font-family:\"a;width:9\"; stroke-width:2'",
                "<g style='fill:url(#a;x:1); max-width: 3px'>" + RECT + "</g>"));
    assertThat(drawn.length()).isEqualTo(100);
  }

  @Test
  void nothingIsReadOfADrawingThatIsHiddenAsAWhole() {
    InputRefused r = refused(Drawings.svg("viewBox='0 0 400 300' display='none'", RECT));
    assertThat(r.problem()).contains("hidden");
  }

  @Test
  void documentTypesAndEntitiesAreRefusedUnread(@TempDir Path folder) throws IOException {
    Path secret = Files.writeString(folder.resolve("secret.txt"), "100");
    String bomb =
        "<!DOCTYPE svg [<!ENTITY a 'aaaaaaaaaa'><!ENTITY b '&a;&a;&a;&a;&a;&a;&a;&a;'>"
            + "<!ENTITY c '&b;&b;&b;&b;&b;&b;&b;&b;'>]>";
    String outside = "<!DOCTYPE svg [<!ENTITY w SYSTEM '" + secret.toUri() + "'>]>";
    for (String type : new String[] {"<!DOCTYPE svg>", bomb, outside}) {
      InputRefused r = refused(type + Drawings.svg("<rect width='&c;' height='50'/>"));
      assertThat(r.problem()).contains("DOCTYPE or entities");
      assertThat(r.getMessage()).doesNotContain("aaaa");
    }
    assertThat(refused(Drawings.svg("<g>&w;</g>" + RECT)).line()).isEqualTo(2);
  }

  @Test
  void noConnectionIsMade() throws IOException {
    try (ServerSocket server = new ServerSocket(0)) {
      server.setSoTimeout(200);
      AtomicBoolean called = new AtomicBoolean();
      String at = "http://localhost:" + server.getLocalPort() + "/a";
      for (String text :
          new String[] {
            "<!DOCTYPE svg SYSTEM '" + at + "'>" + Drawings.svg(RECT),
            "<!DOCTYPE svg [<!ENTITY % x SYSTEM '" + at + "'> %x;]>" + Drawings.svg(RECT),
            "<?xml-stylesheet href='" + at + "'?>" + Drawings.svg(RECT),
            Drawings.svg("<image href='" + at + "'/>" + RECT)
          }) {
        refused(text);
      }
      try {
        server.accept();
        called.set(true);
      } catch (SocketTimeoutException e) {
        // As it should be: nobody called.
      }
      assertThat(called).isFalse();
    }
  }

  @Test
  void whatOnlyPointsInsideTheFileIsLeftAndNamed() {
    DrawnOutline drawn =
        Drawings.read(
            Drawings.svg(
                "<defs><rect id='a' width='9' height='9'/></defs><use href='#a'/>"
                    + "<image href='data:image/png;base64,AAAA'/><text x='1'>note <tspan/></text>"
                    + "<g id='board' style='fill:url(#p)'>"
                    + RECT
                    + "</g><rect style='display:none' width='5' height='5'/>"
                    + "<g visibility='hidden'><circle r='4'/></g>"
                    + "<svg><circle r='4'/></svg><path d=''/><path d='M0 0L9 9' id='x'/>"
                    + "<circle r='9' transform='scale(0)'/><metadata><a>b</a></metadata>"
                    + "<n:page xmlns:n='urn:n' onset='1'/>".replace(" onset='1'", "")));
    assertThat(drawn.length()).isEqualTo(100);
    assertThat(drawn.report().read())
        .extracting(DrawingReport.Count::words)
        .containsExactly("1 rect on layer board");
    assertThat(drawn.report().left())
        .extracting(DrawingReport.Count::words)
        .containsExactlyInAnyOrder(
            "1 rect (in defs)",
            "1 use",
            "1 image",
            "1 text",
            "1 rect (hidden)",
            "1 circle (hidden)",
            "1 svg (a drawing within the drawing)",
            "1 circle (in an inner svg)",
            "1 path (draws nothing)",
            "1 path (open: an end meets no other)",
            "1 circle (flattened by its transform)");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
      <path d='M0 0L1e308 5L5 5Z'/>|too large
      <path d='M0 0L1e999 5L5 5Z'/>|too large
      <path d='M0 0LNaN 5L5 5Z'/>|a number is missing
      <path d='M0 0L5'/>|a number is missing
      <path d='L0 0L5 5'/>|does not start with M
      <path d='M0 0X5 5'/>|unknown command 'X'
      <path d='M0 0A5 5 0 2 0 5 5'/>|flag must be 0 or 1
      <path d='M0 0L0.1234567890123456789012345678901234567890123456789012345678901234567890 5L5 5Z'/>|more than 64 characters
      <rect width='1e12' height='5'/>|too large
      <rect width='5em' height='5'/>|unit is none of
      <rect width='50%' height='5'/>|unit is none of
      <rect width='-5' height='5'/>|negative
      <circle r='-5'/>|negative
      <g transform='scale(2'/>|')' is missing
      <g transform='turn(2)'/>|no transform of 1 numbers
      <g transform='matrix(1 2)'/>|no transform of 2 numbers
      <g transform='skewX(90) scale(1e10) scale(1e300)'/>|too large
      <path d='M0 0L100 100L100 0L0 100Z'/>|side 1 and side 3
      <path d='M0 0L100 0L100 50L50 0L0 50Z'/>|crosses or touches itself
      <path d='M0 0L100 0L100 50L0 50Z M50 25 L150 25 L150 30 L50 30Z'/>|two closed outlines cross
      <rect width='20000' height='5'/>|no length is over 10 m
      <rect width='0.5' height='0.5'/>|no closed outline was found
      <path d='M0 0L100 0L50 0Z'/>|no closed outline was found
      <g/>|no closed outline was found
      """)
  void shapesThatCannotBeAreRefused(String content, String problem) {
    assertThat(refused(Drawings.svg(content)).problem()).contains(problem);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<svg",
        "<svg xmlns='http://www.w3.org/2000/svg'><rect width='9' height='9'/>",
        "<svg xmlns='http://www.w3.org/2000/svg'><g></svg>",
        "<html/>",
        "<svg xmlns='urn:other'/>",
        "<",
      })
  void whatIsNotWholeSvgIsRefused(String text) {
    refused(text);
  }

  @Test
  void wrongRootSizesAreRefused() {
    for (String root :
        new String[] {
          "viewBox='0 0 0 5'",
          "viewBox='0 0 5'",
          "width='-5mm'",
          "width='0'",
          "width='5em'",
          "viewBox='0 0 5 5 5'",
          "viewBox='a'",
          "width='1e400mm'"
        }) {
      refused(Drawings.svg(root, RECT));
    }
  }

  @Test
  void everythingHasALimit() {
    String deep = "<g>".repeat(64) + RECT + "</g>".repeat(64);
    assertThat(refused(Drawings.svg(deep)).problem()).contains("64 deep");
    String many = "<desc/>".repeat(DrawingLimits.MOST_ELEMENTS);
    assertThat(refused(Drawings.svg(many)).problem()).contains("20000 elements");
    String line = "l1 1".repeat(DrawingLimits.MOST_DRAWN_POINTS + 1);
    assertThat(refused(Drawings.svg("<path d='M0 0" + line + "'/>")).problem())
        .contains("50000 points");
    StringBuilder comb = new StringBuilder("M0 0");
    for (int i = 0; i < 1000; i++) {
      comb.append("l.1 50l.1-50");
    }
    assertThat(refused(Drawings.svg("<path d='" + comb + "v-9H0Z'/>")).problem())
        .contains("has 2003 points");
    assertThat(refused(Drawings.svg("<rect/>" + " ".repeat(DrawingLimits.MOST_BYTES))).problem())
        .contains("8 MB");
    StringBuilder holes = new StringBuilder("<rect width='400' height='300'/>");
    for (int i = 0; i < 51; i++) {
      holes.append("<circle r='2' cx='").append(5 + 7 * i).append("' cy='20'/>");
    }
    assertThat(refused(Drawings.svg(holes.toString())).problem()).contains("more than 50 openings");
  }

  @Test
  void readingGivesUpWhenTheTimeIsOver() {
    AtomicLong now = new AtomicLong();
    byte[] bytes = Drawings.svg(RECT.repeat(50)).getBytes(StandardCharsets.UTF_8);
    assertThatThrownBy(
            () ->
                DrawingReader.read(
                    "a.svg", bytes, Optional.empty(), () -> now.addAndGet(200_000_000L)))
        .isInstanceOf(InputRefused.class)
        .hasMessageContaining("more than 5 seconds");
  }

  @Test
  void randomlyBrokenDrawingsAreReadOrRefusedButNeverAFault() {
    String good =
        Drawings.svg(
            "<g transform='rotate(9)'><path d='M10 10C60-20 150 40 200 10A90 60 0 0 1 200"
                + " 100Q50 90 10 100Z'/><rect x='60' y='40' rx='3' width='20' height='9'/></g>");
    Random random = new Random(5);
    int read = 0;
    for (int i = 0; i < 3000; i++) {
      StringBuilder text = new StringBuilder(good);
      for (int k = random.nextInt(3); k >= 0; k--) {
        int at = random.nextInt(text.length());
        switch (random.nextInt(3)) {
          case 0 -> text.deleteCharAt(at);
          case 1 -> text.insert(at, "0123456789.-eMLZz<>'& ".charAt(random.nextInt(22)));
          default -> text.setCharAt(at, text.charAt(random.nextInt(text.length())));
        }
      }
      try {
        Drawings.read(text.toString());
        read++;
      } catch (InputRefused r) {
        assertThat(r.problem()).isNotBlank();
      }
    }
    assertThat(read).isBetween(300, 2700);
  }
}
