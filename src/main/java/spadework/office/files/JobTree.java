// SPDX-License-Identifier: Apache-2.0
package spadework.office.files;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import spadework.intake.Intake;
import spadework.register.IssuedFolders;

/** The jobs of a folder tree. */
public final class JobTree {
    private static final Set<String> PAPERS = Set.of(IssuedFolders.HOMEOWNER, IssuedFolders.KEPT, IssuedFolders.FORMER);

    private JobTree() {}

    /** Every job file, in this folder or any below it, in the order of their paths. Links are not followed. */
    public static List<Path> files(Path tree) throws IOException {
        if (Files.isRegularFile(tree)) {
            return List.of(tree);
        }
        if (!Files.isDirectory(tree)) {
            throw new IOException("no folder " + tree);
        }
        List<Path> found = new ArrayList<>();
        Files.walkFileTree(tree, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
                Path file = Intake.fileOf(folder);
                if (Files.isRegularFile(file)) {
                    found.add(file);
                }
                boolean papers = folder.getFileName() != null
                        && PAPERS.contains(folder.getFileName().toString());
                return papers ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
            }
        });
        return found.stream().sorted().toList();
    }

    /** What is drawn from each file, in their order. They are read on all cores; only what is drawn is kept. */
    public static <T> List<T> each(Path tree, Function<Path, T> drawn) throws IOException {
        return each(files(tree), drawn);
    }

    /** The same of files that were found before. */
    public static <T> List<T> each(List<Path> files, Function<Path, T> drawn) {
        return files.parallelStream().map(drawn).toList();
    }
}
