// SPDX-License-Identifier: Apache-2.0
package spadework.reason;

import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutionException;
import java.util.regex.Pattern;

/** The reason why something failed, as a person reads it: never empty, on one line, without names of classes. */
public final class Reason {
    private static final Pattern CLASS_NAMES = Pattern.compile("\\b(?:[a-z][a-z0-9_]*\\.){2,}[A-Z]\\w*(?::\\s*)?");
    private static final int LONGEST = 600;

    private Reason() {}

    /** In words. */
    public static String of(Throwable thrown) {
        Throwable cause = unwrapped(thrown);
        if (cause instanceof FileSystemException file) {
            return of(file);
        }
        if (cause instanceof CharacterCodingException) {
            return "its text is not UTF-8; save it as UTF-8";
        }
        if (cause instanceof StackOverflowError) {
            return "it is nested too deep to be worked on";
        }
        if (cause instanceof OutOfMemoryError) {
            return "it needs more memory than the program may use; leave out what is large, or give the program more"
                    + " with java -Xmx2g";
        }
        return words(cause);
    }

    private static Throwable unwrapped(Throwable thrown) {
        Throwable cause = thrown;
        while (cause.getCause() != null
                && (cause instanceof UncheckedIOException
                        || cause instanceof CompletionException
                        || cause instanceof ExecutionException)) {
            cause = cause.getCause();
        }
        return cause;
    }

    private static String of(FileSystemException file) {
        String name = file.getFile() == null ? "a file" : file.getFile();
        if (file instanceof NoSuchFileException) {
            return "there is no " + name;
        }
        if (file instanceof AccessDeniedException) {
            return name + " may not be read or written by this user; check its permissions and those of its folder";
        }
        if (file instanceof FileAlreadyExistsException) {
            return name + " is there already" + (file.getReason() == null ? "" : "; " + file.getReason());
        }
        if (file instanceof NotDirectoryException) {
            return name + " is no folder";
        }
        if (file instanceof DirectoryNotEmptyException) {
            return name + " is a folder with something in it";
        }
        if (file instanceof FileSystemLoopException) {
            return name + " is a link that leads back to itself";
        }
        return name + (file.getReason() == null ? " cannot be used" : ": " + file.getReason());
    }

    private static String words(Throwable cause) {
        String message = cause.getMessage() == null ? "" : cause.getMessage();
        String plain = CLASS_NAMES
                .matcher(message)
                .replaceAll("")
                .replaceAll("\\s+", " ")
                .strip();
        if (plain.isEmpty() || plain.equals("null")) {
            return "an internal fault, " + kind(cause);
        }
        return plain.length() > LONGEST ? plain.substring(0, LONGEST) + "…" : plain;
    }

    /** The kind of a fault without words, so that whoever is told can be asked about it. */
    private static String kind(Throwable cause) {
        StackTraceElement[] trace = cause.getStackTrace();
        String name = cause.getClass().getSimpleName().replaceAll("(Exception|Error)$", "");
        String words = name.replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(java.util.Locale.ROOT);
        return (words.isEmpty() ? "of no known kind" : words)
                + (trace.length == 0
                        ? ""
                        : " at line " + trace[0].getLineNumber() + " of "
                                + trace[0].getClassName()
                                        .replaceAll(".*\\.", "")
                                        .replaceAll("\\$.*", ""));
    }
}
