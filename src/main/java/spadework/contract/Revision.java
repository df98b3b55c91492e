// SPDX-License-Identifier: Apache-2.0
package spadework.contract;

import java.util.Optional;

/**
 * Which issue of a proposal this is.
 *
 * @param number counted from 1
 * @param moved what moved since the issue before; empty in the first
 */
public record Revision(int number, Optional<IssueDifference> moved) {}
