// SPDX-License-Identifier: Apache-2.0
package spadework.company;

import java.util.Optional;

/**
 * Whom a homeowner asks for.
 *
 * @param phone a number of the person's own; empty where the office's number reaches the person
 */
public record ContactPerson(String name, Optional<String> phone) {}
