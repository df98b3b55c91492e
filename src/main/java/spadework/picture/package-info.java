// SPDX-License-Identifier: Apache-2.0
/** Pictures from outside: decoded within bounds, turned upright, and freed of everything but the picture. */
package spadework.picture;
