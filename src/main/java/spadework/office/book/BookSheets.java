// SPDX-License-Identifier: Apache-2.0
package spadework.office.book;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import spadework.disk.AtomicFile;
import spadework.draft.BookDraft;
import spadework.draft.DraftValue.Entries;
import spadework.draft.Leaves;
import spadework.finding.Fault;
import spadework.finding.Place;
import spadework.intake.Intake;
import spadework.intake.ReadBook;
import spadework.intake.ReadMap;
import spadework.office.reply.Reply;
import spadework.press.sheet.WorkbookZip;
import spadework.pricebook.PriceBook;
import spadework.pricesheet.Grid;
import spadework.pricesheet.PriceWorkbook;
import spadework.pricesheet.SheetChanges;
import spadework.pricesheet.SheetChanges.Changed;
import spadework.pricesheet.SupplierChanges;
import spadework.pricesheet.Tables;
import spadework.reason.Reason;
import spadework.wording.Wording;

/** The price book out to a workbook and back, and prices from suppliers' lists. */
public final class BookSheets {
    private static final Wording WORDS = Wording.beside(BookSheets.class);

    private final BookService service;

    public BookSheets(BookService service) {
        this.service = service;
    }

    /** Writes the workbook. */
    public Reply export(Path target) throws IOException {
        ReadBook read = service.read();
        if (!read.faults().isEmpty()) {
            return Reply.refused(read.faults());
        }
        byte[] workbook = PriceWorkbook.of(read.book().orElseThrow(), names(read, true), names(read, false));
        AtomicFile.write(target.toAbsolutePath(), WorkbookZip.withFixedTimes(workbook));
        return Reply.done(List.of(target.toString()));
    }

    private static List<String> names(ReadBook read, boolean crews) {
        return read.company()
                .map(company -> (crews ? company.crews() : company.machines())
                        .keySet().stream().sorted().toList())
                .orElse(List.of());
    }

    /**
     * A file with prices.
     *
     * @param map for a supplier's list, the map of its columns; without it the file is an exported workbook
     */
    public record PriceFile(Path file, Optional<Path> map) {}

    /** When, why, and whether it is written. */
    public record Saving(LocalDate on, String reason, boolean save) {}

    /**
     * Takes changed cells over. All faults are told at once, and with one of them nothing is written.
     */
    public Reply take(PriceFile from, Saving saving) throws IOException {
        return saving.save() ? service.alone(() -> taken(from, saving)) : taken(from, saving);
    }

    private Reply taken(PriceFile from, Saving saving) throws IOException {
        Reply cells = cells(from, saving);
        if (!cells.done()) {
            return cells;
        }
        List<String> lines = new ArrayList<>(cells.out());
        lines.add(
                lines.isEmpty()
                        ? WORDS.get("book-sheets.nothing-differs-from-book")
                        : saving.save() ? "Written to " + service.file() + "." : "Nothing was written.");
        return Reply.done(lines);
    }

    /** The same, told as the changed cells alone. */
    public Reply cells(PriceFile from, Saving saving) throws IOException {
        ReadBook read = service.read();
        Path file = from.file();
        Optional<ReadMap> mapped = from.map().map(Intake::readSupplierMap);
        List<Fault> before = new ArrayList<>(read.faults());
        mapped.ifPresent(one -> before.addAll(one.faults()));
        if (!before.isEmpty()) {
            return Reply.refused(before);
        }
        PriceBook book = read.book().orElseThrow();
        String shown = file.toString();
        Optional<String> sheet =
                mapped.isPresent() ? mapped.get().map().orElseThrow().sheet() : Optional.of(PriceWorkbook.PRICES);
        Optional<Grid> grid = sheet.isPresent() ? grid(file, sheet.get()) : firstGrid(file);
        if (grid.isEmpty()) {
            return Reply.refused(List.of(new Fault(
                    Place.ofFile(shown),
                    "no sheet \"" + sheet.orElse("") + "\"",
                    "a workbook with that sheet",
                    "export anew, or name the sheet in the map")));
        }
        if (mapped.isPresent()) {
            return taken(
                    SupplierChanges.of(shown, grid.get(), mapped.get().map().orElseThrow(), book), saving);
        }
        Optional<Grid> exported = grid(file, PriceWorkbook.EXPORTED);
        if (exported.isEmpty()) {
            return Reply.refused(List.of(new Fault(
                    Place.ofFile(shown),
                    "no hidden sheet \"" + PriceWorkbook.EXPORTED + "\"",
                    "a workbook that keeps it, so that a price changed in the book since is not taken back",
                    "export anew, and save the workbook as XLSX")));
        }
        return taken(SheetChanges.of(shown, grid.get(), exported.get(), book), saving);
    }

