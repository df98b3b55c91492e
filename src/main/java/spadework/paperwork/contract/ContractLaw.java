// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.contract;

import java.util.List;
import java.util.Optional;

/**
 * What the law asks of the contract.
 *
 * @param permits who gets which permit; empty where nothing is said
 * @param essential whether the completion date is of the essence; empty where the parties have not said
 * @param large whether the law lets no type be as small as the specimen has it elsewhere
 * @param lienOnHome whether the contract gives a security interest in the home
 * @param financed whether a lender is part of the sale
 * @param emergency whether the buyer called because of an emergency
 */
public record ContractLaw(
        String permits,
        Optional<Boolean> essential,
        List<NoticeText> notices,
        CancelTerms cancel,
        boolean large,
        boolean lienOnHome,
        boolean financed,
        boolean emergency) {

    public ContractLaw {
        notices = List.copyOf(notices);
    }
}
