// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless.list;

/** Forms in which lists are written. */
enum TableFormat { TEXT, CSV, XLSX, JSON }
