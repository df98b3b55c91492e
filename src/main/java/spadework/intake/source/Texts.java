// SPDX-License-Identifier: Apache-2.0
package spadework.intake.source;

import java.util.Optional;
import java.util.regex.Pattern;

/** Free text, and labels that fit on one line. Whatever they hold is only ever printed. */
public final class Texts {
    static final int LONGEST_TEXT = 2_000;
    static final int LONGEST_LABEL = 120;

    private static final Pattern ZIP_CODE = Pattern.compile("\\d{5}(-\\d{4})?");
    /** Neither what systems keep for themselves, nor what cannot be seen: marks of direction, separators of lines. */
    private static final String PART = "[^/\\\\:*?\"<>|\\p{Cc}\\p{Cf}\\p{Zl}\\p{Zp}]+";

    private static final Pattern FILE_NAME = Pattern.compile("(?!.*\\.\\.)" + PART + "(/" + PART + ")*");

    /** Up to 2,000 characters on several lines. */
    public static final ValueKind<String> TEXT = text(LONGEST_TEXT, true);
    /** Up to 120 characters on one line. */
    public static final ValueKind<String> LABEL = text(LONGEST_LABEL, false);

    public static final ValueKind<String> ZIP = form(ZIP_CODE, "a zip code of 5 or 9 digits", "43000");
    /** A file beside the one that names it. */
    public static final ValueKind<String> FILE =
            form(FILE_NAME, "the name of a file in the same folder or one inside it", "north-wall.jpg");

    public static final ValueKind<Boolean> YES_OR_NO =
            new ValueKind<>("true or false", node -> node.yesOrNo().orElse(false));

    /** What was not looked at. */
    public static final String UNKNOWN = "unknown";

    /** The same where "unknown" is an answer as well, which is empty. */
    public static final ValueKind<Optional<Boolean>> YES_NO_OR_UNKNOWN = new ValueKind<>("true or false", Texts::known);

    private Texts() {}

    private static Optional<Boolean> known(SourceNode node) {
        if (node.isSilent()) {
            return Optional.of(false);
        }
        if (node.json().isBoolean()) {
            return Optional.of(node.json().booleanValue());
        }
        if (!node.json().isTextual() || !node.json().textValue().equals(UNKNOWN)) {
            node.fault(
                    node.written(),
                    "true, false or \"unknown\"",
                    node.json().isNull()
                            ? "write a value, or take the key out"
                            : "write true or false without quotes, or \"unknown\"");
        }
        return Optional.empty();
    }

    /** Checks a name that stands as a key. */
    static void checkName(SourceNode node, String name) {
        fault(name, LONGEST_LABEL, false).ifPresent(f -> node.fault(f.found, f.allowed, f.fix));
    }

    private static ValueKind<String> text(int longest, boolean lines) {
        String example = "\"…\"";
        String allowed = "text of 1 to " + longest + " characters";
        return new ValueKind<>(example, node -> {
            Optional<String> text = node.text(allowed, "text in double quotes");
            text.flatMap(written -> fault(written, longest, lines))
                    .ifPresent(f -> node.fault(f.found, f.allowed, f.fix));
            return text.orElse("");
        });
    }

    private static ValueKind<String> form(Pattern form, String allowed, String example) {
        return new ValueKind<>("\"" + example + "\"", node -> {
            String text = LABEL.read(node);
            if (!node.isSilent() && !form.matcher(text).matches()) {
                node.fault(node.written(), allowed, "write it as \"" + example + "\"");
            }
            return text;
        });
    }

    private record Flaw(String found, String allowed, String fix) {}

    private static Optional<Flaw> fault(String text, int longest, boolean lines) {
        int length = text.codePointCount(0, text.length());
        if (length > longest) {
            return Optional.of(
                    new Flaw(length + " characters", "at most " + longest + " characters", "shorten the text"));
        }
        if (text.isBlank()) {
            return Optional.of(new Flaw("empty text", "text of 1 to " + longest + " characters", "fill it in"));
        }
        return text.codePoints()
                .filter(c -> !isPrintable(c, lines))
                .mapToObj(c -> new Flaw(
                        String.format(
                                Character.getType(c) == Character.CONTROL
                                        ? "the control character U+%04X"
                                        : "U+%04X, which is no character",
                                c),
                        lines ? "text, line breaks (\\n) and tabs (\\t)" : "text on one line",
                        "take it out"))
                .findFirst();
    }

    /** What a document can carry: no control characters, no half characters, no code points that are none. */
    private static boolean isPrintable(int c, boolean lines) {
        boolean layout = lines && (c == '\n' || c == '\t');
        boolean noCharacter = (c & 0xFFFE) == 0xFFFE || (c >= 0xFDD0 && c <= 0xFDEF);
        int type = Character.getType(c);
        return layout || (type != Character.CONTROL && type != Character.SURROGATE && !noCharacter);
    }
}
