// SPDX-License-Identifier: Apache-2.0
package spadework.picture;

import java.io.IOException;

/** A picture that cannot be printed. The message says what was found. */
public final class PictureFault extends IOException {
    private static final long serialVersionUID = 1L;

    private final String allowed;
    private final String fix;

    PictureFault(String found, String allowed, String fix) {
        super(found);
        this.allowed = allowed;
        this.fix = fix;
    }

    public String allowed() {
        return allowed;
    }

    public String fix() {
        return fix;
    }
}
