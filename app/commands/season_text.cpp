// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/season_text.h"

#include "app/commands/book_text.h"
#include "app/commands/json_parts.h"
#include "app/commands/table_text.h"
#include "app/commands/trial_text.h"
#include "core/base/plain_text.h"
#include "core/findings/season_words.h"

namespace lapwright::commands {

using nlohmann::ordered_json;

std::string together_json(const analysis::CarSeason& season) {
    ordered_json effects = ordered_json::array();
    for (const season::ItemEffect& effect : season.effects)
        effects.push_back({{"item", effect.item},
                           {"before", text_or_null(effect.before)},
                           {"after", text_or_null(effect.after)},
                           {"change", figure_changes_json(effect.change)}});
    ordered_json left_out = ordered_json::array();
    for (const analysis::LeftOut& one : season.left_out)
        left_out.push_back({{"id", static_cast<std::int64_t>(one.session.id)},
                            {"file", one.session.source.file_name},
                            {"why", one.why}});
    return document_text({{"sessions", figure_rows_json(season.sessions)},
                          {"so_far", figure_rows_json(season.so_far)},
                          {"setup_changes", effects},
                          {"left_out", left_out},
                          {"notes", season.notes}});
}

std::string together_table(const analysis::CarSeason& season) {
    std::string text = "Each session's figures, from all sessions together:\n" + figures_table(season.sessions) +
                       "\nAs they were known after each session:\n" + figures_table(season.so_far);
    if (!season.effects.empty()) {
        std::vector<std::vector<std::string>> rows{{"setup"}};
        for (const season::ItemEffect& effect : season.effects) {
            rows.push_back({findings::effect_title(effect)});
            for (const findings::FigureChangeLine& line : findings::figure_change_lines(effect.change)) {
                if (rows.size() == 2) rows.front().push_back(line.figure);
                rows.back().push_back(line.change);
            }
        }
        text += "\nWhat a change of the setup did to the car:\n" + aligned(rows, 1);
    }
    for (const analysis::LeftOut& one : season.left_out)
        text += base::without_controls(one.session.source.file_name) + " is left out: " + one.why + "\n";
    for (const std::string& note : season.notes)
        text += note + "\n";
    return text;
}

} // namespace lapwright::commands
