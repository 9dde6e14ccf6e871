// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/causes/telling_order.h"

#include "core/base/translation.h"

#include <algorithm>
#include <array>

namespace lapwright::causes {
namespace {

using base::said;
using base::word;

// A width out of 200 draws is known to some 8 % (the standard error of a quantile): nearer than that is a tie, and the
// split, which says more, keeps its place.
constexpr double clearly_narrower = 0.9;

struct Sum {
    Term whole;
    Term first;
    Term second;
};
constexpr std::array<Sum, 3> sums{{{Term::cornering, Term::tyre_grip, Term::downforce},
                                   {Term::straights, Term::drag, Term::power},
                                   {Term::aero, Term::downforce, Term::drag}}};

bool better_known(const Seconds& sum, const Seconds& part) {
    if (!sum.told()) return false;
    return !part.told() || sum.half_width() < clearly_narrower * part.half_width();
}

bool has_part(const Sum& sum, Term part) {
    return sum.first == part || sum.second == part;
}

// Aero shares downforce with the one sum and drag with the other.
bool leans_on(const Row& total, const Sum& sum) {
    const Term shared = sum.whole == Term::cornering ? Term::downforce : Term::drag;
    return sum.whole != Term::aero && better_known(of(total, sum.whole), of(total, shared));
}

} // namespace

std::string_view key(Term term) {
    switch (term) {
    case Term::cornering:
        return "grip_and_downforce";
    case Term::aero:
        return "aero";
    case Term::straights:
        return "drag_and_power";
    case Term::cornering_as_driven:
        return "cornering_as_driven";
    default:
        return key(static_cast<Cause>(term));
    }
}

const char* english_name(Term term) {
    switch (term) {
    case Term::cornering:
        return word("tyre grip and downforce");
    case Term::aero:
        return word("aero");
    case Term::straights:
        return word("drag and power");
    case Term::cornering_as_driven:
        return word("cornering as driven");
    default:
        return english_name(static_cast<Cause>(term));
    }
}

std::string name(Term term) {
    return said(english_name(term));
}

const Seconds& of(const Row& row, Term term) {
    switch (term) {
    case Term::cornering:
        return row.cornering;
    case Term::aero:
        return row.aero;
    case Term::straights:
        return row.straights;
    case Term::cornering_as_driven:
        return row.cornering_as_driven;
    default:
        return row.of(static_cast<Cause>(term));
    }
}

std::optional<Term> comes_behind(const Row& total, Term term) {
    if (term == Term::cornering && better_known(total.cornering_as_driven, total.cornering))
        return Term::cornering_as_driven;
    std::optional<Term> before;
    for (const Sum& sum : sums) {
        const bool bears_on = term == Term::aero ? leans_on(total, sum) : has_part(sum, term);
        if (!bears_on || !better_known(of(total, sum.whole), of(total, term))) continue;
        if (!before || of(total, sum.whole).half_width() < of(total, *before).half_width()) before = sum.whole;
    }
    return before;
}

std::vector<Column> columns(const Row& total) {
    std::vector<Column> all;
    for (const Sum& sum : {sums[0], sums[1]}) {
        const bool split = !better_known(of(total, sum.whole), of(total, sum.first)) &&
                           !better_known(of(total, sum.whole), of(total, sum.second));
        const std::optional<Term> part_of = split ? std::nullopt : std::optional(sum.whole);
        if (!split) all.push_back({sum.whole});
        for (const Term part : {sum.first, sum.second})
            all.push_back({part, part_of, comes_behind(total, part).has_value()});
    }
    all.push_back({Term::mass});
    return all;
}

} // namespace lapwright::causes
