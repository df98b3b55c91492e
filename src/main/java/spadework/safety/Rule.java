// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import java.util.List;
import spadework.finding.Finding;

/** A family of rules. It looks at a job and says what it found; it never throws, prints or decides. */
@FunctionalInterface
interface Rule {
    List<Finding> check(Facts facts);
}
