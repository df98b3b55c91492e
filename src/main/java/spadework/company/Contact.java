// SPDX-License-Identifier: Apache-2.0
package spadework.company;

import spadework.job.Address;

/** Where the company is reached. */
public record Contact(Address address, String phone, String email) {}
