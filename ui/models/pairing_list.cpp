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

QString cell(const book::PairingSummary& one, int column) {
    const book::Pairing& pairing = one.kept.pairing;
    switch (column) {
    case PairingList::track_column:
        return text_or_dash(one.a.track);
    case PairingList::a_column:
        return side_words(one.a, pairing.lap_a);
    case PairingList::b_column:
        return side_words(one.b, pairing.lap_b);
    case PairingList::outcome_column:
        return text(pairing.title.empty() ? pairing.sentence : pairing.title + ": " + pairing.sentence);
    case PairingList::kept_column:
        return text(base::date_text(pairing.changed_unix_s));
    default:
        return {};
    }
}

} // namespace

void PairingList::set_pairings(std::vector<book::PairingSummary> pairings) {
    beginResetModel();
    pairings_ = std::move(pairings);
    endResetModel();
}

int PairingList::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(pairings_.size());
}

int PairingList::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : columns;
}

QVariant PairingList::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= rowCount()) return {};
    const QString words = cell(pairings_[static_cast<std::size_t>(index.row())], index.column());
    if (role == Qt::DisplayRole) return words;
    // Escaped: a name is never read as mark-up.
    if (role == Qt::ToolTipRole) return QStringLiteral("<qt>%1</qt>").arg(words.toHtmlEscaped());
    return {};
}

QVariant PairingList::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole) return QVariant::fromValue(Qt::Alignment(Qt::AlignVCenter | Qt::AlignLeft));
    if (role != Qt::DisplayRole) return {};
    switch (section) {
    case track_column:
        return tr("Track");
    case a_column:
        return tr("Lap A");
    case b_column:
        return tr("Lap B");
    case outcome_column:
        return tr("What came out");
    case kept_column:
        return tr("Compared");
    default:
        return {};
    }
}

} // namespace lapwright::models
