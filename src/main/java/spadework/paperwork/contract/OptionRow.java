// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.contract;

import spadework.money.Dollars;
import spadework.paperwork.work.AlteredWork;

/**
 * An option with what it changes.
 *
 * @param price with any sales tax; below zero where it takes work away
 * @param state {@code open} until the proposal is accepted, then {@code taken} or {@code declined}
 * @param work what it adds and takes away, in words
 */
public record OptionRow(String label, String title, String why, Dollars price, String state, AlteredWork work) {}
