// SPDX-License-Identifier: GPL-3.0-or-later
// A site's weather from one station, from hours, or mixed from several, all the way to the season's
// notes. CONSTRUCTED.
#include "app/workflow/season.h"
#include "app/workflow/site_weather.h"
#include "core/exchange/import.h"
#include "core/input_error.h"
#include "core/store/book_check.h"
#include "core/store/site_store.h"
#include "reports/content/raw_tables.h"
#include "reports/content/season_report.h"
#include "tests/support/scratch.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <array>
#include <cstdlib>
#include <memory>

using namespace evenfall;
using namespace evenfall::workflow;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;
using tests::Scratch;
using Path = std::filesystem::path;

namespace {

const calendar::Date first = calendar::make_date(2024, 6, 1);
const calendar::Date last = calendar::make_date(2024, 6, 30);

struct Desk {
    Desk() : book(store::Book::create(scratch / "b.evenfall")) {}
    void put(const std::string& text) {
        exchange::ImportOptions o;
        o.at = "2026-01-01T00:00:00Z";
        o.conflicts = exchange::ConflictChoice::replace;
        const std::vector<Path> files{scratch.write("t.csv", text)};
        exchange::require_accepted(exchange::import_files(book, files, o));
    }
    void site(const std::string& weather, const std::string& power, const std::string& longitude = "-120") {
        put("site,name,latitude,longitude,elevation_m,weather,weather_power\nS,Site,38," + longitude + ",100," + weather +
            "," + power + "\n");
    }
    /// W1 lies a fifth of a degree of latitude north of the site, W2 two fifths south of it.
    void stations() {
        put("station,latitude,longitude,elevation_m\nW1,38.2,-120,150\nW2,37.6,-120,90\n");
        std::string days = "station,date,eto_mm,rain_mm\n";
        for (int d = 1; d <= 30; ++d) {
            const std::string date = "2024-06-" + std::string(d < 10 ? "0" : "") + std::to_string(d);
            if (d != 10) days += "W1," + date + ",6,0\n";
            days += "W2," + date + ",3,10\n";
        }
        put(days);
    }
    SiteWeather weather() const { return weather_of_site(book, *store::find_site(book, "S"), first, last); }
    std::string refusal() const {
        try {
            static_cast<void>(weather());
        } catch (const InputError& e) {
            return e.what();
        }
        return "accepted";
    }
    Scratch scratch;
    store::Book book;
};

}  // namespace

TEST_CASE("a site with one station takes its record", "[workflow][constructed]") {
    Desk desk;
    desk.stations();
    desk.site("W2", "");
    const auto w = desk.weather();
    CHECK(w.days.size() == 30);
    CHECK_FALSE(w.place_days.has_value());
    CHECK(w.notes.empty());
    CHECK(w.station.latitude == 37.6);
    CHECK(w.station.elevation.in(units::metre) == 90.0);
}

TEST_CASE("a site between stations mixes them by distance", "[workflow][constructed]") {
    Desk desk;
    desk.stations();
    desk.site("W1; W2", "");
    const auto w = desk.weather();
    REQUIRE(w.place_days);
    REQUIRE(w.place_days->size() == 30);
    // Twice as far along a meridian, within a thousandth: weights of 4/5 and 1/5.
    CHECK_THAT(w.place_days->at(0).et->in(units::millimetre), WithinAbs(5.4, 2e-3));
    CHECK_THAT(w.place_days->at(0).rain->in(units::millimetre), WithinAbs(2.0, 5e-3));
    CHECK_THAT(w.place_days->at(9).et->in(units::millimetre), WithinAbs(3.0, 1e-12));
    REQUIRE(w.notes.size() == 1);
    CHECK(w.notes[0].topic == "weather stations");
    CHECK_THAT(w.notes[0].method.english(), Contains("to the power 2 (usual)") &&
                                                Contains("W1 at 22.2 km (80.0 %, elevation 150 m)") &&
                                                Contains("W2 at 44.4 km (20.0 %") && Contains("site at 100 m"));
    CHECK_THAT(w.notes[0].source.english(), Contains("Shepard"));
    SECTION("by another power") {
        desk.site("W1;W2", "1");
        const auto by_one = desk.weather();
        CHECK_THAT(by_one.place_days->at(0).et->in(units::millimetre), WithinAbs(5.0, 2e-3));
        CHECK_THAT(by_one.notes[0].method.english(), Contains("to the power 1:"));
    }
    SECTION("the season says how, and on how many days it was filled") {
        desk.put("area,site,size_ac,coefficient\nA,S,1,1\n");
        const SeasonQuestion question{"S", std::chrono::year{2024} / std::chrono::June,
                                      std::chrono::year{2024} / std::chrono::June, "general", "none",
                                      audit::QuarterRule::part_can};
        auto answer = answer_season(desk.book, question);
        const auto& notes = answer.result.notes;
        const auto said = [&](const std::string& what) {
            return std::any_of(notes.begin(), notes.end(), [&](const budget::Note& n) {
                return n.method.english().find(what) != std::string::npos;
            });
        };
        CHECK(said("mixed by inverse distance to the power 2"));
        CHECK(said("no ET of W1: the others' weights carry it, 1 day"));
        CHECK(said("no rain of W1: the others' weights carry it, 1 day"));
        CHECK(said("ETo as recorded by the station, mixed by distance from W1, W2, 30 days"));
        // 29 days of 5.4 mm and one of 3 mm, on an acre with a coefficient of 1.
        REQUIRE(answer.result.total.reference_et);
        CHECK_THAT(answer.result.total.reference_et->in(units::millimetre), WithinAbs(29 * 5.4 + 3.0, 0.05));
        CHECK(budget::has_flag(answer.result.total.flags, budget::SeasonFlag::eto_inputs_assumed));
        const auto report = reports::season_report(answer.result, std::nullopt, {reports::UnitsShown::metric, "", "", "", {}});
        CHECK(std::any_of(report.notes.begin(), report.notes.end(), [](const reports::Note& n) {
            return n.subject == "Weather stations" && n.method.find("to the power 2") != std::string::npos;
        }));
        const auto raw = reports::weather_table(std::make_shared<const budget::SeasonInputs>(answer.inputs));
        std::size_t rows = 0;
        raw.produce([&](std::span<const reports::RawValue> row) {
            CHECK(row.size() == raw.columns.size());
            ++rows;
        });
        CHECK(rows == 30);
    }
}

