// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.util.Optional;

/** Who sold the work. */
public record Salesperson(String name, Optional<String> license) {}
