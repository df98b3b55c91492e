// SPDX-License-Identifier: Apache-2.0
package spadework.intake.value;

import spadework.intake.source.Texts;
import spadework.intake.source.ValueKind;
import spadework.job.Address;

/** Postal addresses. */
public final class Addresses {
    public static final ValueKind<Address> ADDRESS = ValueKind.object(fields -> new Address(
            fields.get("street", Texts.LABEL),
            fields.get("city", Texts.LABEL),
            fields.get("state", States.STATE),
            fields.get("zip", Texts.ZIP)));

    /** Two letters of a state. */
    public static final ValueKind<String> STATE = States.STATE;

    private Addresses() {}
}