    private static Optional<Grid> firstGrid(Path file) throws IOException {
        return grid(file, Tables::workbook);
    }

    private static Optional<Grid> grid(Path file, String sheet) throws IOException {
        return grid(file, bytes -> Tables.workbook(bytes, sheet));
    }

    /** Reads a sheet out of a workbook's bytes. */
    private interface SheetReader {
        Optional<Grid> read(byte[] workbook) throws IOException;
    }

    private static Optional<Grid> grid(Path file, SheetReader workbook) throws IOException {
        byte[] bytes;
        try (InputStream in = Files.newInputStream(file)) {
            bytes = in.readNBytes(Tables.LARGEST + 1);
        }
        boolean csv = file.toString().toLowerCase(Locale.ROOT).endsWith(".csv");
        try {
            return csv ? Optional.of(Tables.csv(bytes)) : workbook.read(bytes);
        } catch (IOException unreadable) {
            throw new IOException(file + ": " + Reason.of(unreadable), unreadable);
        }
    }

    private Reply taken(SheetChanges changes, Saving saving) throws IOException {
        BookDraft draft = service.draft();
        for (Map.Entry<String, Map<String, String>> item : changes.byItem().entrySet()) {
            Map<String, String> values = BookText.sourced(item.getValue(), saving.on(), saving.reason());
            Entries own = service.item(draft, item.getKey()).orElseThrow();
            draft = (draft.item(item.getKey()).isPresent() ? draft : draft.with(own))
                    .changed(item.getKey(), values, saving.on(), saving.reason());
        }
        List<Fault> faults = new ArrayList<>(changes.faults());
        faults.addAll(atCells(service.read(draft).faults(), changes, draft));
        if (!faults.isEmpty()) {
            faults.sort(Comparator.comparing((Fault fault) -> fault.place().line())
                    .thenComparing(fault -> fault.place().column()));
            return Reply.refused(faults);
        }
        List<String> lines = described(changes, draft);
        if (saving.save() && !lines.isEmpty()) {
            service.write(draft);
        }
        return Reply.done(lines);
    }

    /** What differs from the book as it stands, each change with its cell. */
    private List<String> described(SheetChanges changes, BookDraft changed) throws IOException {
        BookDraft before = service.draft();
        List<String> lines = new ArrayList<>();
        for (Changed cell : changes.cells()) {
            String from =
                    Leaves.of(service.item(before, cell.code()).orElseThrow()).getOrDefault(cell.what(), "—");
            String to =
                    Leaves.of(service.item(changed, cell.code()).orElseThrow()).getOrDefault(cell.what(), "—");
            if (!from.equals(to)) {
                lines.add(cell.place().pointer() + " " + cell.code() + " " + cell.what() + ": " + from + " → " + to);
            }
        }
        return lines;
    }

    /** Faults of the changed book, told at the cells that they come from. */
    private static List<Fault> atCells(List<Fault> faults, SheetChanges changes, BookDraft draft) {
        Map<String, Place> cells = new HashMap<>();
        for (Changed cell : changes.cells()) {
            draft.place(cell.code()).ifPresent(item -> cells.put(item + "/" + cell.what(), cell.place()));
        }
        return faults.stream()
                .map(fault -> new Fault(
                        cells.getOrDefault(fault.place().pointer(), fault.place()),
                        fault.found(),
                        fault.allowed(),
                        fault.fix()))
                .toList();
    }
}
