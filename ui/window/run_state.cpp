// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/run_state.h"

#include "core/platform/files.h"
#include "ui/models/file_name.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <algorithm>

namespace lapwright::window {
namespace {

using workspace::Origin;

const QString ending = QStringLiteral(".run.json");
constexpr qint64 most_bytes = 1024 * 1024;
constexpr qsizetype most_rows = 200;

QJsonObject origin_value(const Origin& origin) {
    if (const auto* file = std::get_if<std::string>(&origin)) return {{QStringLiteral("file"), models::path(*file)}};
    return {{QStringLiteral("in_book"), static_cast<qint64>(std::get<book::SessionId>(origin))}};
}

std::optional<Origin> origin_from(const QJsonValue& value) {
    const QString file = value[QLatin1String("file")].toString();
    if (!file.isEmpty()) return models::file_name(file);
    const qint64 id = value[QLatin1String("in_book")].toInteger(-1);
    return id < 0 ? std::nullopt : std::optional<Origin>(book::SessionId{id});
}

QJsonValue lap_value(const std::optional<RunState::Lap>& lap) {
    if (!lap) return {};
    QJsonObject value = origin_value(lap->origin);
    value[QLatin1String("lap")] = lap->number;
    return value;
}

std::optional<RunState::Lap> lap_from(const QJsonValue& value) {
    const auto origin = origin_from(value);
    if (!origin || !value[QLatin1String("lap")].isDouble()) return std::nullopt;
    return RunState::Lap{*origin, value[QLatin1String("lap")].toInt()};
}

QJsonObject draft_value(const RunState::Draft& draft) {
    const auto& bytes = draft.about.session.checksum;
    const QByteArray key(reinterpret_cast<const char*>(bytes.data()), static_cast<qsizetype>(bytes.size()));
    QJsonObject value{{QStringLiteral("session"), QString::fromLatin1(key.toHex())},
                      {QStringLiteral("text"), draft.text}};
    if (draft.about.lap) value[QLatin1String("lap")] = *draft.about.lap;
    if (!draft.about.segment.empty()) value[QLatin1String("segment")] = QString::fromStdString(draft.about.segment);
    if (draft.about.at_m) value[QLatin1String("at_m")] = *draft.about.at_m;
    return value;
}

std::optional<RunState::Draft> draft_from(const QJsonValue& value) {
    const QByteArray key = QByteArray::fromHex(value[QLatin1String("session")].toString().toLatin1());
    RunState::Draft draft{{}, value[QLatin1String("text")].toString()};
    auto& bytes = draft.about.session.checksum;
    if (key.size() != static_cast<qsizetype>(bytes.size()) || draft.text.isEmpty()) return std::nullopt;
    std::ranges::copy(key, bytes.begin());
    if (value[QLatin1String("lap")].isDouble()) draft.about.lap = value[QLatin1String("lap")].toInt();
    draft.about.segment = value[QLatin1String("segment")].toString().toStdString();
    if (value[QLatin1String("at_m")].isDouble()) draft.about.at_m = value[QLatin1String("at_m")].toDouble();
    return draft;
}

} // namespace

QByteArray run_state_text(const RunState& state) {
    QJsonArray sessions;
    for (const Origin& origin : state.sessions)
        sessions.append(origin_value(origin));
    QJsonArray drafts;
    for (const RunState::Draft& draft : state.drafts)
        drafts.append(draft_value(draft));
    return QJsonDocument(QJsonObject{{QStringLiteral("book"), state.book},
                                     {QStringLiteral("sessions"), sessions},
                                     {QStringLiteral("a"), lap_value(state.a)},
                                     {QStringLiteral("b"), lap_value(state.b)},
                                     {QStringLiteral("page"), state.page},
                                     {QStringLiteral("typed"), drafts}})
        .toJson(QJsonDocument::Compact);
}

std::optional<RunState> parse_run_state(const QByteArray& text) {
    const QJsonObject value = QJsonDocument::fromJson(text).object();
    RunState state;
    state.book = value[QLatin1String("book")].toString();
    const QJsonArray sessions = value[QLatin1String("sessions")].toArray();
    for (qsizetype i = 0; i < std::min(sessions.size(), most_rows); ++i)
        if (const auto origin = origin_from(sessions[i])) state.sessions.push_back(*origin);
    if (state.empty()) return std::nullopt;
    state.a = lap_from(value[QLatin1String("a")]);
    state.b = lap_from(value[QLatin1String("b")]);
    state.page = value[QLatin1String("page")].toInt();
    const QJsonArray drafts = value[QLatin1String("typed")].toArray();
    for (qsizetype i = 0; i < std::min(drafts.size(), most_rows); ++i)
        if (const auto draft = draft_from(drafts[i])) state.drafts.push_back(*draft);
    return state;
}

RunFile::RunFile(const QString& folder) {
    if (folder.isEmpty() || !QDir().mkpath(folder)) return;
    take_left_over(folder);
    for (int number = 1; number <= most_rows; ++number) {
        const QString path = QDir(folder).filePath(QString::number(number) + ending);
        auto lock = std::make_unique<QLockFile>(path + QStringLiteral(".lock"));
        lock->setStaleLockTime(0); // of a run that lives it is never stale, however long
        if (!lock->tryLock(0)) continue;
        lock_ = std::move(lock);
        path_ = path;
        return;
    }
}

RunFile::~RunFile() {
    if (!path_.isEmpty()) QFile::remove(path_);
}

// A file whose lock can be had is nobody's any more.
void RunFile::take_left_over(const QString& folder) {
    const auto files = QDir(folder).entryInfoList({QStringLiteral("*") + ending}, QDir::Files, QDir::Time);
    for (const QFileInfo& info : files) {
        QLockFile lock(info.filePath() + QStringLiteral(".lock"));
        lock.setStaleLockTime(0);
        if (!lock.tryLock(0)) continue;
        QFile file(info.filePath());
        if (!left_over_ && info.size() <= most_bytes && file.open(QIODevice::ReadOnly))
            left_over_ = parse_run_state(file.readAll());
        file.remove();
    }
}

void RunFile::put(const RunState& state) {
    if (path_.isEmpty()) return;
    const QByteArray text = run_state_text(state);
    if (text == written_) return;
    const QString beside = path_ + QStringLiteral(".new");
    QFile file(beside);
    if (!file.open(QIODevice::WriteOnly) || file.write(text) != text.size()) return;
    file.close();
    if (!platform::replace(models::file_name(beside), models::file_name(path_))) written_ = text;
}

void RunFile::abandon() {
    path_.clear();
    lock_.reset();
}

} // namespace lapwright::window
