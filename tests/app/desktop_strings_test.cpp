// SPDX-License-Identifier: GPL-3.0-or-later
// The second language is complete: every string of the windows has its counterpart.
#include "app/desktop/core_words.h"
#include "app/desktop/main_window.h"
#include "app/desktop/month_words.h"
#include "app/desktop/table_words.h"
#include "core/audit/finding.h"
#include "core/budget/program.h"
#include "core/budget/season_flag.h"
#include "core/budget/waste_account.h"
#include "core/input_error.h"
#include "core/reference/table.h"
#include "core/store/book_error.h"
#include "tests/app/desktop_support.h"

#include <QProcess>
#include <QProcessEnvironment>
#include <QRegularExpression>
#include <QTranslator>
#include <QXmlStreamReader>
#include <set>
#include <utility>

using namespace evenfall;
using namespace evenfall::desktop;
using namespace evenfall::desktop::tests;

namespace {

struct Message {
    QString context;
    QString source;
    QStringList translations;  ///< several for a count
    QString type;
};

std::vector<Message> messages_of(const QString& path) {
    QFile file(path);
    REQUIRE(file.open(QIODevice::ReadOnly));
    QXmlStreamReader xml(&file);
    std::vector<Message> all;
    QString context;
    while (!xml.atEnd()) {
        if (xml.readNext() != QXmlStreamReader::StartElement) continue;
        const auto name = xml.name();
        if (name == QStringLiteral("name")) {
            context = xml.readElementText();
        } else if (name == QStringLiteral("message")) {
            all.push_back({context, {}, {}, {}});
        } else if (name == QStringLiteral("source")) {
            all.back().source = xml.readElementText();
        } else if (name == QStringLiteral("translation")) {
            all.back().type = xml.attributes().value(QStringLiteral("type")).toString();
            const bool counted = all.back().source.contains(QStringLiteral("%n"));
            if (!counted) all.back().translations << xml.readElementText(QXmlStreamReader::IncludeChildElements);
        } else if (name == QStringLiteral("numerusform")) {
            all.back().translations << xml.readElementText();
        }
    }
    CHECK(!xml.hasError());
    return all;
}

QStringList places_in(const QString& text) {
    static const QRegularExpression place(QStringLiteral("%(?:[0-9]+|n)"));
    QStringList found;
    auto it = place.globalMatch(text);
    while (it.hasNext()) found << it.next().captured();
    found.sort();
    return found;
}

}  // namespace

TEST_CASE("no string of the windows lacks its Spanish", "[desktop]") {
    const QString source = QStringLiteral(EVENFALL_SOURCE_DIR);
    const QTemporaryDir folder;
    const QString copy = folder.filePath(QStringLiteral("evenfall_es.ts"));
    REQUIRE(QFile::copy(source + QStringLiteral("/app/desktop/translations/evenfall_es.ts"), copy));
    QProcess gather;
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    environment.insert(QStringLiteral("LUPDATE"), QStringLiteral(EVENFALL_LUPDATE));
    gather.setProcessEnvironment(environment);
    gather.start(QStringLiteral("bash"), {source + QStringLiteral("/app/desktop/translations/gather"), copy});
    REQUIRE(gather.waitForFinished(60000));
    INFO(gather.readAllStandardError().toStdString());
    REQUIRE(gather.exitCode() == 0);
    const auto messages = messages_of(copy);
    REQUIRE(messages.size() > 300);
    for (const Message& m : messages) {
        CAPTURE(m.context.toStdString(), m.source.toStdString());
        CHECK(m.type.toStdString() == "");  // neither unfinished nor gone
        REQUIRE(!m.translations.isEmpty());
        for (const QString& t : m.translations) {
            CHECK(!t.trimmed().isEmpty());
            CHECK(places_in(t) == places_in(m.source));
        }
    }
}

TEST_CASE("the strings that are loaded are those of the file", "[desktop]") {
    QTranslator translator;
    REQUIRE(translator.load(QStringLiteral("evenfall_es"), QStringLiteral(":/i18n")));
    CHECK(translator.translate("evenfall::desktop::SitesPage", "Sites") == QStringLiteral("Sitios"));
}

