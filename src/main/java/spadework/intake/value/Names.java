// SPDX-License-Identifier: Apache-2.0
package spadework.intake.value;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import spadework.intake.source.Excerpt;
import spadework.intake.source.NearestName;
import spadework.intake.source.SourceFile;
import spadework.intake.source.Texts;
import spadework.intake.source.ValueKind;
import spadework.spelling.FormerSpelling;

/**
 * Names that something else may refer to.
 *
 * @param what what such a name is, as "a crew of company.json"
 * @param known the names
 * @param complete false when one of them could not be read, so that a strange name proves nothing
 */
public record Names(String what, Set<String> known, boolean complete) {
    private static final int LISTED = 12;

    public Names {
        known = new TreeSet<>(known);
    }

    public static Names of(String what, Collection<String> known) {
        return new Names(what, Set.copyOf(known), true);
    }

    /** No list to check against, because the file that holds it could not be read. */
    public static Names unknown(String what) {
        return new Names(what, Set.of(), false);
    }

    /** A label that has to be one of these names. */
    public ValueKind<String> kind() {
        return new ValueKind<>("\"…\"", node -> {
            String written = Texts.LABEL.read(node);
            String name = known.contains(written) ? written : FormerSpelling.currentCode(written);
            if (!node.isSilent()) {
                check(node.sheet(), node.pointer(), name, node.written());
            }
            return name;
        });
    }

    /** Whether the name is one of these. */
    public boolean holds(String name) {
        return known.contains(name);
    }

    /** Notes a fault when the name is none of these. */
    public void check(SourceFile sheet, String pointer, String name, String found) {
        if (complete && !known.contains(name)) {
            sheet.fault(pointer, found, allowed(), fix(name));
        }
    }

    private String allowed() {
        if (known.isEmpty()) {
            return what + "; there is none";
        }
        List<String> first = known.stream().limit(LISTED).toList();
        return known.size() > LISTED ? what : what + ": " + String.join(", ", first);
    }

    private String fix(String name) {
        Optional<String> nearest = NearestName.of(name, known);
        if (known.isEmpty()) {
            return "add it there";
        }
        return nearest.map(meant -> "write " + Excerpt.quoted(meant) + ", or add what is missing there")
                .orElse("use one of them, or add it there");
    }
}
