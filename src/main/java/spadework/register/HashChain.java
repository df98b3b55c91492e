// SPDX-License-Identifier: Apache-2.0
package spadework.register;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import spadework.finding.Fault;
import spadework.finding.Place;
import spadework.reason.Reason;
import spadework.register.RawLines.RawLine;

/** The lines of a register, read once from the first to the last, each held to the one before it. */
final class HashChain {
    static final String NAME = "register.jsonl";

    private static final String RESTORE = "bring " + NAME + " back from a copy of the job folder";

    final TakenNumbers numbers = new TakenNumbers();
    final List<Fault> faults = new ArrayList<>();
    /** A line feed that was there and is gone: a change, but one that the next entry fixes. */
    final List<Fault> openEnd = new ArrayList<>();

    final List<Fault> advice = new ArrayList<>();

    /** Whole lines. */
    int lines;
    /** Bytes of whole lines, line feeds included: where the next line goes. */
    long length;
    /** Whether the last whole line lacks its line feed. */
    boolean endsOpen;
    /** Whether the head lacks the last line. */
    boolean headBehind;

    String hash = Sha256.NONE;
    String seal = Sha256.NONE;
    private String sealBefore = Sha256.NONE;
    private int expected = 1;
    private boolean brokenBefore;

    private final Path folder;

    private HashChain(Path folder) {
        this.folder = folder;
    }

    /** Reads the register of a folder; every line that holds is handed on as it is read. */
    static HashChain read(Path folder, Consumer<Entry> each) throws IOException {
        HashChain chain = new HashChain(folder);
        try (RawLines lines = RawLines.of(folder.resolve(NAME))) {
            for (RawLine line = lines.next(); line != null; line = lines.next()) {
                chain.add(line, each);
            }
        }
        chain.compareWithHead();
        return chain;
    }

    private void add(RawLine line, Consumer<Entry> each) {
        boolean whole = !line.tooLong() && Seal.holds(line.bytes(), line.bytes().length);
        if (!line.ended() && !whole && isHalfWritten(line)) {
            advice.add(fault(
                    lines + 1,
                    "half a line, as a crash while writing leaves it",
                    "whole lines",
                    "nothing: the next entry takes its place, and what it told was never acknowledged"));
            return;
        }
        lines++;
        length += line.bytes().length + (line.ended() ? 1 : 0);
        endsOpen = !line.ended();
        if (whole) {
            hold(line.bytes(), each);
        } else {
            broken("a line whose bytes do not fit its seal", "line " + expected + " as it was written");
            expected++;
        }
        hash = Sha256.of(line.bytes());
    }

    private void hold(byte[] bytes, Consumer<Entry> each) {
        Entry entry;
        try {
            entry = EntryJson.read(bytes);
        } catch (IOException unreadable) {
            broken(Reason.of(unreadable), "a line that this version can read");
            expected++;
            return;
        }
        if (entry.line() != expected) {
            broken("line " + entry.line(), "line " + expected + "; lines were taken out, put in or changed places");
        } else if (!brokenBefore && !entry.previous().equals(hash)) {
            broken(
                    "a line that follows " + entry.previous(),
                    "one that follows " + hash + ", the SHA-256 of the line before, which was changed or exchanged");
        } else {
            brokenBefore = false;
        }
        numbers.note(entry).ifPresent(wrong -> faults.add(fault(lines, wrong, "each number once", RESTORE)));
        expected = entry.line() + 1;
        sealBefore = seal;
        seal = entry.seal();
        each.accept(entry);
    }

    private void broken(String found, String allowed) {
        brokenBefore = true;
        faults.add(fault(lines, found, allowed, RESTORE));
    }

    /** What a crash leaves begins as the next line does, or is nothing but zeros, and no whole line is in it. */
    private boolean isHalfWritten(RawLine line) {
        byte[] start = EntryJson.beginning(expected).getBytes(StandardCharsets.US_ASCII);
        byte[] bytes = line.bytes();
        int known = Math.min(start.length, bytes.length);
        boolean begins = Arrays.equals(start, 0, known, bytes, 0, known);
        boolean zeros = true;
        for (byte each : bytes) {
            zeros &= each == 0;
        }
        return !line.tooLong() && (begins || zeros) && !Seal.runsOn(bytes);
    }

    Head head() {
        return new Head(lines, seal);
    }

    private void compareWithHead() throws IOException {
        if (brokenBefore) {
            return;
        }
        String found = Head.found(folder);
        String here = head().text();
        boolean fits = found.equals(here);
        boolean behind = lines > 0 && found.equals(lines == 1 ? "" : new Head(lines - 1, sealBefore).text());
        if (fits || (lines == 0 && found.isEmpty())) {
            if (endsOpen && fits) {
                openEnd.add(fault(
                        lines,
                        "no line feed at the end",
                        "the line feed that was written",
                        "nothing: the next entry puts it back"));
            }
            return;
        }
        if (behind) {
            headBehind = true;
            advice.add(headFault(found, here, "nothing: the next entry brings it up to date; a crash left it behind"));
        } else {
            faults.add(headFault(
                    found,
                    here,
                    RESTORE + ", and " + Head.NAME + " with it; only if you are sure that no"
                            + " line is missing at the end, let " + Head.NAME + " hold \"" + here.strip() + "\""));
        }
    }

    private Fault headFault(String found, String here, String fix) {
        String shown = found.isEmpty() ? "no such file, or an empty one" : "\"" + printable(found) + "\"";
        return new Fault(
                Place.ofFile(folder.resolve(Head.NAME).toString()),
                shown,
                "\"" + here.strip() + "\", the count of lines in " + NAME + " and the seal of the last",
                fix);
    }

    private Fault fault(int line, String found, String allowed, String fix) {
        return new Fault(new Place(folder.resolve(NAME).toString(), line, 1, ""), found, allowed, fix);
    }

    private static String printable(String text) {
        return text.strip().replaceAll("[^\\x20-\\x7e]", "?");
    }
}
