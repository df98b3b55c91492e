// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.cost;

import java.math.BigDecimal;

/** How long a crew is on the job. */
public record CrewRow(String crew, String members, BigDecimal hours, BigDecimal days) {}
