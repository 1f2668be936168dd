// SPDX-License-Identifier: GPL-3.0-or-later
// Water and energy rates, pumps, controller stations, watering rules, settings of areas.
//
// Rates, pumps and stations are kept: what changes gets a code and dates of its own, so that a bill
// of last year stays what it was. A code that the book has with other values is refused. Watering
// rules and settings stand for today and are replaced where the user chooses so.
#include "core/exchange/import_run.h"
#include "core/input_error.h"
#include "core/store/price_store.h"
#include "core/store/site_store.h"
#include "core/store/station_store.h"
#include "core/units/number.h"

#include <algorithm>
#include <array>
#include <map>

namespace evenfall::exchange {
namespace {

using units::format_shortest;

constexpr double most_money = 1e9;
constexpr std::array day_names{"mon", "tue", "wed", "thu", "fri", "sat", "sun"};

std::string shown(const std::optional<double>& value) {
    return value ? format_shortest(*value) : std::string();
}
template <class Q>
std::string shown(const std::optional<units::Typed<Q>>& value) {
    return value ? value->text() : std::string();
}
std::string shown(const std::optional<calendar::Date>& date) {
    return date ? calendar::format_date(*date) : std::string();
}

/// All that a record says, on one line.
Sentence line_of(const budget::WaterRate& r) {
    std::vector<Sentence> parts{{phrase("exchange", "%1 %2 to %3 %4 per %5, fixed %6, sewer %7 on %8"), r.site,
                                 calendar::format_date(r.from), shown(r.to), r.currency, r.unit.name,
                                 format_shortest(r.fixed_per_month), shown(r.sewer_price),
                                 format_shortest(r.sewer_share.value())}};
    for (const auto& tier : r.tiers) {
        parts.push_back({phrase("exchange", "%1 up to %2"), format_shortest(tier.price), shown(tier.up_to)});
    }
    return Sentence::joined(std::move(parts), "; ");
}
Sentence line_of(const budget::EnergyRate& r) {
    return {phrase("exchange", "%1 %2 to %3 %4 %5"), r.site, calendar::format_date(r.from), shown(r.to), r.currency,
            format_shortest(r.price_per_kwh)};
}
Sentence line_of(const budget::Pump& p) {
    return {phrase("exchange", "%1 lift %2, pressure %3, friction %4, efficiency %5, share %6"), p.site, shown(p.lift),
            shown(p.pressure), shown(p.friction), format_shortest(p.efficiency.value()), format_shortest(p.share)};
}
Sentence line_of(const schedule::Station& s) {
    return {phrase("exchange", "%1 %2 rate %3 (%4), arc %5, flow %6"), s.area, s.name, shown(s.rate), s.rate_source,
            shown(s.arc_degrees), shown(s.flow)};
}

bool known_site(ImportRun& run, RowReader& row, const std::string& site) {
    if (site.empty() || store::find_site(run.book, site)) return true;
    row.refuse("site", site, site_expected);
    return false;
}

void check_dates(RowReader& row, calendar::Date from, const std::optional<calendar::Date>& to) {
    if (row.ok() && to && *to < from) {
        row.refuse("to", row.text("to"), phrase("exchange", "a day that is not before the first one"));
    }
}

std::string currency_of(RowReader& row) {
    const std::string code = row.needed_text("currency");
    const bool fits = code.size() == 3 && std::all_of(code.begin(), code.end(), [](char c) {
        return c >= 'A' && c <= 'Z';
    });
    if (row.ok() && !fits) row.refuse("currency", code, phrase("exchange", "a currency code of three letters, such as USD"));
    return code;
}

/// Adds a record whose code is new; a known one must say the same, or the answer says why not.
template <class Record>
std::optional<Issue> keep(ImportRun& run, const std::vector<Record>& stored, const Record& record,
                          void (*add)(store::Book&, const Record&, std::optional<std::int64_t>)) {
    const auto same = std::find_if(stored.begin(), stored.end(),
                                   [&](const Record& r) { return r.code == record.code; });
    if (same == stored.end()) {
        add(run.book, record, run.import);
        ++run.result.added;
    } else if (line_of(*same) == line_of(record)) {
        ++run.result.unchanged;
    } else {
        return Issue{{}, Sentence::joined({record.code, line_of(record)}, ": "),
                     {phrase("exchange", "a code of its own; the book has %1 as %2"), record.code, line_of(*same)}};
    }
    return std::nullopt;
}

/// The same for the row that is being read.
template <class Record>
void keep(ImportRun& run, RowReader& row, std::string_view group, const std::vector<Record>& stored,
          const Record& record, void (*add)(store::Book&, const Record&, std::optional<std::int64_t>)) {
    if (const auto issue = keep(run, stored, record, add)) row.refuse(group, issue->found, issue->expected);
}

budget::WaterRate read_rate(RowReader& row) {
    budget::WaterRate rate;
    rate.code = row.needed_text("rate");
    rate.site = std::string(row.text("site"));
    rate.from = row.needed_date("from").value_or(calendar::Date{});
    rate.to = row.date("to");
    check_dates(row, rate.from, rate.to);
    const std::string unit = row.needed_text("unit");
    if (row.ok()) {
        try {
            rate.unit = units::unit_named<units::Volume>(unit);
        } catch (const InputError& error) {
            row.refuse("unit", unit, error.issues().front().expected);
        }
    }
    rate.currency = currency_of(row);
    rate.fixed_per_month =
        row.number_within("fixed_per_month", 0, most_money, phrase("exchange", "zero or more")).value_or(0.0);
    rate.sewer_price = row.number_within("sewer_price", 0, most_money, phrase("exchange", "zero or more"));
    rate.sewer_share = units::Share::of(
        row.number_within("sewer_share", 0, 1, phrase("exchange", "a share from 0 to 1")).value_or(1.0));
    budget::RateTier tier;
    tier.up_to = row.number_within("tier_up_to", 1e-9, most_money, phrase("exchange", "above zero, or empty in the last tier"));
    static_cast<void>(row.needed_number("price"));
    tier.price = row.number_within("price", 0, most_money, phrase("exchange", "zero or more")).value_or(0.0);
    rate.tiers = {tier};
    return rate;
}

bool same_head(budget::WaterRate a, budget::WaterRate b) {
    a.tiers.clear();
    b.tiers.clear();
    return line_of(a) == line_of(b);
}

int clock_minutes(RowReader& row, const char* group) {
    const std::string text = row.needed_text(group);
    const auto time = calendar::parse_local_time("2000-01-01T" + text);
    if (!time) {
        if (row.ok()) row.refuse(group, text, phrase("exchange", "a time such as 22:00"));
        return 0;
    }
    return static_cast<int>(std::chrono::duration_cast<std::chrono::minutes>(
                                *time - std::chrono::floor<std::chrono::days>(*time)).count());
}

schedule::WateringRule read_rule(RowReader& row) {
    schedule::WateringRule rule;
    rule.site = row.needed_text("site");
    const std::string days = row.needed_text("days");
    for (std::size_t at = 0; row.ok() && at <= days.size();) {
        const std::size_t end = std::min(days.find(' ', at), days.size());
        const auto day = std::find(day_names.begin(), day_names.end(), days.substr(at, end - at));
        if (day == day_names.end()) {
            row.refuse("days", days, phrase("exchange", "days such as \"mon wed fri\""));
        } else {
            rule.days[static_cast<std::size_t>(day - day_names.begin())] = true;
        }
        at = end + 1;
    }
    rule.starts = std::chrono::minutes{clock_minutes(row, "starts")};
    rule.ends = std::chrono::minutes{clock_minutes(row, "ends")};
    if (row.ok() && rule.starts == rule.ends) {
        row.refuse("ends", row.text("ends"), phrase("exchange", "another time than the start"));
    }
    rule.stations_at_once = row.whole_number("stations_at_once", 1, 1000).value_or(1);
    return rule;
}

std::string line_of(const schedule::WateringRule& r) {
    std::string text;
    for (std::size_t i = 0; i < r.days.size(); ++i) {
        if (r.days[i]) text += std::string(day_names[i]) + " ";
    }
    return text + std::to_string(r.starts.count()) + " to " + std::to_string(r.ends.count()) +
           " minutes after midnight, " + std::to_string(r.stations_at_once) + " at once";
}

std::string line_of(const budget::AreaSetting& s) {
    std::optional<double> share;
    if (s.off_target) share = s.off_target->value();
    return "off target " + shown(share) + " (" + s.off_target_source + ")" +
           (s.special ? ", special" : "") +
           (s.salt ? ", water " + shown(s.salt->water_ec) + " dS/m, soil kept at " +
                         shown(s.salt->soil_ec_limit) + " dS/m"
                   : std::string());
}

void read_salt(RowReader& row, budget::AreaSetting& setting) {
    const auto water = row.number_within("water_ec", 0, 60, phrase("exchange", "dS/m of the irrigation water, 0 to 60"));
    const auto limit = row.number_within("soil_ec_limit", 0.1, 60, phrase("exchange", "dS/m the soil is kept at, 0.1 to 60"));
    if (water.has_value() != limit.has_value()) {
        row.refuse(water ? "soil_ec_limit" : "water_ec", "",
                   phrase("exchange", "both the salt of the water and the salt the soil is kept at, or neither"));
    }
    if (!water || !limit) return;
    const weather::SaltCase salt{*water, *limit};
    try {
        static_cast<void>(weather::leaching_requirement(salt));
    } catch (const InputError& error) {
        row.refuse("water_ec", shown(salt.water_ec), error.issues().front().expected);
        return;
    }
    setting.salt = salt;
}

}  // namespace

void import_prices(ImportRun& run) {
    std::vector<std::pair<budget::WaterRate, std::vector<KeptRow>>> rates;
    std::map<std::string, std::size_t> by_code;
    run.each_row([&](RowReader& row) {
        auto rate = read_rate(row);
        if (!row.ok() || !known_site(run, row, rate.site)) return;
        const auto [at, is_new] = by_code.try_emplace(rate.code, rates.size());
        if (is_new) {
            rates.emplace_back(std::move(rate), std::vector{run.keep_row()});
        } else if (same_head(rates[at->second].first, rate)) {
            rates[at->second].first.tiers.push_back(rate.tiers.front());
            rates[at->second].second.push_back(run.keep_row());
        } else {
            row.refuse("rate", rate.code, phrase("exchange", "the same dates, unit and charges in every row of a rate"));
        }
    });
    const auto stored = store::water_rates(run.book);
    for (const auto& [rate, rows] : rates) {
        const Place place{run.rows.file(), rows.front().row, "rate"};
        try {
            // What makes no bill is refused here, with its row, and not on the day of a report.
            static_cast<void>(budget::WaterRates(std::vector{rate}, rate.site));
        } catch (const InputError& error) {
            run.refuse_later(rows, {place, error.issues().front().found, error.issues().front().expected});
            continue;
        }
        if (const auto issue = keep(run, stored, rate, store::add_water_rate)) {
            run.refuse_later(rows, {place, issue->found, issue->expected});
        }
    }
}

void import_energy(ImportRun& run) {
    run.each_row([&](RowReader& row) {
        budget::EnergyRate rate;
        rate.code = row.needed_text("rate");
        rate.site = std::string(row.text("site"));
        rate.from = row.needed_date("from").value_or(calendar::Date{});
        rate.to = row.date("to");
        check_dates(row, rate.from, rate.to);
        rate.currency = currency_of(row);
        static_cast<void>(row.needed_number("price_per_kwh"));
        rate.price_per_kwh = row.number_within("price_per_kwh", 0, most_money, phrase("exchange", "zero or more")).value_or(0.0);
        if (!row.ok() || !known_site(run, row, rate.site)) return;
        keep(run, row, "rate", store::energy_rates(run.book), rate,
             store::add_energy_rate);
    });
}

void import_pumps(ImportRun& run) {
    run.each_row([&](RowReader& row) {
        budget::Pump pump;
        pump.code = row.needed_text("pump");
        pump.site = row.needed_text("site");
        pump.lift = row.measure<units::Length>("lift");
        pump.pressure = row.measure<units::Pressure>("pressure");
        pump.friction = row.measure<units::Length>("friction");
        static_cast<void>(row.needed_number("efficiency"));
        const auto efficiency = row.number_within("efficiency", 0.01, 1,
                                                  phrase("exchange", "an overall efficiency from 0.01 to 1"));
        if (efficiency) pump.efficiency = units::Efficiency::of(*efficiency);
        pump.share = row.number_within("share", 0, 1, phrase("exchange", "a share from 0 to 1")).value_or(1.0);
        if (!row.ok() || !known_site(run, row, pump.site)) return;
        try {
            static_cast<void>(budget::total_head(pump));
        } catch (const InputError& error) {
            row.refuse("pump", error.issues().front().found, error.issues().front().expected);
            return;
        }
        keep(run, row, "pump", store::pumps(run.book, pump.site), pump,
             store::add_pump);
    });
}

void import_controller_stations(ImportRun& run) {
    run.each_row([&](RowReader& row) {
        schedule::Station station;
        station.code = row.needed_text("station");
        station.area = row.needed_text("area");
        station.name = std::string(row.text("name"));
        station.rate = row.measure<units::Rate>("rate");
        if (station.rate && !(station.rate->value > 0.0)) {
            row.refuse("rate", row.text("rate"), phrase("exchange", "a rate above zero, or none"));
        }
        station.rate_source = std::string(row.text("rate_source"));
        station.arc_degrees = row.number_within("arc_degrees", 1, 360, phrase("exchange", "degrees from 1 to 360"));
        station.flow = row.measure<units::Flow>("flow");
        if (station.flow && !(station.flow->value > 0.0)) {
            row.refuse("flow", row.text("flow"), phrase("exchange", "a flow above zero, or none"));
        }
        if (!row.ok()) return;
        const auto area = store::find_area(run.book, station.area);
        if (!area) {
            row.refuse("area", station.area, area_expected);
            return;
        }
        keep(run, row, "station", store::stations(run.book, area->site),
             station, store::add_station);
    });
}

void import_watering_rules(ImportRun& run) {
    run.each_row([&](RowReader& row) {
        const auto rule = read_rule(row);
        if (!row.ok() || !known_site(run, row, rule.site)) return;
        const auto stored = store::watering_rule(run.book, rule.site);
        if (!stored) {
            store::set_watering_rule(run.book, rule);
            ++run.result.added;
        } else if (line_of(*stored) == line_of(rule)) {
            ++run.result.unchanged;
        } else if (run.settle({run.rows.file(), row.row(), ""}, Sentence(record_form::watering_rule, rule.site).english(),
                              line_of(*stored), line_of(rule))) {
            store::set_watering_rule(run.book, rule);
        }
    });
}

void import_area_settings(ImportRun& run) {
    run.each_row([&](RowReader& row) {
        budget::AreaSetting setting;
        setting.area = row.needed_text("area");
        if (const auto share = row.number_within("off_target", 0, 1, phrase("exchange", "a share from 0 to 1"))) {
            setting.off_target = units::Share::of(*share);
        }
        setting.off_target_source = std::string(row.text("off_target_source"));
        const auto special = row.text("special");
        if (!special.empty() && special != "yes" && special != "no") {
            row.refuse("special", special, phrase("exchange", "yes, no or nothing"));
        }
        setting.special = special == "yes";
        read_salt(row, setting);
        if (!row.ok()) return;
        const auto area = store::find_area(run.book, setting.area);
        if (!area) {
            row.refuse("area", setting.area, area_expected);
            return;
        }
        const auto all = store::area_settings(run.book, area->site);
        const auto stored = std::find_if(all.begin(), all.end(),
                                         [&](const auto& s) { return s.area == setting.area; });
        if (stored == all.end()) {
            store::set_area_setting(run.book, setting);
            ++run.result.added;
        } else if (line_of(*stored) == line_of(setting)) {
            ++run.result.unchanged;
        } else if (run.settle({run.rows.file(), row.row(), ""}, Sentence(record_form::settings, setting.area).english(),
                              line_of(*stored), line_of(setting))) {
            store::set_area_setting(run.book, setting);
        }
    });
}

}  // namespace evenfall::exchange
