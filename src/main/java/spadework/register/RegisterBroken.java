// SPDX-License-Identifier: Apache-2.0
package spadework.register;

import java.util.List;
import java.util.stream.Collectors;
import spadework.finding.Fault;
import spadework.wording.Wording;

/** Nothing was written, because what stands in the register already does not hold. */
public final class RegisterBroken extends RuntimeException {
    private static final Wording WORDS = Wording.beside(RegisterBroken.class);

    private static final long serialVersionUID = 1L;

    private final transient List<Fault> faults;

    RegisterBroken(List<Fault> faults) {
        super(WORDS.get(
                "register-broken.nothing-registered-register-changed",
                faults.stream().map(Fault::text).collect(Collectors.joining("; "))));
        this.faults = List.copyOf(faults);
    }

    public List<Fault> faults() {
        return faults;
    }
}
