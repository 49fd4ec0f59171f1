// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.help;

import org.loomwright.engine.check.Rule;
import org.loomwright.engine.check.RuleCatalogue;

/** The page of rules, made of what the rules say themselves. */
final class RulesPage {
    static final String ID = "rules";

    private RulesPage() {
    }

    static HelpPage make() {
        StringBuilder text = new StringBuilder("<form>").append(HelpPage.titleMarkup(Messages.Rules_title));
        text.append("<p>").append(HelpPage.escaped(Messages.Rules_intro)).append("</p>");
        for (Rule rule : RuleCatalogue.standard().rules()) {
            text.append("<li><b>").append(HelpPage.escaped(rule.slug())).append("</b>: ").append(HelpPage.escaped(rule.says()));
            if (!rule.limits().isEmpty()) {
                text.append(" <span color=\"faint\">").append(HelpPage.escaped(String.join(", ", rule.limits()))).append("</span>");
            }
            text.append("</li>");
        }
        return new HelpPage(ID, text.append("</form>").toString());
    }
}
