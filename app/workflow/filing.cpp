// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/workflow/filing.h"

#include "app/workflow/filed_outline.h"
#include "app/workflow/site_weather.h"
#include "core/audit/resample.h"
#include "core/audit/uniformity.h"
#include "core/exchange/bag_digest.h"
#include "core/exchange/filing_json.h"
#include "core/input_error.h"
#include "core/review/question.h"
#include "core/review/savings.h"
#include "core/review/use_record.h"
#include "core/store/catch_test_store.h"
#include "core/store/filing_store.h"
#include "core/store/hour_store.h"
#include "core/store/meter_store.h"
#include "core/store/outline_store.h"
#include "core/store/site_store.h"
#include "core/store/weather_store.h"
#include "core/units/number.h"

#include <algorithm>
#include <fstream>
#include <system_error>
#include <tuple>
#include <utility>

namespace evenfall::workflow {
namespace {

using review::Filing;

constexpr std::size_t largest_words = std::size_t{16} << 20U;
constexpr const char* uniformity_source = "Zoldoske & Solomon 1988; Irrigation Association landscape auditor worksheet";

site::Site site_of(const store::Book& book, const std::string& code) {
    auto site = store::find_site(book, code);
    if (!site) throw InputError(code, phrase("workflow", "the code of a site in the book"));
    return *std::move(site);
}

void take_test(const store::Book& book, const std::string& code, Filing& f) {
    auto test = store::find_catch_test(book, code);
    if (!test) throw InputError(code, phrase("workflow", "the code of a catch test in the book"));
    f.tests.push_back({*std::move(test), review::Phase::none});
}

/// The site that the tests were made on; all must be of one.
std::string site_of_tests(const store::Book& book, const Filing& f) {
    std::string site;
    for (const review::FiledTest& t : f.tests) {
        const auto area = store::find_area(book, t.test.area);
        if (!area) {
            throw InputError({phrase("workflow", "test %1 of an area that is not in the book"), t.test.code},
                             phrase("workflow", "a sound book"));
        }
        if (!site.empty() && area->site != site) {
            throw InputError({phrase("workflow", "tests of the sites %1 and %2"), site, area->site},
                             phrase("workflow", "tests of one site in a filing"));
        }
        site = area->site;
    }
    return site;
}

review::FiledArea filed_area(const store::Book& book, const site::Area& area, const exchange::FilingWords& words) {
    review::FiledArea filed{area, words.sector, {}};
    if (const auto outline = store::find_outline(book, area.code)) filed.outline = ring_to_file(*outline);
    return filed;
}

/// First and last of the days that the meters and the tests touch, a month on either side.
std::optional<std::pair<calendar::Date, calendar::Date>> days_touched(const Filing& f) {
    std::optional<calendar::Date> first;
    std::optional<calendar::Date> last;
    const auto touch = [&](calendar::Date day) {
        first = std::min(first.value_or(day), day);
        last = std::max(last.value_or(day), day);
    };
    for (const review::FiledTest& t : f.tests) touch(t.test.date);
    for (const review::FiledMeter& m : f.meters) {
        for (const meter::Reading& r : m.readings) touch(std::chrono::floor<std::chrono::days>(r.at));
    }
    if (!first) return std::nullopt;
    return std::pair(*first - std::chrono::days(31), *last + std::chrono::days(31));
}

/// Reference ET and rain as they were worked out from hours or from several stations: a filing holds
/// the days of one station, so the way there stands in the station's name.
void take_worked_weather(const SiteWeather& record, Filing& f) {
    const bool mixed = site::weather_codes(f.site).size() > 1;
    f.weather.station = f.site.weather;
    if (mixed) {
        f.weather.station += ", mixed by inverse distance to the power " +
                             units::format_shortest(f.site.weather_power.value_or(site::usual_weather_power));
    } else {
        f.weather.station += ", hours summed by day";
    }
    f.weather.latitude = record.station.latitude;
    f.weather.elevation = f.site.elevation;
    f.weather.units = {"", "", "", "mm", "mm"};
    for (const weather::PlaceDay& day : *record.place_days) {
        weather::SheetRow row;
        row.date = day.date;
        if (day.rain) row.rain = day.rain->in(units::millimetre);
        // Dew can leave a winter day a hair below zero, which no recorded ET may be.
        if (day.et) row.reference_et = std::max(0.0, day.et->in(units::millimetre));
        if (row.rain || row.reference_et) f.weather.days.push_back(row);
    }
}

void take_weather(const store::Book& book, Filing& f) {
    const auto codes = site::weather_codes(f.site);
    const auto days = days_touched(f);
    if (codes.empty() || !days) return;
    const auto [from, to] = *days;
    const auto instant = [](calendar::Date day) { return calendar::Instant{day}; };
    if (codes.size() > 1 || !store::weather_hours(book, codes.front(), instant(from), instant(to)).empty()) {
        take_worked_weather(weather_of_site(book, f.site, from, to), f);
    } else if (const auto station = store::find_weather_station(book, codes.front())) {
        f.weather.station = station->code;
        f.weather.latitude = station->latitude;
        f.weather.elevation = station->elevation;
        if (station->wind_height_m) f.weather.wind_height = units::Typed<units::Length>{*station->wind_height_m, units::unit_named<units::Length>("m")};
        std::tie(f.weather.units, f.weather.days) =
            store::typed_weather(book, station->code, calendar::format_date(from), calendar::format_date(to));
    }
    if (f.weather.days.empty()) f.weather = {};
}

void take_record(const store::Book& book, Filing& f, const exchange::FilingWords& words) {
    for (const site::Area& area : store::areas(book, f.site.code)) f.areas.push_back(filed_area(book, area, words));
    for (const meter::Meter& m : store::meters(book, f.site.code)) {
        review::FiledMeter filed{m, words.meter_type, {}};
        store::for_each_reading(book, m.code, [&](const meter::Reading& r) { filed.readings.push_back(r); });
        f.meters.push_back(std::move(filed));
    }
    take_weather(book, f);
}

/// Only the areas that the tests were made on, without meters and weather.
void take_tested_areas(const store::Book& book, Filing& f, const exchange::FilingWords& words) {
    for (site::Area area : store::areas(book, f.site.code)) {
        const bool tested = std::any_of(f.tests.begin(), f.tests.end(), [&](const review::FiledTest& t) { return t.test.area == area.code; });
        if (!tested) continue;
        area.meter.clear();
        area.share.reset();
        f.areas.push_back(filed_area(book, area, words));
    }
}

std::string plain_code(std::string text) {
    for (char& c : text) {
        const bool plain = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '-' || c == '_';
        if (!plain) c = '-';
    }
    return text;
}

void set_phases(Filing& f) {
    if (!f.request.change) return;
    for (review::FiledTest& t : f.tests) {
        t.phase = t.test.date <= *f.request.change ? review::Phase::before : review::Phase::after;
    }
}

void add_test_results(Filing& f, const audit::CatchTest& test, const std::string& version, bool claim) {
    const auto rule = f.conventions.quarter_rule;
    const auto u = audit::analyse_uniformity(test, rule);
    const std::string convention = "quarter rule " + std::string(audit::text_of(rule));
    const auto drawn = audit::resample_cans(audit::sample_of(test, audit::usual_choices()), rule, audit::usual_resampling());
    const double level = audit::usual_resampling().level;
    const auto add = [&](const std::string& name, double value, const std::string& unit, int decimals,
                         std::optional<stats::Interval> interval, const std::string& method) {
        review::FiledResult r{name, test.code, value, unit, {}, {}, {}, method, version, convention, uniformity_source, false};
        if (interval) {
            r.low = interval->low;
            r.high = interval->high;
            r.confidence = interval->level;
            r.method += "; interval: " + std::string(stats::text_of(interval->method).english()) + ", " +
                        std::to_string(drawn.resamples) + " resamples, " + drawn.scheme.english();
        }
        f.results.push_back(r);
        if (claim) f.claims.push_back({name, test.code, units::format_fixed(value, decimals), unit, name == "du_lq" ? std::string(audit::text_of(rule)) : ""});
    };
    add("du_lq", u.du_lq.value(), "", 3, drawn.du_lq.interval(level, audit::widening_for("du_lq", u.cans)),
        "mean of the low quarter / mean, " + std::string(u.layout.english()));
    add("du_lh", u.du_lh.value(), "", 3, drawn.du_lh.interval(level, audit::widening_for("du_lh", u.cans)),
        "mean of the low half / mean, " + std::string(u.layout.english()));
    add("cu", u.cu.value(), "", 3, drawn.cu.interval(level, audit::widening_for("cu", u.cans)),
        std::string(u.coefficient.english()));
    add("mean_depth", u.mean.in(units::millimetre), "mm", 2, std::nullopt,
        "mean of the catches, " + std::string(u.weights.english()));
    if (u.net_rate) add("net_rate", u.net_rate->in(units::millimetre_per_hour), "mm_h", 2, std::nullopt, "mean depth / run time");
}

}  // namespace

void work_out_results(Filing& f, const std::string& version) {
    const bool claim = f.claims.empty();
    for (const review::FiledTest& t : f.tests) add_test_results(f, t.test, version, claim);
    if (!f.request.change) return;
    const auto record = review::use_record(f);
    const auto answer = review::water_savings(record.before, record.after,
        {review::BaselineForm::better_of_both, review::CvDivisor::n_minus_p, review::Slope::must_rise, 0.90});
    if (!answer.savings) return;
    const auto& s = *answer.savings;
    f.results.push_back({"savings_share", "", s.fraction, "", s.low / s.expected, s.high / s.expected, s.confidence,
                         s.method.english() + "; " + record.method.english(), version, "rain " + f.conventions.rain,
                         "ASHRAE Guideline 14-2014 annex B (from memory); least squares", false});
    if (claim) f.claims.push_back({"savings_share", "", units::format_fixed(s.fraction, 3), "", ""});
}

std::string text_of_file(const std::filesystem::path& file) {
    std::ifstream in(file, std::ios::binary);
    if (!in) throw InputError(file.string(), phrase("workflow", "a file that can be read"));
    std::string text(largest_words + 1, '\0');
    in.read(text.data(), static_cast<std::streamsize>(text.size()));
    text.resize(static_cast<std::size_t>(in.gcount()));
    if (text.size() > largest_words) throw InputError(file.string(), phrase("workflow", "a file of at most 16 MiB"));
    return text;
}

std::vector<std::pair<std::string, std::string>> fingerprint_keys(const Filing& filing) {
    std::vector<std::pair<std::string, std::string>> keys;
    for (const review::Fingerprint& p : review::fingerprints(filing)) keys.emplace_back(p.kind, exchange::sha256_of(p.key));
    return keys;
}

exchange::WrittenFiling file_filing(store::Book& book, const FilingOrder& order) {
    exchange::FilingWords words;
    if (!order.words.empty()) words = exchange::read_filing_words(text_of_file(order.words), order.words.string());
    Filing f;
    for (const std::string& code : order.tests) take_test(book, code, f);
    std::string site = order.site;
    if (site.empty()) site = site_of_tests(book, f);
    if (site.empty()) throw InputError(phrase("workflow", "a filing of nothing"), phrase("workflow", "a site or a catch test"));
    f.site = site_of(book, site);
    if (order.tests.empty()) {
        for (audit::CatchTest& test : store::catch_tests_of_site(book, site)) f.tests.push_back({std::move(test), review::Phase::none});
    }
    if (order.site.empty()) take_tested_areas(book, f, words);
    else take_record(book, f, words);

    const auto written = calendar::parse_instant(order.written);
    if (!written) throw InputError(order.written, phrase("workflow", "an instant such as 2024-06-30T12:00:00Z"));
    f.written = *written;
    f.code = plain_code(order.code.empty() ? (order.site.empty() ? order.tests.front() : site) + "-" + order.written.substr(0, 10) : order.code);
    f.software = order.software;
    f.applicant = words.applicant;
    f.auditor = words.auditor;
    f.request = words.request;
    f.claims = words.claims;
    f.conventions = {order.quarter_rule, order.rain};
    set_phases(f);
    work_out_results(f, order.software);

    std::optional<exchange::SigningKey> key;
    if (!order.key.empty()) key.emplace(order.key);
    store::Transaction transaction(book);
    auto filing = exchange::write_filing(order.out, f, order.attachments, key ? &*key : nullptr);
    try {
        const auto opened = exchange::open_filing(order.out);
        if (opened.sha256 != filing.sha256) {
            throw InputError({phrase("workflow", "%1, changed while it was written"), order.out.string()},
                             phrase("workflow", "attachments that stand still"));
        }
        store::add_filing(book, {f.code, filing.sha256, store::Direction::sent, site, filing.json, key ? key->public_hex() : "",
                                 order.out.filename().string(), order.written, order.who},
                          fingerprint_keys(opened.filing));
        transaction.commit();
    } catch (...) {
        std::error_code ignored;
        std::filesystem::remove(order.out, ignored);
        throw;
    }
    return filing;
}

}  // namespace evenfall::workflow
