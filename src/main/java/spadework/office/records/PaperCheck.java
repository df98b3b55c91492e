// SPDX-License-Identifier: Apache-2.0
package spadework.office.records;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import spadework.finding.Fault;
import spadework.finding.Place;
import spadework.press.page.RecordCode;
import spadework.register.Entry;
import spadework.register.Register;
import spadework.register.RegisteredFile;
import spadework.register.SealMark;
import spadework.register.Sha256;

/**
 * Holds a register to a paper that was given out of the house: the paper carries the mark of a line, and nobody who
 * writes the folder anew can write that paper anew.
 */
public final class PaperCheck {
    private PaperCheck() {}

    /**
     * What the paper shows to be wrong, if anything.
     *
     * @param pdf the paper as it was issued
     * @throws IOException if the register cannot be read, or the paper is not there
     */
    static Optional<Fault> fault(Path folder, Path pdf) throws IOException {
        byte[] paper = Files.readAllBytes(pdf);
        Place place = Place.ofFile(pdf.toString());
        Optional<SealMark> mark;
        try {
            mark = RecordCode.in(paper).flatMap(SealMark::in);
        } catch (IOException | RuntimeException unreadable) {
            // What the library says of a broken file tells the reader nothing.
            return Optional.of(new Fault(
                    place,
                    "a file that is no PDF, or a broken one",
                    "a PDF that was issued",
                    "name the PDF as the homeowner got it"));
        }
        if (mark.isEmpty()) {
            return Optional.of(new Fault(
                    place,
                    "no record code at the foot of its pages",
                    "a PDF that was issued",
                    "name the PDF as the homeowner got it"));
        }
        List<Entry> entries = Register.of(folder).entries();
        String wanted = "the register with which the paper was issued, record code "
                + mark.get().text();
        Optional<Entry> line = entries.stream()
                .filter(entry -> entry.line() == mark.get().line())
                .findFirst();
        if (line.isEmpty()) {
            return Optional.of(new Fault(
                    place,
                    "a register of " + entries.size() + " lines in " + folder + ": it was cut off after the paper",
                    wanted,
                    "bring the job folder back from a copy"));
        }
        if (!mark.get().marks(line.get())) {
            return Optional.of(new Fault(
                    place,
                    "another line " + line.get().line() + " in the register of " + folder
                            + ": it was written anew after the paper, or is that of another job",
                    wanted,
                    "bring the job folder back from a copy"));
        }
        String sha256 = Sha256.of(paper);
        boolean named = entries.stream()
                .flatMap(entry -> entry.files().stream())
                .map(RegisteredFile::sha256)
                .anyMatch(sha256::equals);
        return named
                ? Optional.empty()
                : Optional.of(new Fault(
                        place,
                        "a paper that no line of the register in " + folder + " names",
                        wanted + ", and the bytes of the paper as they were issued",
                        "if the paper is as it was issued, lines were cut off; if it was saved anew or written on,"
                                + " name the file as the homeowner got it"));
    }
}
