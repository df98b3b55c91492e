// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.util.Optional;

/**
 * Somebody who signs for an owner, and by what right.
 *
 * @param owner the name of the owner, as the job has it
 * @param document file of the paper that shows the right, in the job's folder
 */
public record Signer(String name, SigningRight right, String owner, Optional<String> document) {}
