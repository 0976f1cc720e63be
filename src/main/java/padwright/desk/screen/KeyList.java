package padwright.desk.screen;

/** The keys of the workbench, for the window that lists them. */
final class KeyList {
  static final String TEXT =
      String.join(
          "\n",
          "On macOS, Command takes the place of Ctrl.",
          "",
          "Tab, Shift+Tab   from field to field, from pane to pane",
          "Ctrl+1 to Ctrl+8   parts, section, pieces, solid, findings, figures, staple gauge, plan",
          "Ctrl+Page Down, Ctrl+Page Up   next part, part before",
          "Ctrl+Right, Ctrl+Left   next drawing, drawing before",
          "",
          "In a length: Enter takes it; Up and Down make it larger and smaller",
          "Lengths may be sums, in any unit: 12+12, 600 - 2*18, 1 1/4 in + 6 mm",
          "In a drawing: arrows move it, + and - zoom, 0 fits it, M measures",
          "While measuring: arrows move the cross, N goes to the next place, Enter sets a point",
          "On the solid: arrows turn it, + and - zoom, Page Up and Page Down open and close it",
          "On the plan: N, Shift+N choose the next, the one before; arrows move or bend it",
          "   Shift+arrow ten steps; Insert or A adds a point, Delete removes it; Enter its fields",
          "   Escape puts a drag back, then chooses the whole outline, where arrows move the plan",
          "In the staple gauge: Left and Right go from staple to staple, Home to the worst",
          "In the parts: + and - one more, one fewer of the part",
          "In the findings: Enter shows where it is",
          "",
          "Ctrl+O open   Ctrl+S save   Ctrl+Shift+S save as   Ctrl+P preview and draft",
          "Ctrl+Z undo   Ctrl+Shift+Z redo",
          "Ctrl+D duplicate   Ctrl+M mirror   Ctrl+Shift+Up, Down move   Ctrl+Delete remove a part",
          "Ctrl++, Ctrl+-, Ctrl+0   larger, smaller, usual text",
          "Ctrl+Q quit");

  private KeyList() {}
}
