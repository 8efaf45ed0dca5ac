/** The planner's screen: the plan drawn and told, its search, its publication. */
package org.potlife.web.plan;
