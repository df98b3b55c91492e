// SPDX-License-Identifier: Apache-2.0
package spadework.reason;

/** A failure whose message says in whole sentences what happened and what to do; nothing is put before it. */
public interface SaidInFull {}
