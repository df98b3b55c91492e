// SPDX-License-Identifier: Apache-2.0
/** Fields and tables bound to pointers. */
package spadework.form.field;
