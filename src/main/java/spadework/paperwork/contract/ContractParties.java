// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.contract;

import java.util.List;
import java.util.Optional;
import spadework.job.Subcontractor;

/**
 * Who makes the contract, and when.
 *
 * @param signedOn date of the transaction in words; empty where it is filled in by hand
 * @param licenseMore class of the license and its last day, where the company file says so
 * @param salesperson who sold the work, with the number; empty where unknown
 * @param salespersonAddress where; empty where it is the contractor's own
 * @param subcontractors empty where it is unknown whether there are any
 */
public record ContractParties(
        String signedOn,
        String buyerAddress,
        LicenseMore licenseMore,
        String salesperson,
        String salespersonAddress,
        Optional<List<Subcontractor>> subcontractors) {

    /** What company.json says of the contractor beyond license number and liability cover; empty where it is silent. */
    public record LicenseMore(
            String classification,
            String until,
            String taxId,
            String bond,
            String insurerPhone,
            String workers,
            Optional<List<String>> affiliates) {}
}
