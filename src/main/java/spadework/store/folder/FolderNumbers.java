// SPDX-License-Identifier: Apache-2.0
package spadework.store.folder;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import spadework.disk.Disk;
import spadework.store.FileKind;
import spadework.store.FolderSummary;
import spadework.store.NumberOfYear;

/**
 * The numbers of the jobs of an office in folders. All folders are read once; after that whoever writes a number notes
 * it first in a file that only grows, and everybody reads what was added there. Used by one at a time.
 */
final class FolderNumbers {
    private static final String NOTED = ".numbers.lock";

    private final Path root;
    private final Map<String, String> numbers = new HashMap<>();
    private final Map<String, String> holders = new HashMap<>();
    private long read = -1;

    FolderNumbers(Path root) {
        this.root = root;
    }

    private Path file() {
        return root.resolve(NOTED);
    }

    private void follow() throws IOException {
        long length = Files.isRegularFile(file()) ? Files.size(file()) : 0;
        if (read < 0 || length < read) {
            read = length;
            numbers.clear();
            holders.clear();
            for (String name : Files.isDirectory(root) ? FolderFiles.jobs(root) : List.<String>of()) {
                put(name, number(name));
            }
        } else if (length > read) {
            byte[] all = Files.readAllBytes(file());
            String added = new String(all, (int) read, all.length - (int) read, StandardCharsets.UTF_8);
            read = all.length;
            added.lines()
                    .map(line -> line.split("\t", 2))
                    .filter(row -> row.length == 2)
                    .forEach(row -> put(row[0], row[1]));
        }
    }

    private void put(String name, String number) {
        String old = numbers.put(name, number);
        if (old != null) {
            holders.remove(key(old), name);
        }
        if (!number.isEmpty()) {
            holders.put(key(number), name);
        }
    }

    private static String key(String number) {
        return number.toLowerCase(Locale.ROOT);
    }

    private String number(String name) throws IOException {
        Path job = FolderFiles.at(root, name).resolve(FileKind.JOB_FILE);
        return Files.isRegularFile(job)
                ? FolderSummary.of(name, Files.readAllBytes(job), new byte[0])
                        .head()
                        .number()
                : "";
    }

    /**
     * Notes that a folder is about to have a number.
     *
     * @return the other folder that has it; nothing is noted then
     */
    Optional<String> take(String name, String number) throws IOException {
        follow();
        String holder = number.isEmpty() ? null : holders.get(key(number));
        if (holder != null && !holder.equals(name)) {
            // Noted and never written, or changed by hand since: what its file says is what counts.
            put(holder, number(holder));
            holder = holders.get(key(number));
        }
        if (holder != null && !holder.equals(name)) {
            return Optional.of(holder);
        }
        if (!number.equals(numbers.get(name))) {
            note(name, number);
            put(name, number);
        }
        return Optional.empty();
    }

    private void note(String name, String number) throws IOException {
        Disk.folders(root);
        byte[] line = (name + "\t" + number.replaceAll("\\s", " ") + "\n").getBytes(StandardCharsets.UTF_8);
        try (FileChannel channel = Disk.open(file())) {
            channel.position(channel.size());
            Disk.write(file(), channel, line);
            read = channel.size();
        }
    }

    /** The highest count of a year among names and numbers; 0 for none. */
    int last(int year) throws IOException {
        follow();
        while (true) {
            Optional<Map.Entry<String, String>> highest =
                    numbers.entrySet().stream().max(Comparator.comparingInt(entry -> count(entry, year)));
            int count = highest.map(entry -> count(entry, year)).orElse(0);
            if (count == 0 || isThere(highest.get())) {
                return count;
            }
        }
    }

    private static int count(Map.Entry<String, String> entry, int year) {
        return Math.max(
                NumberOfYear.of(entry.getKey(), year).orElse(0),
                NumberOfYear.of(entry.getValue(), year).orElse(0));
    }

    /** Whether a folder is what was noted of it; where it is not, what it is instead stands from now on. */
    private boolean isThere(Map.Entry<String, String> noted) throws IOException {
        String name = noted.getKey();
        String number = number(name);
        boolean there = Files.isRegularFile(FolderFiles.at(root, name).resolve(FileKind.JOB_FILE));
        if (there && number.equals(noted.getValue())) {
            return true;
        }
        put(name, number);
        if (!there) {
            numbers.remove(name);
        }
        return false;
    }
}
