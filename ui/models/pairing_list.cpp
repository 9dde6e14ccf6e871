// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/pairing_list.h"

#include "core/base/number_text.h"
#include "core/base/wording.h"
#include "ui/models/text.h"

#include <utility>

namespace lapwright::models {
namespace {

// "Wren Alder, Plover, lap 4, 16 May 2026, 10:20 UTC", as far as it is known.
QString side_words(const book::SessionSummary& session, int lap) {
    QStringList words;
    for (const std::string& name : {session.driver, session.car})
        if (!name.empty()) words << text(name);
    if (words.isEmpty()) words << text(session.source.file_name);
    words << PairingList::tr("lap %1").arg(text(base::integer_text(lap)));
    if (session.start_unix_s) words << text(base::date_text(*session.start_unix_s));
    return words.join(QStringLiteral(", "));
}

} // namespace

using book::PairingSummary;

PairingList::PairingList(QObject* parent) : TextTable(parent) {
    set_pairings({});
}

void PairingList::set_pairings(std::vector<PairingSummary> pairings) {
    pairings_ = std::move(pairings);
    const auto column = [this](const QString& title, const auto& say) {
        return column_of(pairings_, title, false, say);
    };
    show_columns({
        column(tr("Track"), [](const PairingSummary& one) { return text_or_dash(one.a.track); }),
        column(tr("Lap A"), [](const PairingSummary& one) { return side_words(one.a, one.kept.pairing.lap_a); }),
        column(tr("Lap B"), [](const PairingSummary& one) { return side_words(one.b, one.kept.pairing.lap_b); }),
        column(tr("What came out"),
               [](const PairingSummary& one) {
                   const book::Pairing& kept = one.kept.pairing;
                   return text(kept.title.empty() ? kept.sentence : base::labelled(kept.title, kept.sentence));
               }),
        column(tr("Compared"),
               [](const PairingSummary& one) { return text(base::date_text(one.kept.pairing.changed_unix_s)); }),
    });
}

} // namespace lapwright::models
