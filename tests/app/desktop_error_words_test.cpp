// SPDX-License-Identifier: GPL-3.0-or-later
// What an import refuses, and why a book cannot be used, whole in the language shown. The tables are
// constructed; the Spanish is typed here, not taken from the translation.
#include "app/desktop/core_words.h"
#include "app/desktop/main_window.h"
#include "app/desktop/shown.h"
#include "core/exchange/columns.h"
#include "core/exchange/conflict_words.h"
#include "core/exchange/import.h"
#include "core/store/journal_store.h"
#include "core/store/meter_store.h"
#include "tests/app/desktop_support.h"

#include <algorithm>
#include <cctype>

using namespace evenfall;
using namespace evenfall::desktop;
using namespace evenfall::desktop::tests;

namespace {

/// A book with one site and two meters, in Spanish windows.
struct SpanishDesk {
    SpanishDesk() {
        install_language(QStringLiteral("es"));
        take("sites.csv", "site,name,latitude,elevation_ft\nS,Site,38,100\n");
        take("meters.csv", "meter,site,unit,digits\nM-1,S,gal,4\nM-2,S,gal,4\n");
    }
    ~SpanishDesk() { install_language(QStringLiteral("en")); }
    SpanishDesk(const SpanishDesk&) = delete;
    SpanishDesk& operator=(const SpanishDesk&) = delete;

    exchange::ImportResult take(const char* name, const std::string& text) {
        const std::filesystem::path file(utf8(write_file(folder, QString::fromUtf8(name), text)));
        exchange::ImportOptions options;
        options.at = "2026-01-02T03:04:05Z";
        options.who = "test";
        return exchange::import_files(book, {&file, 1}, options).at(0);
    }
    /// A line for each issue.
    std::string refused(const char* name, const std::string& text) {
        QStringList lines;
        for (const Issue& issue : take(name, text).issues) lines << core_words(issue.sentence());
        return without_folder(lines.join(QLatin1Char('\n')));
    }
    std::string without_folder(QString text) const { return utf8(text.remove(folder.path() + QLatin1Char('/'))); }

    QTemporaryDir folder;
    store::Book book = store::Book::create(utf8(folder.filePath(QStringLiteral("b.evenfall"))));
};

/// What only the user, our files and tables or arithmetic can have said: never translated.
bool is_said_by_others(const std::string& words, const std::string& text) {
    if (text.find(words) != std::string::npos) return true;
    if (std::none_of(words.begin(), words.end(), [](unsigned char c) { return std::isalpha(c) != 0; })) return true;
    const auto named = [](const QString& name) {
        return std::any_of(exchange::all_kinds().begin(), exchange::all_kinds().end(), [&](const exchange::KindSpec& k) {
            return name == q(k.name) ||
                   std::any_of(k.columns.begin(), k.columns.end(), [&](const auto& c) { return name == q(c.name) || name == q(c.group); });
        });
    };
    const QStringList names = q(words).split(QStringLiteral(", "));
    return std::all_of(names.begin(), names.end(), named);
}

/// The forms of a sentence that read the same in Spanish, and its words that are nobody's.
void collect_english(const Sentence& sentence, const std::string& text, std::vector<std::string>& left) {
    const bool words = sentence.form().form != nullptr;
    if (words && core_words(sentence.form()) == QString::fromUtf8(sentence.form().form)) {
        left.emplace_back(sentence.form().form);
    }
    if (!words && sentence.values().empty() && !is_said_by_others(sentence.english(), text)) left.push_back(sentence.english());
    for (const Sentence& value : sentence.values()) collect_english(value, text, left);
}

}  // namespace

TEST_CASE("what an import refuses is said whole in Spanish", "[desktop][constructed]") {
    SpanishDesk desk;
    CHECK(desk.refused("readings.csv", "meter,time,register\nM-9,2025-05-01T06:00,5\n") ==
          "readings.csv, fila 2, columna meter: se encontró «M-9», se esperaba el código de un "
          "medidor del libro o de estos archivos");
    CHECK(desk.refused("readings.csv", "meter,time,register\nM-1,yesterday,12x\n") ==
          "readings.csv, fila 2, columna time: se encontró «yesterday», se esperaba una hora como "
          "2024-06-30T06:00 (reloj del sitio) o 2024-06-30T13:00:00Z\n"
          "readings.csv, fila 2, columna register: se encontró «12x», se esperaba un número como "
          "12.5, sin unidad ni separador de miles");
    CHECK(desk.refused("readings.csv", "meter,time,register\nM-1,2025-05-01T06:00,12345\n") ==
          "readings.csv, fila 2, columna register: se encontró «12345», se esperaba un registro de cero o más, menor que 10000");
    CHECK(desk.refused("areas.csv", "area,site,name\nA,S,Oval\n") ==
          "areas.csv, fila 1, columna size_ft2, size_ac, size_m2 o size_ha: se encontró «no existe la "
          "columna», se esperaba una columna size_ft2, size_ac, size_m2 o size_ha en una tabla areas");
    CHECK(desk.refused("sites.csv", "site,name,latitude,longitud,elevation_ft\nT,Two,38,-120,100\n") ==
          "sites.csv, fila 1, columna longitud: se encontró «longitud», se esperaba una columna de "
          "la tabla sites; la más parecida es longitude");
    CHECK(desk.refused("empty.csv", "") ==
          "empty.csv: se encontró «un archivo vacío», se esperaba una línea de encabezado y al menos una fila");
    CHECK(desk.refused("meters.csv", "meter,site,unit\nM-3,S,gal\nM-4,S") ==
          "meters.csv, fila 3: se encontró «M-4,S», se esperaba una fila entera; el archivo termina "
          "en medio de esta, así que está cortado");
    CHECK(desk.refused("weather.csv", "station,date,tmax_c\nW,2025-05-01,999\n") ==
          "weather.csv, fila 2, columna tmax_c: se encontró «999», se esperaba una temperatura de -90 a "
          "60 C; si señala un valor que falta, deje la celda vacía o nombre la señal en un mapa");
    const auto notes = desk.take("readings.csv", "meter,time,register\nM-1,2025-05-01T06:00,5\nM-1,2025-05-02,50").notes;
    REQUIRE(notes.size() == 2);
    CHECK(desk.without_folder(core_words(notes[0])) ==
          "readings.csv: a la última línea le falta el fin de línea. Si el archivo se cortó, su último valor "
          "también; compárelo con el origen.");
    CHECK(desk.without_folder(core_words(notes[1])) ==
          "readings.csv: 1 lecturas tienen fecha sin hora; cada una se toma al comienzo de su día, a las 00:00 "
          "del reloj del sitio.");
}

