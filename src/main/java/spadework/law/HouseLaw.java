// SPDX-License-Identifier: Apache-2.0
package spadework.law;

import java.util.Optional;

/**
 * The law of contracts where the house stands.
 *
 * @param federal what federal law asks of the contract in every state
 * @param state what is known of the state's contract law; empty where it was not gathered
 */
public record HouseLaw(StateRules federal, Optional<StateRules> state) {}
