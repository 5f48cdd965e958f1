package daubline.base;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.util.Objects;

/** What went wrong with a file, in words for people: what, where, and how to mend it. */
public final class FileFault {

  private static final String UNSAID = "the system does not say why";

  private FileFault() {
  }

  /** What went wrong, where, and how to mend it, in one line; without the name of a fault of the program. */
  public static String of(IOException fault) {
    return what(fault) + " – check the name, the space and the rights of the file and its folder";
  }

  /** What went wrong and where, for a finding that says itself how to mend it. */
  public static String what(IOException fault) {
    return switch (fault) {
      case NoSuchFileException f -> "“" + f.getFile() + "” cannot be found or written: there is no such file or folder";
      case AccessDeniedException f -> "“" + f.getFile() + "” may not be read or written";
      case FileAlreadyExistsException f -> "“" + f.getFile() + "” cannot be written: it is there already";
      case NotDirectoryException f -> "“" + f.getFile() + "” is no folder";
      case DirectoryNotEmptyException f -> "“" + f.getFile() + "” is a folder with files in it, no file";
      case FileSystemException f -> "“" + f.getFile() + "” cannot be read or written: " + Objects.requireNonNullElse(f.getReason(), UNSAID);
      default -> "a file cannot be read or written: " + Objects.requireNonNullElse(fault.getMessage(), UNSAID);
    };
  }
}
