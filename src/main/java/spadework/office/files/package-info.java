// SPDX-License-Identifier: Apache-2.0
/** Folders, job files, pictures. */
package spadework.office.files;
