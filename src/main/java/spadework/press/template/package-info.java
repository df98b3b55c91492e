// SPDX-License-Identifier: Apache-2.0
/** Templates read, filled and faulted. */
package spadework.press.template;
