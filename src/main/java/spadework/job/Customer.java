// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.util.List;
import java.util.Optional;

/** The homeowner or homeowners who sign. */
public record Customer(List<String> names, Optional<Address> mailing, Optional<String> phone, Optional<String> email) {

    public Customer {
        names = List.copyOf(names);
    }
}
