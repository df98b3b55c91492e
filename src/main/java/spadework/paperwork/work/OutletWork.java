// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.work;

/** Where the water ends. {@code kind} is {@code daylight}, {@code sump} or {@code approved storm}. */
public record OutletWork(
        String label,
        String kind,
        String what,
        String level,
        String fromHouse,
        String fromLotLine,
        String permission) {}
