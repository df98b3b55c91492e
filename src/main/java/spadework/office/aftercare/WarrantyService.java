// SPDX-License-Identifier: Apache-2.0
package spadework.office.aftercare;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Supplier;
import spadework.disk.AtomicFile;
import spadework.disk.Disk;
import spadework.listing.WarrantyListing;
import spadework.listing.WarrantyListing.InForce;
import spadework.office.Office;
import spadework.office.files.RegisterFolders;
import spadework.office.reply.FindingLines;
import spadework.office.reply.Reply;
import spadework.office.reply.TemplateFolder;
import spadework.office.reply.TextColumns;
import spadework.warranty.Card;
import spadework.warranty.Claim;
import spadework.warranty.ClaimRules;
import spadework.warranty.CoveredPart;
import spadework.warranty.Ending;
import spadework.warranty.Warranty;

/** Looks up warranties after the job, from the registers alone. */
public final class WarrantyService {
    private WarrantyService() {}

    /**
     * What is in force on a day.
     *
     * @param tree a job folder, or a folder with job folders in it
     * @param months only what ends within so many months
     */
    public static Reply list(Path tree, LocalDate on, boolean json) throws IOException {
        return list(tree, on, warranty -> warranty.inForce(on), json);
    }

    /** The same, only what ends within so many months. */
    public static Reply list(Path tree, LocalDate on, int months, boolean json) throws IOException {
        return list(tree, on, warranty -> Ending.of(warranty, on, months), json);
    }

    private static Reply list(Path tree, LocalDate on, Function<Warranty, List<CoveredPart>> parts, boolean json)
            throws IOException {
        List<InForce> rows = new ArrayList<>();
        List<String> wrong = new ArrayList<>();
        for (Path folder : RegisterFolders.under(tree)) {
            WarrantyReading reading = WarrantyReading.of(folder);
            wrong.addAll(reading.wrong());
            for (Warranty warranty : reading.book().current()) {
                parts.apply(warranty).forEach(part -> rows.add(new InForce(folder.toString(), warranty, part)));
            }
        }
        List<String> out = json
                ? List.of(WarrantyListing.inForce(on, rows))
                : TextColumns.of(rows.stream().map(WarrantyService::row).toList());
        return Reply.done(out).andWrong(wrong);
    }

    private static List<String> row(InForce row) {
        return List.of(
                row.warranty().number(),
                row.part().part(),
                row.part().lastDay().toString(),
                String.join(" and ", row.warranty().parties().owners()),
                row.warranty().parties().address(),
                row.folder());
    }

    /** The warranties of a job with what became of them. */
    public static Reply show(Path job, LocalDate on, boolean json) throws IOException {
        WarrantyReading reading = WarrantyReading.of(job);
        Map<Warranty, List<Claim>> standing = new LinkedHashMap<>();
        reading.book()
                .current()
                .forEach(warranty -> standing.put(warranty, reading.book().claims(warranty)));
        if (standing.isEmpty()) {
            return reading.refused();
        }
        if (json) {
            return Reply.done(List.of(WarrantyListing.standing(on, standing))).andWrong(reading.wrong());
        }
        FindingLines words = FindingLines.bundled();
        List<String> lines = new ArrayList<>();
        standing.forEach((warranty, claims) -> {
            lines.addAll(WarrantyText.of(warranty, on));
            for (Claim claim : claims) {
                WarrantyText.of(claim).forEach(line -> lines.add("  " + line));
                words.described(ClaimRules.findings(warranty, claim)).forEach(line -> lines.add("    " + line));
            }
        });
        return Reply.done(lines).andWrong(reading.wrong());
    }

    /**
     * Prints the maintenance card of each warranty of a job from a day on, and names the files.
     *
     * @param issued the day that the papers carry
     */
    public static Reply printCards(Path job, Path out, LocalDate issued, TemplateFolder own) throws IOException {
        return printCards(job, out, issued, () -> new WarrantyPapers(Office.with(own)));
    }

    /** The same with the templates of that office. */
    public static Reply printCards(Path job, Path out, LocalDate issued, Office office) throws IOException {
        return printCards(job, out, issued, () -> new WarrantyPapers(office));
    }

    private static Reply printCards(Path job, Path out, LocalDate issued, Supplier<WarrantyPapers> press)
            throws IOException {
        WarrantyReading reading = WarrantyReading.of(job);
        if (reading.book().current().isEmpty()) {
            return reading.refused();
        }
        WarrantyPapers papers = press.get();
        List<String> written = new ArrayList<>();
        Disk.folders(out);
        for (Warranty warranty : reading.book().current()) {
            for (Map.Entry<String, byte[]> file :
                    papers.card(job, Card.of(warranty, issued), issued).entrySet()) {
                AtomicFile.write(out.resolve(file.getKey()), file.getValue());
                written.add(out.resolve(file.getKey()).toString());
            }
        }
        return Reply.done(written).andWrong(reading.wrong());
    }

    /** The maintenance card of each warranty of a job, of the whole term. */
    public static Reply card(Path job, boolean json) throws IOException {
        return card(job, warranty -> Card.of(warranty, warranty.firstDay()), json);
    }

    /** The same from a day on. */
    public static Reply card(Path job, LocalDate on, boolean json) throws IOException {
        return card(job, warranty -> Card.of(warranty, on), json);
    }

    private static Reply card(Path job, Function<Warranty, Card> kind, boolean json) throws IOException {
        WarrantyReading reading = WarrantyReading.of(job);
        List<Card> cards = reading.book().current().stream().map(kind).toList();
        if (cards.isEmpty()) {
            return reading.refused();
        }
        return Reply.done(
                        json
                                ? List.of(WarrantyListing.cards(cards))
                                : cards.stream()
                                        .flatMap(card -> WarrantyText.of(card).stream())
                                        .toList())
                .andWrong(reading.wrong());
    }
}
