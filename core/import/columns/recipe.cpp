// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/columns/recipe.h"

#include "core/base/translation.h"
#include "core/import/text/limits.h"
#include "core/import/vocabulary/units_in_text.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>

namespace lapwright::import {
namespace {

using base::Error;
using base::ErrorCode;
using base::said;
using Json = nlohmann::ordered_json;

constexpr int format_version = 1;

std::optional<base::Unit> parse_unit_name(const std::string& text) {
    const auto unit = unit_of_name(text);
    return unit ? unit : parse_unit(text);
}

// A column that is not read has no meaning, one that is no channel neither.
RecipeColumn plain(RecipeColumn column) {
    if (column.role == Role::skip) return {column.header, Role::skip};
    if (column.role != Role::channel) column.meaning = recording::Meaning::other;
    return column;
}

Json to_json(const RecipeColumn& column) {
    Json json;
    json["header"] = column.header;
    json["use"] = name(column.role);
    if (column.role == Role::skip) return json;
    if (column.role == Role::channel) json["meaning"] = recording::name(column.meaning);
    json["unit"] = unit_name(column.unit);
    json["form"] = name(column.form);
    if (column.scale != 1.0) json["scale"] = column.scale;
    return json;
}

std::string text_of(const Json& json, const char* key, const char* otherwise) {
    const auto found = json.find(key);
    return found != json.end() && found->is_string() ? found->get<std::string>() : std::string(otherwise);
}

std::optional<double> number_of(const Json& json, const char* key) {
    const auto found = json.find(key);
    return found != json.end() && found->is_number() ? std::optional(found->get<double>()) : std::nullopt;
}

class Reader {
  public:
    explicit Reader(const std::string& name) : name_(name) {}

