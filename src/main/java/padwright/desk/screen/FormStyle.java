package padwright.desk.screen;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import javafx.scene.Parent;

/** The look of the section's fields, light or dark, with letters of a size. */
final class FormStyle {
  private String last = "";

  void apply(Parent parent, FormColours c, double text) {
    String sheet = "data:text/css;base64," + base64(css(c, text));
    parent.getStylesheets().remove(last);
    parent.getStylesheets().add(sheet);
    last = sheet;
  }

  private static String base64(String css) {
    return Base64.getEncoder().encodeToString(css.getBytes(StandardCharsets.UTF_8));
  }

  private static String css(FormColours c, double text) {
    String ground = FormColours.web(c.paper());
    String ink = FormColours.web(c.ink());
    String faint = FormColours.web(c.faint());
    String accent = FormColours.web(c.accent());
    String stop = FormColours.web(c.stop());
    String caution = FormColours.web(c.caution());
    return String.join(
        "\n",
        ".section-pane { -fx-base: " + ground + "; -fx-background: " + ground + ";",
        " -fx-background-color: " + ground + "; -fx-font-size: " + text + "px;",
        " -fx-control-inner-background: " + (c.dark() ? "#2a2f33" : "#ffffff") + ";",
        " -fx-text-fill: " + ink + "; -fx-focus-color: " + accent + ";",
        " -fx-accent: " + accent + "; -fx-prompt-text-fill: " + faint + "; }",
        ".section-pane .scroll-pane { -fx-background-color: transparent; -fx-padding: 0; }",
        ".section-foot { -fx-padding: 6; -fx-border-color: " + faint + ";",
        " -fx-border-width: 1 0 0 0; }",
        ".form-field { -fx-padding: 1 3 1 3; -fx-prompt-text-fill: " + faint + "; }",
        ".form-field.combo-box { -fx-padding: 0; }",
        ".form-field:focused { -fx-border-color: " + accent + "; -fx-border-width: 2;",
        " -fx-border-insets: -2; }",
        ".form-mark { -fx-padding: 0; -fx-background-color: transparent; -fx-text-fill: " + ink,
        "; -fx-font-weight: bold; }",
        ".form-stop .form-mark { -fx-text-fill: " + stop + "; }",
        ".form-stop .form-field { -fx-border-color: " + stop + "; -fx-border-width: 2; }",
        ".form-caution .form-mark { -fx-text-fill: " + caution + "; }",
        ".form-caution .form-field { -fx-border-color: " + caution + ";",
        " -fx-border-style: dashed; }",
        ".form-callout { -fx-background-color: " + ground + "; -fx-text-fill: " + ink + ";",
        " -fx-border-color: " + stop + "; -fx-border-width: 1 1 1 4; -fx-padding: 4 6 4 6; }",
        ".form-label, .form-note { -fx-text-fill: " + ink + "; }",
        ".note-stop { -fx-text-fill: " + stop + "; -fx-font-weight: bold; }",
        ".note-caution { -fx-text-fill: " + caution + "; -fx-font-weight: bold; }",
        ".member-tab { -fx-padding: 2 7 2 7; }",
        ".member-tab:selected { -fx-border-color: " + accent + "; -fx-border-width: 0 0 3 0;",
        " -fx-font-weight: bold; }",
        ".form-action, .form-remedy { -fx-padding: 2 8 2 8; }",
        ".form-remedy { -fx-border-color: " + accent + "; -fx-border-radius: 3; }");
  }
}
