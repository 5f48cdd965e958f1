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

  private FileFault() {
  }

  /** One sentence about a file that could not be read or written, without the name of a fault of the program. */
  public static String of(IOException fault) {
    return switch (fault) {
      case NoSuchFileException f -> "“" + f.getFile() + "” cannot be found or written: there is no such file or folder – check the name, and make the folder first";
      case AccessDeniedException f -> "“" + f.getFile() + "” may not be read or written – check the rights of the file and its folder";
      case FileAlreadyExistsException f -> "“" + f.getFile() + "” is there already – choose another name";
      case NotDirectoryException f -> "“" + f.getFile() + "” is no folder – name a folder";
      case DirectoryNotEmptyException f -> "“" + f.getFile() + "” is a folder with files in it – name a file";
      case FileSystemException f -> "“" + f.getFile() + "” cannot be read or written: " + Objects.requireNonNullElse(f.getReason(), "the system does not say why")
          + " – check the name, the space and the rights of the file";
      default -> "a file cannot be read or written: " + Objects.requireNonNullElse(fault.getMessage(), "the system does not say why")
          + " – check the name, the space and the rights of the file";
    };
  }
}