TEST_CASE("a conflict of an import is said whole in Spanish", "[desktop][constructed]") {
    SpanishDesk desk;
    REQUIRE(desk.take("readings.csv", "meter,time,register\nM-1,2025-05-01T13:00:00Z,5\n").stored);
    const auto again = desk.take("readings.csv", "meter,time,register,kind\nM-1,2025-05-01T13:00:00Z,6,estimated\n");
    REQUIRE(again.conflict_list.size() == 1);
    const auto& conflict = again.conflict_list.front();
    CHECK(utf8(core_words(exchange::record_words(conflict.record))) == "lectura de M-1, 2025-05-01T13:00:00Z");
    CHECK(utf8(core_words(exchange::value_words(conflict.record, conflict.in_file))) == "6, estimada");
    try {
        exchange::require_accepted(std::vector{again});
        FAIL("nothing was refused");
    } catch (const InputError& e) {
        CHECK(desk.without_folder(error_words(e)) ==
              "readings.csv, fila 2, columna register: se encontró «6, estimada», se esperaba 5, como lo tiene el "
              "libro para lectura de M-1, 2025-05-01T13:00:00Z, o una elección expresa de cuál de los dos queda");
    }
}

TEST_CASE("no English is left in what an import refuses", "[desktop][constructed]") {
    SpanishDesk desk;
    const std::pair<const char*, std::string> tables[] = {
        {"readings.csv", "meter,time,register,volume\nM-1,2025-05-01T06:00,5,5\n"},
        {"readings.csv", "meter,end,start,volume,kind\nM-1,2025-05-01T06:00,2025-05-01T07:00,5,guess\n"},
        {"bills.csv", "meter,from,to,billed_gal\nM-1,2025-05-01,2025-04-01,5\n"},
        {"areas.csv", "area,site,size_ac,coefficient,slope_percent,share\nA,Z,0,3,400,7\n"},
        {"areas.csv", "area,site,size_ac,size_m2\nA,S,1,2\n"},
        {"exchanges.csv", "meter,time,final,first\nM-7,2025-05-01T06:00,1,2\n"},
        {"hourly_weather.csv", "station,hour_start,tmean_c,minutes\nW,2025-05-01,20,90\n"},
        {"weather.csv", "date,tmax_c,tmin_c\n2025-05-01,20,30\n"},
        {"catches.csv", "test,area,date,can,catch_ml,throat_area_cm2,minutes,layout\nT,A,2025-05-01,1,-5,0,0,ring\n"},
        {"plantings.csv", "area,kind,from\nA,turf,2025-02-30\n"},
        {"watering_rules.csv", "site,days,starts,ends\nS,sunny,25:00,6\n"},
        {"quotes.csv", "meter,site,unit\nM\"5,S,gal\n"},
        {"sheet.xlsx", "no workbook"},
    };
    for (const auto& [name, text] : tables) {
        const auto result = desk.take(name, text);
        CAPTURE(name, text);
        REQUIRE_FALSE(result.issues.empty());
        for (const Issue& issue : result.issues) {
            std::vector<std::string> left;
            collect_english(issue.sentence(), text + result.file + " yes no 12.5 evenfall-gis.so", left);
            CAPTURE(issue.text());
            CHECK(left == std::vector<std::string>{});
        }
    }
}

TEST_CASE("why a book cannot be used is said whole in Spanish", "[desktop]") {
    SpanishDesk desk;
    const auto said = [&](const auto& work) {
        try {
            work();
        } catch (const std::exception& e) {
            return desk.without_folder(error_words(e));
        }
        return std::string("nothing went wrong");
    };
    const std::string missing = utf8(desk.folder.filePath(QStringLiteral("none.evenfall")));
    CHECK(said([&] { store::Book::open(missing, store::Access::read_only); }) == "No existe el libro none.evenfall.");
    const std::string text = utf8(write_file(desk.folder, QStringLiteral("letter.txt"), "Dear Sir,\n"));
    CHECK(said([&] { store::Book::open(text, store::Access::read_only); }) ==
          "El archivo letter.txt no es un libro de Evenfall.");
    CHECK(said([&] { store::Book::create(text); }) ==
          "El archivo letter.txt ya existe; un libro nuevo necesita un nombre nuevo.");
    CHECK(said([&] { static_cast<void>(store::meter_id(desk.book, "M-9")); }) ==
          "En el libro b.evenfall no hay medidor «M-9».");
    CHECK(said([&] {
              auto book = store::Book::open(desk.book.file(), store::Access::read_only);
              store::add_journal_entry(book, {"2026-01-02T03:04:05Z", "test", "Nothing", "book", ""});
          }) ==
          "El libro b.evenfall no se pudo usar: se intentó escribir en una base de datos de solo lectura.");
}
