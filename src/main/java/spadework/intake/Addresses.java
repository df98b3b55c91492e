package spadework.intake;

import spadework.job.Address;

/** Postal addresses. */
final class Addresses {
    static final Kind<Address> ADDRESS = Kind.object(fields -> new Address(
            fields.get("street", Texts.LABEL),
            fields.get("city", Texts.LABEL),
            fields.get("state", States.STATE),
            fields.get("zip", Texts.ZIP)));

    private Addresses() {}
}
