package padwright.desk.view;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicLong;
import padwright.export.pdf.PrintCorrection;
import padwright.export.raster.PageRaster;
import padwright.material.Paper;
import padwright.measure.InputRefused;
import padwright.measure.Length;
import padwright.measure.LengthUnit;

/**
 * What the printed pages of a part will look like on a paper with a correction: one page at a time,
 * made away from the window's thread when it is first looked at. The newest wish wins; until it is
 * met the last page stays. To be used from the window's thread alone.
 */
public final class PagePreview {
  /** Dots an inch: small print is read, and an A4 page is made in a fraction of a second. */
  private static final double DPI = 150;

  /** No more dots than this for a page, however long the roll: 32 MB of memory. */
  private static final long MOST_DOTS = 8_000_000;

  /** Makes the printed file of a part. */
  public interface Source {
    /**
     * @throws IOException where it cannot be made
     * @throws InputRefused where the paper cannot take it
     */
    byte[] pdf(Paper paper, PrintCorrection correction) throws IOException;
  }

  /**
   * What is to be seen now.
   *
   * @param page from 1; 0 before the first is made
   * @param pages how many there are; 0 before that is known
   * @param picture the page; empty before the first is made
   * @param busy whether another is being made
   * @param problem why the last wish was not met; empty where it was
   */
  public record State(
      int page, int pages, Optional<Picture> picture, boolean busy, String problem) {
    /** Such as {@code Page 2 of 7}. */
    public String sentence() {
      return pages == 0 ? "No pages yet" : "Page " + page + " of " + pages;
    }
  }

  private final List<Paper> papers;
  private final Source source;
  private final Executor worker;
  private final Executor window;
  private final Runnable changed;
  private final Maker maker = new Maker();

  private Paper paper;
  private PrintCorrection correction = PrintCorrection.none();
  private State state = new State(0, 0, Optional.empty(), false, "");
  private int settings;
  private final AtomicLong wish = new AtomicLong();

  /**
   * @param papers to choose from, the first one to begin with
   * @param worker where pages are made
   * @param window runs what it is given on the window's thread
   * @param changed told on the window's thread whenever {@link #state} is another
   */
  public PagePreview(
      List<Paper> papers, Source source, Executor worker, Executor window, Runnable changed) {
    this.papers = List.copyOf(papers);
    this.paper = papers.get(0);
    this.source = source;
    this.worker = worker;
    this.window = window;
    this.changed = changed;
  }

  public List<Paper> papers() {
    return papers;
  }

  public Paper paper() {
    return paper;
  }

  public PrintCorrection correction() {
    return correction;
  }

  public State state() {
    return state;
  }

  /** Chooses another paper and starts at its first page. */
  public void choose(Paper other) {
    paper = other;
    settings++;
    show(1);
  }

  /** Makes everything again from its source, which is another now. */
  public void refresh() {
    settings++;
    show(Math.max(1, state.page));
  }

  /**
   * Takes what the check lines of an earlier print measured, as typed; empty is no correction.
   *
   * @return what is wrong with it, in which case nothing changes; empty where nothing is
   */
  public String measured(String across, String along) {
    PrintCorrection typed;
    try {
      typed = new PrintCorrection(typed(across), typed(along));
    } catch (InputRefused e) {
      return e.getMessage();
    }
    if (!typed.equals(correction)) {
      correction = typed;
      refresh();
    }
    return "";
  }

  private static double typed(String text) {
    return text.isBlank() ? PrintCorrection.CHECK_LENGTH : Length.parse(text, LengthUnit.MM);
  }

  public void next() {
    if (state.page < state.pages) {
      show(state.page + 1);
    }
  }

  public void previous() {
    if (state.page > 1) {
      show(state.page - 1);
    }
  }

  /** Asks for a page, from 1; the last one where there are fewer. */
  public void show(int page) {
    long mine = wish.incrementAndGet();
    Wanted wanted = new Wanted(paper, correction, settings, page);
    become(new State(state.page, state.pages, state.picture, true, state.problem));
    worker.execute(
        () -> {
          if (mine != wish.get()) {
            return;
          }
          State made = maker.made(wanted);
          window.execute(
              () -> {
                if (mine == wish.get()) {
                  become(
                      made.problem.isEmpty()
                          ? made
                          : new State(state.page, state.pages, state.picture, false, made.problem));
                }
              });
        });
  }

  private void become(State next) {
    state = next;
    changed.run();
  }

  /** Gives back the memory of the printed file; the last page stays. */
  public void close() {
    worker.execute(maker::close);
  }

  private record Wanted(Paper paper, PrintCorrection correction, int settings, int page) {}

  /** Keeps the printed file of the last settings open; does one thing at a time. */
  private final class Maker {
    private PageRaster raster;
    private int of = -1;

    synchronized State made(Wanted w) {
      try {
        if (raster == null || of != w.settings) {
          byte[] pdf = source.pdf(w.paper, w.correction);
          close();
          raster = new PageRaster(pdf);
          of = w.settings;
        }
        int page = Math.max(1, Math.min(raster.pages(), w.page));
        double dpi = raster.within(page - 1, DPI, MOST_DOTS);
        Picture picture = Picture.of(raster.render(page - 1, dpi));
        return new State(page, raster.pages(), Optional.of(picture), false, "");
      } catch (IOException | RuntimeException e) {
        String why = e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
        String problem = e instanceof InputRefused ? why : "The pages could not be made: " + why;
        return new State(0, 0, Optional.empty(), false, problem);
      }
    }

    synchronized void close() {
      if (raster != null) {
        try {
          raster.close();
        } catch (IOException e) {
          // It is only read from memory: there is nothing left to lose.
        }
        raster = null;
      }
    }
  }
}
