// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/review/question.h"

#include "core/audit/uniformity.h"
#include "core/calendar/time_zone.h"
#include "core/input_error.h"
#include "core/meter/use.h"
#include "core/reference/table.h"
#include "core/review/use_record.h"
#include "core/units/number.h"

#include <boost/math/distributions/chi_squared.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <stdexcept>

namespace evenfall::review {
namespace {

double limit(std::string_view name) {
    const reference::Row* row = reference::Table::named("review_questions.csv").find("limit", name);
    if (row == nullptr) throw std::logic_error("review_questions.csv: no limit " + std::string(name));
    return row->number("value");
}

std::vector<double> readings_of(const audit::CatchTest& test) {
    std::vector<double> readings;
    for (const audit::Catch& c : test.catches) {
        if (c.excluded.empty()) readings.push_back(c.reading);
    }
    return readings;
}

std::string percent(double share) { return units::format_fixed(100.0 * share, 1) + " %"; }

Sentence in_both(const FiledTest& a, const FiledTest& b) {
    return {phrase("review", "tests, %1 and %2"), a.test.code, b.test.code};
}

Sentence in_test(const FiledTest& t) { return {phrase("review", "tests, %1"), t.test.code}; }

void ask_copied(const FiledTest& a, const FiledTest& b, std::vector<Question>& asked) {
    std::vector<double> x = readings_of(a.test);
    std::vector<double> y = readings_of(b.test);
    const std::size_t n = std::min(x.size(), y.size());
    if (static_cast<double>(n) < limit("copied_cans")) return;
    std::size_t same = 0;
    for (std::size_t i = 0; i < n; ++i) same += x[i] == y[i] ? 1U : 0U;
    const bool all_alike = std::all_of(x.begin(), x.end(), [&](double v) { return v == x.front(); });
    const std::string one = printable(a.test.code);
    const std::string other = printable(b.test.code);
    const auto ask = [&](Sentence words) { asked.push_back({"copied_cans", std::move(words), in_both(a, b)}); };
    if (static_cast<double>(same) >= std::max(limit("copied_cans"), limit("copied_share") * static_cast<double>(n)) && !all_alike) {
        ask({phrase("review", "Tests %1 and %2 have %3 of %4 readings alike, in the same order. Was one sheet copied from the other by mistake?"),
             one, other, same, n});
        return;
    }
    if (x.size() != y.size() || all_alike) return;
    std::sort(x.begin(), x.end());
    std::sort(y.begin(), y.end());
    if (x == y) {
        ask({phrase("review", "Tests %1 and %2 have the same readings in another order. Was one sheet copied from the other by mistake?"), one, other});
    }
}

void ask_one_factor(const FiledTest& a, const FiledTest& b, std::vector<Question>& asked) {
    const std::vector<double> x = readings_of(a.test);
    const std::vector<double> y = readings_of(b.test);
    if (x.size() != y.size() || static_cast<double>(x.size()) < limit("factor_cans")) return;
    double mean = 0.0;
    std::vector<double> ratios;
    for (std::size_t i = 0; i < x.size(); ++i) {
        if (!(x[i] > 0.0)) return;
        ratios.push_back(y[i] / x[i]);
        mean += ratios.back() / static_cast<double>(x.size());
    }
    const bool spread_readings = *std::max_element(x.begin(), x.end()) > 1.05 * *std::min_element(x.begin(), x.end());
    const auto [low, high] = std::minmax_element(ratios.begin(), ratios.end());
    // Readings to whole units scatter about an exact factor by half a unit each.
    const double smallest = *std::min_element(x.begin(), x.end());
    const double room = std::max(limit("factor_spread"), 1.0 / std::max(1.0, smallest));
    if (!spread_readings || mean == 1.0 || !(mean > 0.0) || (*high - *low) / mean > 2.0 * room) return;
    double variance = 0.0;
    for (const double r : ratios) variance += (r - mean) * (r - mean) / static_cast<double>(ratios.size() - 1);
    if (std::sqrt(variance) / mean > room) return;
    asked.push_back({"one_factor",
                     {phrase("review", "Every can of test %1 caught close to %2 times what it caught in test %3. Were the readings of one test worked out from the other?"),
                      printable(b.test.code), units::format_fixed(mean, 3), printable(a.test.code)},
                     in_both(a, b)});
}

/// Last digits of readings that were read to the unit. People who read a scale favour some digits,
/// 0 and 5 above all; a hand that invents numbers tends to give each digit its turn.
void ask_even_digits(const Filing& f, std::vector<Question>& asked) {
    std::array<double, 10> counts{};
    double n = 0.0;
    std::string where;
    for (const FiledTest& t : f.tests) {
        if (t.test.catch_unit != audit::CatchUnit::millilitre) continue;
        for (const double r : readings_of(t.test)) {
            if (r != std::floor(r) || r < 10.0) continue;
            counts[static_cast<std::size_t>(std::fmod(r, 10.0))] += 1.0;
            n += 1.0;
        }
        where += (where.empty() ? "" : ", ") + t.test.code;
    }
    if (n < limit("digit_cans")) return;
    double chi_square = 0.0;
    for (const double count : counts) chi_square += (count - n / 10.0) * (count - n / 10.0) / (n / 10.0);
    const double tail = boost::math::cdf(boost::math::chi_squared(9.0), chi_square);
    if (tail >= limit("digit_too_even")) return;
    asked.push_back({"even_digits",
                     {phrase("review", "The last digits of %1 readings are spread more evenly than readings from a scale usually are (chi-square %2 on 9 degrees of freedom). How were the cans read?"),
                      units::format_fixed(n, 0), units::format_fixed(chi_square, 2)},
                     {phrase("review", "tests, %1"), where}});
}

void ask_weather(const Filing& f, std::vector<Question>& asked) {
    for (const FiledTest& t : f.tests) {
        const auto row = std::find_if(f.weather.days.begin(), f.weather.days.end(),
                                      [&](const weather::SheetRow& d) { return d.date == t.test.date; });
        if (row == f.weather.days.end()) continue;
        const auto day = weather::converted(*row, f.weather.units);
        const std::string when = calendar::format_date(t.test.date);
        if (day.rain && day.rain->in(units::millimetre) > limit("rain_mm")) {
            asked.push_back({"rain",
                             {phrase("review", "The weather record shows %1 mm of rain on %2, the day of test %3. Did the cans catch rain?"),
                              units::format_fixed(day.rain->in(units::millimetre), 1), when, printable(t.test.code)},
                             {phrase("review", "weather, %1"), when}});
        }
        if (day.wind && day.wind->si() > limit("wind_m_s")) {
            asked.push_back({"wind",
                             {phrase("review", "The weather record shows a mean wind of %1 m/s on %2, the day of test %3. At what hour was the test made, and how strong was the wind then?"),
                              units::format_fixed(day.wind->si(), 1), when, printable(t.test.code)},
                             {phrase("review", "weather, %1"), when}});
        }
    }
}

void ask_outline(const Filing& f, std::vector<Question>& asked) {
    for (const FiledArea& a : f.areas) {
        const auto drawn = outline_area(a.outline);
        if (!drawn) continue;
        const double share = std::abs(a.area.size.quantity() / *drawn - 1.0);
        if (share <= limit("outline_share")) continue;
        asked.push_back({"outline",
                         {phrase("review", "Area %1 is given as %2, and its outline encloses %3 %4. Which one is watered?"), printable(a.area.code),
                          a.area.size.text(), units::format_fixed(drawn->in(a.area.size.unit.unit), 2), a.area.size.unit.name},
                         {phrase("review", "areas, %1"), a.area.code}});
    }
}

std::optional<units::Rate> rate_of(const audit::CatchTest& test) {
    try {
        return audit::analyse_uniformity(test, audit::QuarterRule::whole_cans).net_rate;
    } catch (const InputError&) {
        return std::nullopt;  // the claims table says what is wrong with the test
    }
}

const FiledArea* area_of(const Filing& f, const std::string& code) {
    const auto found = std::find_if(f.areas.begin(), f.areas.end(), [&](const FiledArea& a) { return a.area.code == code; });
    return found == f.areas.end() ? nullptr : &*found;
}

/// Only where one meter feeds one area can its volume be held against one rate.
const FiledMeter* own_meter(const Filing& f, const FiledArea& area) {
    const auto fed = std::count_if(f.areas.begin(), f.areas.end(), [&](const FiledArea& a) { return a.area.meter == area.area.meter; });
    const auto meter = std::find_if(f.meters.begin(), f.meters.end(), [&](const FiledMeter& m) { return m.meter.code == area.area.meter; });
    return fed == 1 && meter != f.meters.end() ? &*meter : nullptr;
}

Sentence in_meter_and_test(const FiledMeter& m, const FiledTest& t) {
    return {phrase("review", "meters, %1; tests, %2"), m.meter.code, t.test.code};
}

void ask_meter(const Filing& f, const UseRecord& record, const FiledTest& t, std::vector<Question>& asked) {
    const FiledArea* area = area_of(f, t.test.area);
    const auto rate = rate_of(t.test);
    if (area == nullptr || !rate || !(rate->si() > 0.0)) return;
    const FiledMeter* meter = own_meter(f, *area);
    if (meter == nullptr) return;
    const auto& spells = t.phase == Phase::before ? record.before : record.after;
    if (t.phase != Phase::none && f.areas.size() == 1 && !spells.empty()) {
        const auto fullest = std::max_element(spells.begin(), spells.end(), [](const UseSpell& a, const UseSpell& b) {
            return a.use.si() / a.days < b.use.si() / b.days;
        });
        const double hours = (fullest->use / area->area.size.quantity() / *rate).in(units::hour) / fullest->days;
        if (hours > limit("run_hours")) {
            asked.push_back({"run_hours",
                             {phrase("review", "At the rate of test %1 the volume metered in %2 takes %3 hours a day. Does the meter feed more than this area, or is the area or the rate another one?"),
                              printable(t.test.code), calendar::format_month(calendar::month_of(fullest->first)), units::format_fixed(hours, 1)},
                             in_meter_and_test(*meter, t)});
        }
    }
    if (!t.test.minutes) return;
    const calendar::TimeZone zone(f.site.time_zone);
    const auto start = zone.start_of_day(t.test.date);
    const auto end = zone.start_of_day(t.test.date + std::chrono::days(1));
    std::vector<meter::Reading> during;
    for (const meter::Reading& r : meter->readings) {
        if (r.at >= start && r.at <= end && r.span.count() == 0) during.push_back(r);
    }
    // Two readings within a few hours of each other were taken around the test.
    if (during.size() != 2 || during[1].at - during[0].at > std::chrono::hours(6)) return;
    const auto counted = meter::register_difference(during[0].value, during[1].value, meter->meter.digits);
    if (!counted) return;
    const units::Volume metered = *counted * meter::volume_per_count(meter->meter, during[0].at);
    const units::Volume expected = *rate * area->area.size.quantity() * (*t.test.minutes * units::minute);
    const double share = metered / expected;
    if (share >= limit("meter_low") && share <= limit("meter_high")) return;
    asked.push_back({"meter_in_test",
                     {phrase("review", "During test %1 the meter counted %2 of rate x time x area. Was the whole area running, and for the time given?"),
                      printable(t.test.code), percent(share)},
                     in_meter_and_test(*meter, t)});
}

void ask_dates(const Filing& f, std::vector<Question>& asked) {
    const auto written = std::chrono::floor<std::chrono::days>(f.written);
    const auto ask = [&](Sentence words, Sentence evidence) {
        asked.push_back({"order_of_dates", std::move(words), std::move(evidence)});
    };
    for (const FiledTest& t : f.tests) {
        const std::string test = printable(t.test.code);
        const std::string dated = calendar::format_date(t.test.date);
        if (t.test.date > written) {
            ask({phrase("review", "Test %1 is dated %2, after the filing was written. Which date is right?"), test, dated}, in_test(t));
        }
        if (!f.request.change || t.phase == Phase::none) continue;
        const bool late = t.phase == Phase::before && t.test.date > *f.request.change;
        const bool early = t.phase == Phase::after && t.test.date < *f.request.change;
        const std::string change = calendar::format_date(*f.request.change);
        if (late) {
            ask({phrase("review", "Test %1 is dated %2 and counted as before the change of %3. Which date is right?"), test, dated, change}, in_test(t));
        }
        if (early) {
            ask({phrase("review", "Test %1 is dated %2 and counted as after the change of %3. Which date is right?"), test, dated, change}, in_test(t));
        }
    }
    for (const Invoice& i : f.request.invoices) {
        if (i.date && *i.date > written) {
            ask({phrase("review", "Invoice %1 is dated %2, after the filing was written. Which date is right?"), printable(i.number),
                 calendar::format_date(*i.date)},
                {phrase("review", "request.invoices, %1"), i.number});
        }
    }
}

}  // namespace

std::vector<Question> questions(const Filing& f) {
    std::vector<Question> asked;
    for (std::size_t i = 0; i < f.tests.size(); ++i) {
        for (std::size_t k = i + 1; k < f.tests.size(); ++k) {
            const std::size_t before = asked.size();
            ask_copied(f.tests[i], f.tests[k], asked);
            if (asked.size() == before) ask_one_factor(f.tests[i], f.tests[k], asked);
        }
    }
    ask_even_digits(f, asked);
    ask_weather(f, asked);
    ask_outline(f, asked);
    ask_dates(f, asked);
    try {
        const UseRecord record = use_record(f);
        for (const FiledTest& t : f.tests) ask_meter(f, record, t, asked);
    } catch (const InputError&) {
        // A time zone or rain rule that cannot be read is refused where it is used, with its reason.
    }
    return asked;
}

std::vector<Fingerprint> fingerprints(const Filing& f) {
    std::vector<Fingerprint> prints;
    for (const Attachment& a : f.attachments) {
        const bool photo = a.kind == "photo";
        const std::string path = printable(a.path);
        prints.push_back({photo ? "photo" : "attachment", a.sha256,
                          photo ? Sentence(phrase("review", "photo %1"), path) : Sentence(phrase("review", "file %1"), path),
                          {phrase("review", "attachments, %1"), a.path}});
    }
    for (const Invoice& i : f.request.invoices) {
        std::string vendor = i.vendor;
        for (char& c : vendor) c = c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
        const Sentence words = i.vendor.empty() ? Sentence(phrase("review", "invoice %1"), printable(i.number))
                                                : Sentence(phrase("review", "invoice %1 of %2"), printable(i.number), printable(i.vendor));
        prints.push_back({"invoice", vendor + "\n" + i.number, words, {phrase("review", "request.invoices, %1"), i.number}});
    }
    for (const FiledTest& t : f.tests) {
        const std::vector<double> readings = readings_of(t.test);
        if (static_cast<double>(readings.size()) < limit("copied_cans")) continue;
        std::string key;
        for (const double r : readings) key += units::format_shortest(r) + " ";
        prints.push_back({"catches", std::move(key), {phrase("review", "the readings of test %1"), printable(t.test.code)}, in_test(t)});
    }
    return prints;
}

Question shared_with(const Fingerprint& fingerprint, const std::string& other_filing) {
    return {"shared_" + fingerprint.kind,
            {phrase("review", "The same %1 also stands in filing %2. Do both applications rest on it?"), fingerprint.words, printable(other_filing)},
            fingerprint.evidence};
}

}  // namespace evenfall::review
