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
import spadework.finding.Fault;
import spadework.finding.Place;
import spadework.register.Register;

/** Where registers lie. */
public final class RegisterFolders {
    private RegisterFolders() {}

    /** The folder of a job that is named by its folder or by its file. */
    public static Path of(Path job) {
        Path folder = Files.isRegularFile(job) ? job.toAbsolutePath().getParent() : job;
        return folder == null ? job : folder;
    }

    /** Every folder with a register, this one or any below it, in the order of their names. Links are not followed. */
    public static List<Path> under(Path tree) throws IOException {
        List<Path> found = new ArrayList<>();
        Files.walkFileTree(of(tree), new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
                if (Register.isIn(folder)) {
                    found.add(folder);
                }
                return FileVisitResult.CONTINUE;
            }
        });
        return found.stream().sorted().toList();
    }

    public static Fault missing(Path folder) {
        return new Fault(
                Place.ofFile(folder.toString()),
                "no register",
                "the folder of a job for which something was issued",
                "name a job folder with a register.jsonl");
    }
}
