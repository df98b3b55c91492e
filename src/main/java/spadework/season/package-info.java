// SPDX-License-Identifier: Apache-2.0
/** What a season brought: won and lost, days sold and worked, money that is out, claims and what brought them. */
package spadework.season;
