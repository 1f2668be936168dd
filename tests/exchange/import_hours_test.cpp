// SPDX-License-Identifier: GPL-3.0-or-later
// Hourly weather, and weather whose columns come in several files. All CONSTRUCTED.
#include "core/store/hour_store.h"
#include "core/store/weather_store.h"
#include "tests/exchange/import_desk.h"

#include <array>
#include <cstdint>

using namespace evenfall;
using namespace evenfall::exchange;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;

namespace {

struct Desk : tests::ImportDesk {
    std::vector<weather::WeatherHour> hours() const {
        return store::weather_hours(book, "W", calendar::Instant{calendar::make_date(2024, 7, 1)},
                                    calendar::Instant{calendar::make_date(2024, 7, 3)});
    }
};

std::uint64_t state = 11;
std::size_t below(std::size_t bound) {
    state = state * 6364136223846793005ULL + 1442695040888963407ULL;
    return static_cast<std::size_t>(state >> 33U) % bound;
}

}  // namespace

TEST_CASE("hours by either end, with the offset in the time or beside it", "[exchange][constructed]") {
    Desk desk;
    const auto r = desk.put("station,hour_end,utc_offset,tmean_f,rs_w_m2,rain_in\n"
                            "W,2024-07-01T06:00,-08:00,68,500,0\nW,2024-07-01T07:00,-08:00,70,600,0.1\n");
    CHECK(r.kind == Kind::hourly_weather);
    CHECK(r.added == 2);
    REQUIRE(r.notes.size() == 1);
    CHECK_THAT(r.notes[0].english(), Contains("station W is new"));
    const auto hours = desk.hours();
    REQUIRE(hours.size() == 2);
    // Six in the morning at eight hours behind UTC ends the hour that starts at 13:00 UTC.
    CHECK(calendar::format_instant(hours[0].start) == "2024-07-01T13:00:00Z");
    CHECK_THAT(hours[1].rain->in(units::inch), WithinAbs(0.1, 1e-12));
    SECTION("the same hours, marked by their start in UTC") {
        CHECK(desk.put("station,hour_start,tmean_f,rs_w_m2\nW,2024-07-01T13:00:00Z,68,500\n"
                       "W,2024-07-01T14:00:00+00:00,70,600\n").unchanged == 2);
    }
    SECTION("columns that are new complete an hour") {
        const auto more = desk.put("station,hour_start,wind_mph\nW,2024-07-01T13:00:00Z,3\n");
        CHECK(more.added == 1);
        REQUIRE(more.notes.size() == 1);
        CHECK_THAT(more.notes[0].english(), Contains("1 hours that the book had were completed"));
        CHECK(desk.hours()[0].wind.has_value());
        CHECK(desk.hours()[0].temperature.has_value());
    }
    SECTION("another value is a conflict") {
        const std::string other = "station,hour_start,tmean_f\nW,2024-07-01T13:00:00Z,69\n";
        CHECK_THAT(desk.refusal(other), Contains("weather of W in the hour from 2024-07-01T13:00:00Z") &&
                                            Contains("temperature 68 f") && Contains("temperature 69 f"));
        CHECK(desk.put(other, ConflictChoice::replace).replaced == 1);
        CHECK_THAT(desk.hours()[0].temperature->in_fahrenheit(), WithinAbs(69.0, 1e-9));
        CHECK(desk.hours()[0].solar.has_value());
    }
    SECTION("periods may not share time") {
        CHECK_THAT(desk.refusal("station,hour_start,minutes,tmean_f\nW,2024-07-01T13:30:00Z,15,69\n"),
                   Contains("row 2, column hour_start") && Contains("shares no time"));
        CHECK(desk.put("station,hour_start,minutes,tmean_f\nW,2024-07-01T15:00:00Z,15,69\n").added == 1);
    }
    CHECK(desk.book.integrity_problems().empty());
}

TEST_CASE("hourly tables with mistakes", "[exchange][constructed]") {
    Desk desk;
    CHECK_THAT(desk.refusal("station,hour_end,tmean_c\nW,2024-07-01T06:00,20\n"),
               Contains("row 2, column hour_end") && Contains("a column utc_offset"));
    CHECK_THAT(desk.refusal("station,hour_end,utc_offset,tmean_c\nW,2024-07-01T06:00,PST,20\n"),
               Contains("column utc_offset: found \"PST\""));
    CHECK_THAT(desk.refusal("station,hour_end,utc_offset,tmean_c\nW,2024-07-01,-08:00,20\n"),
               Contains("a time of day too"));
    CHECK_THAT(desk.refusal("station,hour_start,hour_end,tmean_c\nW,2024-07-01T06:00:00Z,2024-07-01T07:00:00Z,20\n"),
               Contains("one of the two"));
    CHECK_THAT(desk.refusal("station,hour_start,minutes,tmean_c\nW,2024-07-01T06:00:00Z,90,20\n"),
               Contains("minutes from 1 to 60"));
    CHECK_THAT(desk.refusal("station,hour_start,tmean_c\nW,2024-07-01T06:00:00Z,200\n"), Contains("column tmean_c"));
    CHECK_THAT(desk.refusal("station,hour_start,tmean_c,tdew_f\nW,2024-07-01T06:00:00Z,20,50\n"), Contains("one unit"));
    CHECK(desk.hours().empty());
}

