// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.util.Optional;

/**
 * Who sold the work.
 *
 * @param address where the salesperson is reached for business; empty where it is the contractor's own
 */
public record Salesperson(String name, Optional<String> license, Optional<String> address) {}
