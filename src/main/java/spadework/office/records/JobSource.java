// SPDX-License-Identifier: Apache-2.0
package spadework.office.records;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import spadework.company.Company;
import spadework.disk.InsideFolder;
import spadework.intake.Intake;
import spadework.intake.law.StateRuleBook;
import spadework.job.Job;
import spadework.job.Photo;
import spadework.office.files.Logo;
import spadework.press.template.Templates;

/**
 * Everything that a job's papers are made from, by path: the job, the company, the price books, the pictures and the
 * texts of the templates. Kept as one archive beside the papers, it prints them again when the books have moved on.
 */
public record JobSource(Map<String, byte[]> files) {
    public static final String JOB = "job.json";
    public static final String BUNDLED_BOOK = "bundled-price-book.json";
    public static final String BUNDLED_RULES = "bundled-state-rules.json";
    public static final String TEMPLATES = "templates";

    /** Of one file, in bytes: no picture and no book is larger. */
    private static final int LARGEST = 64 * 1024 * 1024;

    private static final List<String> PRICES = List.of(JOB, "company.json", "price-book.json", BUNDLED_BOOK);

    /** Not 1 January 1980: for that one Java adds a second time, which depends on the zone of the machine. */
    private static final LocalDateTime FIXED = LocalDateTime.of(1980, 2, 1, 0, 0);

    public JobSource {
        files = Map.copyOf(files);
    }

    /**
     * Gathers the source of a job.
     *
     * @param file the job's file
     * @param text what stands, or will stand, in it
     */
    public static JobSource of(Path file, String text, Job job, Company company, Templates templates)
            throws IOException {
        Map<String, byte[]> files = new TreeMap<>();
        files.put(JOB, text.getBytes(StandardCharsets.UTF_8));
        for (Map.Entry<String, Path> beside : Intake.filesOf(file).entrySet()) {
            files.put(beside.getKey(), Files.readAllBytes(InsideFolder.itself(beside.getValue())));
        }
        files.put(BUNDLED_BOOK, Intake.bundledBookFile());
        files.put(BUNDLED_RULES, StateRuleBook.bundledFile());
        templates
                .texts()
                .forEach((path, words) -> files.put(TEMPLATES + "/" + path, words.getBytes(StandardCharsets.UTF_8)));
        Path folder = file.toAbsolutePath().getParent();
        for (Photo photo : job.photos()) {
            files.put(photo.file(), Files.readAllBytes(InsideFolder.existing(folder, photo.file())));
        }
        Optional<Path> logo = company.logo().flatMap(name -> Logo.find(folder, name));
        if (logo.isPresent()) {
            files.put(company.logo().get(), Files.readAllBytes(logo.get()));
        }
        return new JobSource(files);
    }

    /**
     * The same job with the company and the price books that lie beside a job now; empty where they are the same.
     *
     * @throws IOException if one of them cannot be read
     */
    public Optional<JobSource> atPricesBeside(Path file) throws IOException {
        Map<String, byte[]> now = new TreeMap<>(files);
        Map<String, Path> beside = Intake.filesOf(file);
        for (String name : PRICES) {
            if (beside.containsKey(name)) {
                now.put(name, Files.readAllBytes(InsideFolder.itself(beside.get(name))));
            }
        }
        now.put(BUNDLED_BOOK, Intake.bundledBookFile());
        return isSame(now) ? Optional.empty() : Optional.of(new JobSource(now));
    }

    private boolean isSame(Map<String, byte[]> others) {
        return files.keySet().equals(others.keySet())
                && files.entrySet().stream()
                        .allMatch(file -> Arrays.equals(file.getValue(), others.get(file.getKey())));
    }

    /** The archive: the same files give the same bytes. */
    public byte[] archive() {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, byte[]> file : new TreeMap<>(files).entrySet()) {
                ZipEntry entry = new ZipEntry(file.getKey());
                entry.setTimeLocal(FIXED);
                zip.putNextEntry(entry);
                zip.write(file.getValue());
                zip.closeEntry();
            }
        } catch (IOException impossible) {
            throw new IllegalStateException(impossible);
        }
        return bytes.toByteArray();
    }

    /**
     * Reads an archive.
     *
     * @throws IOException if it is no archive
     */
    static JobSource read(byte[] archive) throws IOException {
        Map<String, byte[]> files = new TreeMap<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(archive))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                byte[] bytes = zip.readNBytes(LARGEST + 1);
                if (bytes.length > LARGEST) {
                    throw new IOException(
                            "an archive with a file of more than " + (LARGEST >> 20) + " MB: " + entry.getName());
                }
                files.put(entry.getName(), bytes);
            }
        }
        return new JobSource(files);
    }

    /**
     * What an archive holds that prices are made from: the job, the company, the price book and the bundled one. The
     * rest, which is most of it, is not unpacked.
     *
     * @throws IOException if it is no archive
     */
    static JobSource pricesOf(Path archive) throws IOException {
        Map<String, byte[]> files = new TreeMap<>();
        try (ZipFile zip = new ZipFile(archive.toFile())) {
            for (String name : PRICES) {
                ZipEntry entry = zip.getEntry(name);
                if (entry != null) {
                    files.put(name, zip.getInputStream(entry).readAllBytes());
                }
            }
        }
        return new JobSource(files);
    }

    /** What a text file says. */
    public String text(String name) {
        return new String(files.get(name), StandardCharsets.UTF_8);
    }

    /** The company and the price book, by their plain names. */
    public Map<String, byte[]> books() {
        Map<String, byte[]> books = new TreeMap<>(files);
        books.keySet().retainAll(Set.of("company.json", "price-book.json"));
        return books;
    }

    /** Lays the files into a folder, for those that read files. Names that would leave the folder are refused. */
    public void layInto(Path folder) throws IOException {
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            Path path = folder.resolve(file.getKey()).normalize();
            if (!path.startsWith(folder)) {
                throw new IOException("an archive that names a file outside of itself: " + file.getKey());
            }
            Files.createDirectories(path.getParent());
            Files.write(path, file.getValue());
        }
    }
}