TEST_CASE("what mixing needs and does not have is an error that says so", "[workflow][constructed]") {
    Desk desk;
    desk.stations();
    desk.site("W1; W2", "", "");
    CHECK_THAT(desk.refusal(), Contains("site S without longitude"));
    desk.site("W1; W2; W9", "");
    CHECK_THAT(desk.refusal(), Contains("weather station W9") && Contains("in the book"));
    desk.put("station,latitude\nW9,38\n");
    CHECK_THAT(desk.refusal(), Contains("weather station W9 without longitude"));
    const auto problems = store::check_book(desk.book);
    CHECK(std::any_of(problems.begin(), problems.end(), [](const store::BookProblem& p) {
        return p.record == "site S" && p.sentence.english().find("mixes weather station W9") != std::string::npos;
    }));
}

TEST_CASE("hours of the chosen station make the days", "[workflow][constructed]") {
    Desk desk;
    desk.put("station,latitude,longitude,elevation_m\nW1,38.2,-120,150\n");
    desk.site("W1", "");
    constexpr std::array<int, 13> watts{700, 690, 640, 560, 450, 320, 150};
    std::string hours = "station,hour_start,tmean_c,rhmean_percent,rs_w_m2,wind_m_s,rain_mm\n";
    for (int d = 1; d <= 4; ++d) {
        for (int h = 0; h < 24; ++h) {
            if (d == 3 && h >= 20) continue;
            // Noon there is at about 20 hours UTC.
            const int from_noon = std::min(std::abs(h - 20), 24 - std::abs(h - 20));
            hours += "W1,2024-06-0" + std::to_string(d) + "T" + (h < 10 ? "0" : "") + std::to_string(h) +
                     ":00:00Z,25,50," + std::to_string(watts.at(static_cast<std::size_t>(from_noon))) + ",2,0.1\n";
        }
    }
    desk.put(hours);
    auto w = desk.weather();
    REQUIRE(w.place_days);
    REQUIRE(w.place_days->size() == 4);
    CHECK(w.place_days->at(0).date == first);
    CHECK_THAT(w.place_days->at(0).method.english(), Contains("hourly") && Contains("summed by day"));
    CHECK_THAT(w.place_days->at(0).rain->in(units::millimetre), WithinAbs(2.4, 1e-9));
    CHECK_FALSE(w.place_days->at(2).et.has_value());
    CHECK_THAT(w.place_days->at(2).remarks.at(0).english(), Contains("hours incomplete"));
    CHECK_THAT(w.notes.at(0).method.english(), Contains("W1: reference ET and rain from its hours"));
    desk.put("station,date,eto_mm,rain_mm\nW1,2024-06-03,5,1\nW1,2024-06-05,5.5,0\n");
    w = desk.weather();
    REQUIRE(w.place_days->size() == 5);
    CHECK(w.place_days->at(2).et->in(units::millimetre) == Approx(5.0));
    CHECK(w.place_days->at(4).et->in(units::millimetre) == Approx(5.5));
    SECTION("the sun needs a longitude") {
        Desk other;
        other.put("site,name,latitude,elevation_m,weather\nS,Site,38,100,W1\n");
        other.put(hours);
        CHECK_THAT(other.refusal(), Contains("hourly weather of station W1 without its longitude"));
    }
}