TEST_CASE("columns of a day from two files", "[exchange][constructed]") {
    Desk desk;
    CHECK(desk.put("station,date,tmax_f,tmin_f\nW,2024-07-01,90,60\nW,2024-07-02,95,61\n").added == 2);
    const auto rain = desk.put("station,date,rain_mm\nW,2024-07-01,3\nW,2024-07-03,4\n");
    CHECK(rain.added == 2);
    CHECK(rain.conflicts == 0);
    CHECK_THAT(rain.notes.at(0).english(), Contains("1 days that the book had were completed"));
    CHECK(desk.put("station,date,rain_mm\nW,2024-07-01,3\n").unchanged == 1);
    CHECK_THAT(desk.refusal("station,date,rain_mm,wind_mph\nW,2024-07-01,5,4\n"),
               Contains("weather of W on 2024-07-01") && Contains("rain 3 mm") && Contains("rain 5 mm"));
}

TEST_CASE("any split of a weather table by rows and columns, in any order, gives the same days",
          "[exchange][constructed]") {
    const std::array<std::string, 5> names{"tmax_c", "tmin_c", "rs_mj_m2", "wind_m_s", "rain_mm"};
    for (int trial = 0; trial < 6; ++trial) {
        CAPTURE(trial);
        constexpr std::size_t days = 12;
        std::array<std::array<std::string, 5>, days> cells;
        for (auto& row : cells) {
            for (std::size_t c = 0; c < names.size(); ++c) {
                // Highest temperatures lie above the lowest ones; some cells are gaps.
                row[c] = below(6) == 0 ? "" : std::to_string((c == 0 ? 30 : 0) + below(20)) + ".5";
            }
        }
        const auto table = [&](const std::vector<std::size_t>& columns, std::size_t from, std::size_t to) {
            std::string text = "station,date";
            for (const std::size_t c : columns) text += "," + names[c];
            text += "\n";
            for (std::size_t i = from; i < to; ++i) {
                text += "W,2024-07-" + std::string(i < 9 ? "0" : "") + std::to_string(i + 1);
                for (const std::size_t c : columns) text += "," + cells[i][c];
                text += "\n";
            }
            return text;
        };
        std::vector<std::string> files;
        for (std::size_t from = 0; from < days; from += 4) {
            const std::size_t cut = 1 + below(4);
            std::vector<std::size_t> left;
            std::vector<std::size_t> right;
            for (std::size_t c = 0; c < names.size(); ++c) (c < cut ? left : right).push_back(c);
            files.push_back(table(left, from, from + 4));
            files.push_back(table(right, from, std::min(days, from + 5)));
        }
        files.push_back(files[below(files.size())]);
        for (std::size_t i = files.size(); i > 1; --i) std::swap(files[i - 1], files[below(i)]);

        Desk whole;
        require_accepted(std::vector{whole.put(table({0, 1, 2, 3, 4}, 0, days))});
        Desk pieces;
        for (const auto& text : files) require_accepted(std::vector{pieces.put(text)});
        const auto from = calendar::make_date(2024, 7, 1);
        const auto to = calendar::make_date(2024, 7, 31);
        const auto expected = store::weather_days(whole.book, "W", from, to);
        const auto found = store::weather_days(pieces.book, "W", from, to);
        REQUIRE(expected.size() == days);
        REQUIRE(found.size() == days);
        for (std::size_t i = 0; i < days; ++i) {
            CHECK(found[i].date == expected[i].date);
            CHECK(found[i].rain == expected[i].rain);
            CHECK(found[i].wind == expected[i].wind);
            CHECK(found[i].solar == expected[i].solar);
            CHECK(found[i].tmax.has_value() == expected[i].tmax.has_value());
            CHECK(found[i].tmin.has_value() == expected[i].tmin.has_value());
            if (found[i].tmax) CHECK(found[i].tmax->in_celsius() == expected[i].tmax->in_celsius());
        }
        CHECK(pieces.book.integrity_problems().empty());
    }
}
