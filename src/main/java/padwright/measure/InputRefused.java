package padwright.measure;

/**
 * Input that cannot be taken. Says where it is, what is wrong with it and what would be right; the
 * command line ends with exit status 2.
 */
public final class InputRefused extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final String file;
  private final int line;
  private final String path;
  private final String problem;
  private final String remedy;

  /**
   * @param file name as the maker gave it; empty where there is no file
   * @param line from 1; 0 where there is none
   * @param path JSON path such as {@code $.parts[0].base.thickness}; empty where there is none
   * @param problem what is wrong, with the value found
   * @param remedy what to do
   */
  public InputRefused(String file, int line, String path, String problem, String remedy) {
    super(sentence(file, line, path, problem, remedy));
    this.file = file;
    this.line = line;
    this.path = path;
    this.problem = problem;
    this.remedy = remedy;
  }

  private static String sentence(
      String file, int line, String path, String problem, String remedy) {
    StringBuilder s = new StringBuilder();
    if (!file.isEmpty()) {
      s.append(file);
      if (line > 0) {
        s.append(", line ").append(line);
      }
      s.append(": ");
    }
    if (!path.isEmpty()) {
      s.append(path).append(": ");
    }
    return s.append(problem).append(". ").append(remedy).toString();
  }

  public String file() {
    return file;
  }

  public int line() {
    return line;
  }

  public String path() {
    return path;
  }

  public String problem() {
    return problem;
  }

  public String remedy() {
    return remedy;
  }
}
