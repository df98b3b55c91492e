// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.work;

/**
 * How one reach of pipe is designed, for crew and engineer. A figure that is not known is empty.
 *
 * @param slope with the least that is wanted, as {@code 1.4% (1.0%)}
 * @param full what it carries full, with its speed
 * @param inflow what comes to it, as a range where that is all that is known
 * @param share high end of the inflow as part of what it carries
 * @param cover soil over the pipe at its start and its end
 */
public record PipeDesignRow(String label, String slope, String full, String inflow, String share, String cover) {}
