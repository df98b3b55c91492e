// SPDX-License-Identifier: Apache-2.0
/** Price, findings, drawing and page beside them. */
package spadework.form.view;
