// SPDX-License-Identifier: Apache-2.0
package spadework.register;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import spadework.warranty.Warranty;

/**
 * What is issued under a number: made after the number is known, because it stands on the papers.
 *
 * @param papers for the homeowner: bytes by plain file name; a name holds the number, as
 *     {@code 2026-014-W1-warranty.pdf}
 * @param kept what stays with the contractor, by plain file name: sources with wages and prices, signed papers
 * @param facts what else the register keeps, in this order
 * @param warranty the warranty, with a certificate
 */
public record Issue(
        Map<String, byte[]> papers, Map<String, byte[]> kept, Map<String, String> facts, Optional<Warranty> warranty) {

    public Issue {
        papers = Collections.unmodifiableMap(new LinkedHashMap<>(papers));
        kept = Collections.unmodifiableMap(new LinkedHashMap<>(kept));
        facts = Collections.unmodifiableMap(new LinkedHashMap<>(facts));
    }

    public static Issue of(Map<String, byte[]> papers, Map<String, String> facts) {
        return of(papers, Map.of(), facts);
    }

    public static Issue of(Map<String, byte[]> papers, Map<String, byte[]> kept, Map<String, String> facts) {
        return new Issue(papers, kept, facts, Optional.empty());
    }

    public static Issue of(Map<String, byte[]> papers, Warranty warranty) {
        return new Issue(papers, Map.of(), Map.of(), Optional.of(warranty));
    }

    /** Made under a number. */
    @FunctionalInterface
    public interface Making {
        /** @param mark of the register's last line, to be printed on the papers */
        Issue made(DocumentNumber number, SealMark mark);
    }
}
