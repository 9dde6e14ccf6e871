// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/language.h"

#include "core/base/translation.h"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QLocale>
#include <QTranslator>
#include <algorithm>
#include <memory>

static void init_translations() {
    Q_INIT_RESOURCE(translations);
}

namespace lapwright::window {
namespace {

// Every source is translated once, wherever it stands: the files know one context.
class OneContext : public QTranslator {
  public:
    using QTranslator::QTranslator;
    [[nodiscard]] QString translate(const char*, const char* source, const char* difference, int n) const override {
        return QTranslator::translate("Lapwright", source, difference, n);
    }
};

struct Spoken {
    QTranslator of_qt; // the buttons of its dialogs
    OneContext own;
};
std::unique_ptr<Spoken> spoken;

std::optional<std::string> own_words(const char* english) {
    const QString words = spoken->own.translate(nullptr, english, nullptr, -1);
    return words.isEmpty() ? std::nullopt : std::optional(words.toStdString());
}

} // namespace

QString language_of(const QStringList& system_languages) {
    for (const QString& language : system_languages) {
        const QString code = language.left(2);
        const bool whole = language.size() == 2 || language[2] == QLatin1Char('-') || language[2] == QLatin1Char('_');
        if (whole && std::ranges::any_of(languages, [&](const auto& one) { return code == QLatin1String(one.code); }))
            return code;
    }
    return QStringLiteral("en");
}

void speak(const QString& chosen) {
    init_translations();
    base::set_language({});
    spoken.reset();
    const QString code = language_of(chosen.isEmpty() ? QLocale::system().uiLanguages() : QStringList{chosen});
    if (code == QLatin1String("en")) return;
    auto next = std::make_unique<Spoken>();
    if (!next->own.load(QStringLiteral(":/translations/lapwright_") + code + QStringLiteral(".qm"))) return;
    spoken = std::move(next);
    if (spoken->of_qt.load(QStringLiteral("qtbase_") + code, QLibraryInfo::path(QLibraryInfo::TranslationsPath)))
        QCoreApplication::installTranslator(&spoken->of_qt);
    QCoreApplication::installTranslator(&spoken->own);
    const auto* const known =
        std::ranges::find_if(languages, [&](const LanguageName& one) { return code == QLatin1String(one.code); });
    base::set_language({own_words, QLocale(code).decimalPoint().front().toLatin1(), known->code});
}

} // namespace lapwright::window
