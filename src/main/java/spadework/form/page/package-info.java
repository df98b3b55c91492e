// SPDX-License-Identifier: Apache-2.0
/** The pages of a job. */
package spadework.form.page;
