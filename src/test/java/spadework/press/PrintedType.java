// SPDX-License-Identifier: Apache-2.0
package spadework.press;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** Every letter of a PDF with its size, face and place, so that prescribed type can be measured where it stands. */
public final class PrintedType {
    /**
     * A letter as it stands on the page.
     *
     * @param page from 1
     * @param y of its base line, in points from the top of the page
     * @param points size of its type
     */
    public record Letter(int page, float x, float y, float points, String face, String text) {}

    /**
     * A run of letters that were found one after another.
     *
     * @param top base line of its first line, in points from the top of the page
     * @param bottom base line of its last line
     * @param least smallest size in it, in points
     */
    public record Found(int page, float top, float bottom, float least, boolean bold) {}

    /** What floating point may take from a size, in points. */
    public static final float HAIR = 0.005f;

    private static final float HEAD = 50;
    private static final float FOOT = 740;

    private final List<Letter> letters;

    private PrintedType(List<Letter> letters) {
        this.letters = letters;
    }

    public static PrintedType of(byte[] pdf) {
        List<Letter> letters = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFTextStripper stripper = new PDFTextStripper() {
                @Override
                protected void writeString(String text, List<TextPosition> positions) {
                    for (TextPosition at : positions) {
                        if (!at.getUnicode().isBlank()) {
                            letters.add(new Letter(
                                    getCurrentPageNo(),
                                    at.getXDirAdj(),
                                    at.getYDirAdj(),
                                    at.getFontSize() * at.getTextMatrix().getScalingFactorX(),
                                    at.getFont().getName(),
                                    at.getUnicode()));
                        }
                    }
                }
            };
            stripper.getText(document);
            return new PrintedType(letters);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Every letter, page by page. */
    public List<Letter> letters() {
        return List.copyOf(letters);
    }

    /** The smallest size of any letter, in points. */
    public double least() {
        return letters.stream().mapToDouble(Letter::points).min().orElseThrow();
    }

    /** The smallest size of any letter of a page below its head and above its foot, in points. */
    public double leastOn(int page) {
        return letters.stream()
                .filter(letter -> letter.page() == page && letter.y() > HEAD && letter.y() < FOOT)
                .mapToDouble(Letter::points)
                .min()
                .orElseThrow();
    }

    /** Every place where the words stand; spaces and line ends do not count. */
    public List<Found> all(String words) {
        String sought = words.replaceAll("\\s+", "");
        StringBuilder text = new StringBuilder();
        List<Integer> owner = new ArrayList<>();
        for (int i = 0; i < letters.size(); i++) {
            String letter = letters.get(i).text();
            text.append(letter);
            for (int c = 0; c < letter.length(); c++) {
                owner.add(i);
            }
        }
        List<Found> found = new ArrayList<>();
        for (int at = text.indexOf(sought); at >= 0; at = text.indexOf(sought, at + sought.length())) {
            found.add(found(letters.subList(owner.get(at), owner.get(at + sought.length() - 1) + 1)));
        }
        return found;
    }

    /** The first place where the words stand. */
    public Optional<Found> find(String words) {
        return all(words).stream().findFirst();
    }

    /** The letters of a page below its head and above its foot, without spaces. */
    public String onPage(int page) {
        StringBuilder text = new StringBuilder();
        letters.stream()
                .filter(letter -> letter.page() == page && letter.y() > HEAD && letter.y() < FOOT)
                .forEach(letter -> text.append(letter.text()));
        return text.toString();
    }

    private static Found found(List<Letter> run) {
        float least = (float) run.stream().mapToDouble(Letter::points).min().orElseThrow();
        boolean bold = run.stream().allMatch(letter -> letter.face().endsWith("-Bold"));
        Letter first = run.get(0);
        return new Found(first.page(), first.y(), run.get(run.size() - 1).y(), least, bold);
    }
}
