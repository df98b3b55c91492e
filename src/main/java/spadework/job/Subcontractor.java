// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.util.Optional;

/**
 * Who works under us.
 *
 * @param trade what they do
 */
public record Subcontractor(String name, String address, String phone, Optional<String> license, String trade) {}
