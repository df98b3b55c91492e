// SPDX-License-Identifier: Apache-2.0
/**
 * The window in which a job is filled in. Fields are bound to places of the draft; price, findings, workings and the
 * printed page stand beside them. It decides nothing about a job: it asks the office.
 */
package spadework.form;
