// SPDX-License-Identifier: Apache-2.0
package spadework.law.release;

import java.util.Optional;

/**
 * A release whose words a state prescribes.
 *
 * @param wording what it says; empty where the prescribed wording was not gathered, which nobody may invent
 * @param status how far the rule was read
 */
public record ReleaseForm(ReleaseKind release, Optional<ReleaseWording> wording, String status, String citation) {}
