// SPDX-License-Identifier: Apache-2.0
/** Where things lie round the house: spots on its outline, the ways between them, the side that words point to. */
package spadework.place;
