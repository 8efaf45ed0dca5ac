/** The screens of the office: orders, the shop's set-up, the day's end. */
package org.potlife.web.office;
