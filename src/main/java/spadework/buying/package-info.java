// SPDX-License-Identifier: Apache-2.0
/** What is bought for a job: by supplier, in whole packages, on the day before it is needed. */
package spadework.buying;
