// SPDX-License-Identifier: Apache-2.0
package spadework.company;

import java.util.Optional;
import spadework.job.Address;

/**
 * Where the company is reached.
 *
 * @param person whom a homeowner asks for; empty where the company names nobody, which is found
 */
public record Contact(Address address, String phone, String email, Optional<ContactPerson> person) {}
