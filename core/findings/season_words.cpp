// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/findings/season_words.h"

#include "core/base/translation.h"

namespace lapwright::findings {

std::string effect_title(const season::ItemEffect& effect) {
    const auto shown = [](const std::string& value) { return value.empty() ? "—" : value; };
    return effect.item + " " + shown(effect.before) + " → " + shown(effect.after);
}

std::string effect_sentence(const season::ItemEffect& effect) {
    const std::string there = figure_changes_text(effect.change);
    return base::labelled(effect_title(effect),
                          there.empty() ? base::said("cannot be told from these sessions") : there);
}

} // namespace lapwright::findings
