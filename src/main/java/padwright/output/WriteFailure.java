package padwright.output;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;

/** Says in plain words why something could not be written, and what to do. */
public final class WriteFailure {
  private WriteFailure() {}

  public static String sentence(Throwable e) {
    Throwable cause = e;
    while (!(cause instanceof IOException) && cause.getCause() != null) {
      cause = cause.getCause();
    }
    if (!(cause instanceof FileSystemException f)) {
      return String.valueOf(cause.getMessage());
    }
    return f.getFile() + ": " + reason(f);
  }

  private static String reason(FileSystemException f) {
    if (f instanceof AccessDeniedException) {
      return "you may not write here. Choose another folder or change its permissions";
    }
    if (f instanceof NoSuchFileException) {
      return "there is no such folder. Make it first or choose another";
    }
    if (f instanceof NotDirectoryException) {
      return "this is a file, not a folder. Choose another name";
    }
    if (f instanceof FileAlreadyExistsException) {
      return (f.getReason() == null ? "it is there already" : f.getReason())
          + ". Choose another name";
    }
    return f.getReason() == null ? "it could not be written. Choose another folder" : f.getReason();
  }
}