TEST_CASE("fixed sentences of the core are shown in Spanish too, and English stays as it is", "[desktop]") {
    install_language(QStringLiteral("es"));
    std::vector<Sentence> english;
    for (int f = 0; f <= static_cast<int>(budget::SeasonFlag::months_missing); ++f) {
        english.emplace_back(budget::sentence_of(static_cast<budget::SeasonFlag>(f)));
    }
    for (const auto& line : budget::waste_lines()) english.emplace_back(line.words);
    for (const auto& name : budget::built_in_program_names()) {
        english.push_back(budget::built_in_program(name).title_words());
        CHECK(core_words(budget::built_in_program(name).title) == core_words(english.back()));
        english.push_back(budget::built_in_program(name).source_words());
        english.push_back(budget::built_in_program(name).formula());
    }
    for (const Sentence& text : english) {
        CAPTURE(text);
        CHECK(core_words(text) != q(text.english()));
    }
    // From a form and its values; a value may look like a place.
    const Issue issue{{"a.csv", 7, "register"}, "%2", {phrase("exchange", "a whole number from %1 to %2"), 1, 9}};
    CHECK(core_words(issue.sentence()) ==
          QString::fromUtf8("a.csv, fila 7, columna register: se encontró «%2», se esperaba un número entero de 1 a 9"));
    CHECK(error_words(InputError(std::vector<Issue>(21, issue))).endsWith(QString::fromUtf8("\ny 1 más")));
    CHECK(error_words(store::BookError(phrase("exchange", "%1, then a time such as 06:00"))).startsWith(QString::fromUtf8("%1, y después")));
    CHECK(error_words(std::runtime_error("odd")) == QStringLiteral("odd"));
    for (const auto& kind : audit::finding_kinds()) {
        CAPTURE(kind.name);
        CHECK(key_words(kind.name) != q(kind.name));
    }
    for (const char* table : {"soils.csv", "head_types.csv"}) {
        for (const auto& row : reference::Table::named(table).rows()) {
            const std::string key(row.text(std::string(table) == "soils.csv" ? "key" : "head_type"));
            CAPTURE(key);
            CHECK(key_words(key) != q(key).replace(QLatin1Char('_'), QLatin1Char(' ')));
        }
    }
    CHECK(month_title(calendar::parse_month("2025-01").value()) == QStringLiteral("ene 2025"));
    install_language(QStringLiteral("en"));
    CHECK(core_words(english.front()) == q(english.front().english()));
    CHECK(month_title(calendar::parse_month("2025-01").value()) == QStringLiteral("Jan 2025"));
    CHECK(key_words("sandy_loam") == QStringLiteral("sandy loam"));
}

TEST_CASE("words of the data that windows show are listed for translation", "[desktop]") {
    static constexpr std::pair<const char*, const char*> shown_columns[]{{"head_types.csv", "words"},
                                                                         {"head_types.csv", "source"},
                                                                         {"soils.csv", "name"},
                                                                         {"soils.csv", "source"},
                                                                         {"plants.csv", "name"},
                                                                         {"plants.csv", "source"},
                                                                         {"monthly_coefficients.csv", "source"},
                                                                         {"root_zone_defaults.csv", "source"},
                                                                         {"multiplier_forms.csv", "source"},
                                                                         {"meter_screens.csv", "meaning"},
                                                                         {"meter_screens.csv", "unit"},
                                                                         {"meter_screens.csv", "source"},
                                                                         {"weather_limits.csv", "source"},
                                                                         {"sod_stages.csv", "source"},
                                                                         {"establishment.csv", "source"}};
    std::set<QString> listed;
    for (const Message& m :
         messages_of(QStringLiteral(EVENFALL_SOURCE_DIR "/app/desktop/translations/evenfall_es.ts"))) {
        if (m.context == QStringLiteral("reference")) listed.insert(m.source);
    }
    for (const auto& [table, column] : shown_columns) {
        for (const auto& row : reference::Table::named(table).rows()) {
            const QString words = q(row.words(column).english());
            CAPTURE(table, column, words.toStdString());
            CHECK((words.isEmpty() || listed.count(words) == 1));
        }
    }
}
