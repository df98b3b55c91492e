// SPDX-License-Identifier: Apache-2.0
package spadework.office.store;

import java.io.IOException;
import spadework.reason.SaidInFull;
import spadework.store.StoreText;

/** What was asked of an office cannot be done; the message says why and what to do. */
final class OfficeRefusal extends IOException implements SaidInFull {
    private static final long serialVersionUID = 1L;

    OfficeRefusal(String key, Object... about) {
        super(StoreText.of(key, about));
    }
}