    base::Result<Recipe> read(std::string_view text) {
        const Json json = Json::parse(text, nullptr, false);
        if (json.is_discarded() || !json.is_object()) return refused(said("this is no JSON document"));
        if (number_of(json, "recipe") != format_version) return refused(said("this is no import recipe of version 1"));
        Recipe recipe;
        recipe.title = text_of(json, "title", "");
        const std::string delimiter = text_of(json, "delimiter", ",");
        if (delimiter != "blanks" && delimiter.size() != 1)
            return refused(said("\"delimiter\" is neither one character nor \"blanks\""));
        recipe.delimiter = delimiter == "blanks" ? Delimiter{' ', true} : Delimiter{delimiter.front(), false};
        const std::string mark = text_of(json, "decimal_mark", ".");
        if (mark != "." && mark != ",") return refused(said("\"decimal_mark\" is neither point nor comma"));
        recipe.decimal_mark = mark.front();
        recipe.row_rate_hz = number_of(json, "row_rate_hz");
        if (recipe.row_rate_hz && !(*recipe.row_rate_hz >= 0.1 && *recipe.row_rate_hz <= 10'000.0))
            return refused(said("\"row_rate_hz\" is outside 0.1 to 10,000"));
        const auto columns = json.find("columns");
        if (columns == json.end() || !columns->is_array() || columns->size() > max_columns)
            return refused(said("\"columns\" is missing"));
        for (const Json& column : *columns) {
            if (const auto added = add(recipe, column); !added) return added.error();
        }
        return recipe;
    }

  private:
    [[nodiscard]] Error refused(const std::string& what) const {
        return {ErrorCode::recipe_not_readable,
                {name_, {}, ""},
                what,
                said("write the recipe again from the column dialog")};
    }

    base::Result<void> add(Recipe& recipe, const Json& json) {
        if (!json.is_object()) return refused(said("an entry of \"columns\" is no object"));
        RecipeColumn column;
        column.header = text_of(json, "header", "");
        const auto in_column = [&](const std::string& what) {
            return refused("column \"" + column.header + "\": " + what);
        };
        const auto role = parse_role(text_of(json, "use", "channel"));
        const auto meaning = recording::parse_meaning(text_of(json, "meaning", "other"));
        const auto unit = parse_unit_name(text_of(json, "unit", ""));
        const auto form = parse_cell_form(text_of(json, "form", "number"));
        if (!role) return in_column(said("\"use\" is not known"));
        if (!meaning) return in_column(said("\"meaning\" is not known"));
        if (!unit) return in_column(said("\"unit\" is not known"));
        if (!form) return in_column(said("\"form\" is not known"));
        const bool measured = *unit == base::Unit::none || *meaning == recording::Meaning::other ||
                              recording::quantity(*meaning) == base::quantity(*unit);
        if (*role == Role::channel && !measured) return in_column(said("its unit does not measure its meaning"));
        column.scale = number_of(json, "scale").value_or(1.0);
        if (!std::isfinite(column.scale) || column.scale == 0.0)
            return in_column(said("\"scale\" is no usable number"));
        column.role = *role;
        column.meaning = *meaning;
        column.unit = *unit;
        column.form = *form;
        recipe.columns.push_back(plain(std::move(column)));
        return {};
    }

    const std::string& name_;
};

} // namespace

std::string words(const Recipe& recipe) {
    return recipe.title.empty() ? said("a recipe without a title") : said("the recipe \"%1\"", {recipe.title});
}

std::string write_recipe(const Recipe& recipe) {
    Json json;
    json["recipe"] = format_version;
    json["title"] = recipe.title;
    json["delimiter"] = recipe.delimiter.blanks ? "blanks" : std::string(1, recipe.delimiter.mark);
    json["decimal_mark"] = std::string(1, recipe.decimal_mark);
    if (recipe.row_rate_hz) json["row_rate_hz"] = *recipe.row_rate_hz;
    json["columns"] = Json::array();
    for (const RecipeColumn& column : recipe.columns)
        json["columns"].push_back(to_json(column));
    return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

base::Result<Recipe> read_recipe(std::string_view json, const std::string& name) {
    return Reader(name).read(json);
}

Recipe make_recipe(std::string title, const Layout& layout, const std::vector<ColumnGuess>& guesses) {
    Recipe recipe;
    recipe.title = std::move(title);
    recipe.delimiter = layout.delimiter;
    recipe.decimal_mark = layout.style.decimal_mark;
    for (const ColumnGuess& guess : guesses)
        recipe.columns.push_back(plain({guess.header, guess.role, guess.meaning, guess.unit, guess.form, guess.scale}));
    return recipe;
}

bool fits(const Recipe& recipe, const Layout& layout) {
    return recipe.delimiter == layout.delimiter &&
           std::ranges::equal(recipe.columns, layout.names, {},
                              [](const RecipeColumn& column) { return column.header; });
}

void apply(const Recipe& recipe, Layout& layout, std::vector<ColumnGuess>& guesses) {
    layout.style.decimal_mark = recipe.decimal_mark;
    layout.decimal_mark_unsure = false;
    for (std::size_t i = 0; i < guesses.size(); ++i) {
        ColumnGuess& guess = guesses[i];
        const auto same = [&](const RecipeColumn& column) { return column.header == guess.header; };
        // Two columns may bear the same name: the one at the same place, else the first of that name.
        const bool at_place = i < recipe.columns.size() && same(recipe.columns[i]);
        const auto found = at_place ? recipe.columns.begin() + static_cast<std::ptrdiff_t>(i)
                                    : std::ranges::find_if(recipe.columns, same);
        if (found == recipe.columns.end()) continue;
        guess.role = found->role;
        guess.meaning = found->meaning;
        guess.unit = found->unit;
        guess.form = found->form;
        guess.scale = found->scale;
        guess.confidence = 1.0;
        guess.reason = base::said("said by %1", {words(recipe)});
        guess.doubt.clear();
        guess.settled = true;
    }
}

} // namespace lapwright::import
