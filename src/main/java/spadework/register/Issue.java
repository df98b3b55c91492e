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
 * @param files bytes by plain file name; a name holds the number, as {@code 2026-014-W1-warranty.pdf}
 * @param facts what else the register keeps, in this order
 * @param warranty the warranty, with a certificate
 */
public record Issue(Map<String, byte[]> files, Map<String, String> facts, Optional<Warranty> warranty) {

    public Issue {
        files = Collections.unmodifiableMap(new LinkedHashMap<>(files));
        facts = Collections.unmodifiableMap(new LinkedHashMap<>(facts));
    }

    public static Issue of(Map<String, byte[]> files, Map<String, String> facts) {
        return new Issue(files, facts, Optional.empty());
    }

    public static Issue of(Map<String, byte[]> files, Warranty warranty) {
        return new Issue(files, Map.of(), Optional.of(warranty));
    }
}
