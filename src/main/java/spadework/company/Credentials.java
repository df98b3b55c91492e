// SPDX-License-Identifier: Apache-2.0
package spadework.company;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Optional;

/**
 * What entitles the company to contract.
 *
 * @param taxId the firm's number with the tax office; never a person's
 * @param bond the bond or deposit that stands behind the license, with its amount
 * @param affiliates contracting firms that were tied to this one in the last five years; an empty list says that
 *     there were none, a missing one that it is unknown
 */
@RecordBuilder
public record Credentials(
        License license,
        Insurance insurance,
        Optional<String> taxId,
        Optional<String> bond,
        Optional<List<String>> affiliates)
        implements CredentialsBuilder.With {

    public Credentials {
        affiliates = affiliates.map(List::copyOf);
    }

    /** The same with another license. */
    Credentials with(License other) {
        return withLicense(other);
    }
}
