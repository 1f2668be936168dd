// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/command.h"
#include "app/cli/json_number.h"
#include "app/workflow/season.h"
#include "core/input_error.h"

#include <algorithm>
#include <iomanip>
#include <ostream>

namespace evenfall::cli {
namespace {

using budget::SeasonFigures;
using budget::WasteAccount;
using units::format_grouped;
using units::us_gallon;

Json waste_json(const std::optional<WasteAccount>& account) {
    if (!account) return nullptr;
    Json out = Json::object();
    for (const auto& line : budget::waste_lines()) {
        out[std::string(line.key) + "_gal"] = ((*account).*line.part).in(us_gallon);
    }
    return out;
}

Json by_cans_json(const std::optional<budget::CanAccount>& account) {
    if (!account) return nullptr;
    Json out = Json::object();
    for (const auto& line : budget::can_lines()) {
        out[std::string(line.key) + "_gal"] = ((*account).*line.part).in(us_gallon);
    }
    return out;
}

Json interval_json(const budget::VolumeInterval& interval) {
    return Json::array({interval.low.in(us_gallon), interval.high.in(us_gallon)});
}

/// Low and high end of each figure, in gallons.
Json intervals_json(const std::optional<budget::AccountIntervals>& intervals) {
    if (!intervals) return nullptr;
    Json waste = Json::object();
    for (std::size_t i = 0; i < budget::waste_lines().size(); ++i) {
        waste[std::string(budget::waste_lines()[i].key) + "_gal"] = interval_json(intervals->lines[i]);
    }
    Json cans = nullptr;
    if (intervals->by_cans) {
        cans = Json::object();
        for (std::size_t i = 0; i < budget::can_lines().size(); ++i) {
            cans[std::string(budget::can_lines()[i].key) + "_gal"] =
                interval_json((*intervals->by_cans)[i]);
        }
    }
    return {{"use_gal", interval_json(intervals->use)},
            {"need_gal", interval_json(intervals->need)},
            {"waste", std::move(waste)},
            {"waste_by_cans", std::move(cans)}};
}

Json cost_json(const budget::PeriodCost& cost) {
    Json lines = Json::object();
    for (std::size_t i = 0; i < budget::waste_lines().size(); ++i) {
        if (cost.money[i]) lines[std::string(budget::waste_lines()[i].key)] = *cost.money[i];
    }
    const auto bill = cost.bill ? std::optional(cost.bill->total()) : std::nullopt;
    return {{"bill", number_or_null(bill)},
            {"not_used", number_or_null(cost.not_used)},
            {"avoidable", number_or_null(cost.avoidable)},
            {"lines", std::move(lines)},
            {"energy_kwh", in_or_null(cost.energy, units::kilowatt_hour)},
            {"energy_avoidable_kwh", in_or_null(cost.energy_avoidable, units::kilowatt_hour)},
            {"energy_cost", number_or_null(cost.energy_cost)},
            {"energy_cost_avoidable", number_or_null(cost.energy_cost_avoidable)}};
}

Json cost_of_season_json(const budget::SeasonResult& r) {
    if (!r.cost) return nullptr;
    Json months = Json::array();
    for (std::size_t k = 0; k < r.cost->months.size(); ++k) {
        Json month = {{"month", calendar::format_month(r.months[k].month)}};
        month.update(cost_json(r.cost->months[k]));
        months.push_back(std::move(month));
    }
    return {{"currency", r.cost->currency},
            {"total", cost_json(r.cost->total)},
            {"months", std::move(months)},
            {"months_without_bill", r.cost->months_without_bill},
            {"convention", r.cost->convention.english()},
            {"source", r.cost->source.english()}};
}

/// @param area  index of the only area asked for; nothing for the site
Json intervals_of_season_json(const budget::SeasonResult& r, std::optional<std::size_t> area) {
    if (!r.intervals) return nullptr;
    const auto& all = *r.intervals;
    Json months = Json::array();
    for (std::size_t k = 0; !area && k < all.months.size(); ++k) {
        months.push_back({{"month", calendar::format_month(r.months[k].month)},
                          {"figures", intervals_json(all.months[k])}});
    }
    Json areas = Json::array();
    for (std::size_t i = 0; i < all.areas.size(); ++i) {
        if (area && *area != i) continue;
        areas.push_back({{"area", r.areas[i].area}, {"total", intervals_json(all.areas[i])}});
    }
    return {{"confidence", all.choice.confidence}, {"total", intervals_json(area ? all.areas[*area] : all.total)},
            {"months", std::move(months)},         {"areas", std::move(areas)},
            {"method", all.method.english()},      {"source", all.source.english()}};
}

Json figures_json(const SeasonFigures& f) {
    Json flags = Json::array();
    for (const auto flag : f.flags) flags.push_back(budget::key_of(flag));
    return {{"days", f.days},
            {"days_counted", f.days_counted},
            {"reference_et_mm", in_or_null(f.reference_et, units::millimetre)},
            {"rain_mm", in_or_null(f.rain, units::millimetre)},
            {"effective_rain_mm", in_or_null(f.effective_rain, units::millimetre)},
            {"use_gal", in_or_null(f.use, us_gallon)},
            {"need_gal", in_or_null(f.need, us_gallon)},
            {"budget_gal", in_or_null(f.budget, us_gallon)},
            {"over_budget_gal", in_or_null(f.over_budget, us_gallon)},
            {"outside_account_gal", in_or_null(f.outside_account, us_gallon)},
            {"estimated_share", f.estimated_share},
            {"waste", waste_json(f.account)},
            {"waste_by_cans", by_cans_json(f.by_cans)},
            {"flags", std::move(flags)}};
}

Json month_json(const budget::SeasonMonth& m) {
    Json out = {{"month", calendar::format_month(m.month)}};
    out.update(figures_json(m));
    return out;
}

Json area_json(const budget::AreaSeason& area) {
    Json months = Json::array();
    for (const auto& m : area.months) months.push_back(month_json(m));
    return {{"area", area.area}, {"name", area.name}, {"months", std::move(months)},
            {"total", figures_json(area.total)}};
}

Json answer_json(const workflow::SeasonAnswer& answer, const budget::AreaSeason* only) {
    const auto& r = answer.result;
    Json months = Json::array();
    if (only != nullptr) {
        for (const auto& m : only->months) months.push_back(month_json(m));
    } else {
        for (const auto& m : r.months) months.push_back(month_json(m));
    }
    Json areas = Json::array();
    for (const auto& a : r.areas) {
        if (only == nullptr || only == &a) areas.push_back(area_json(a));
    }
    Json notes = Json::array();
    for (const auto& n : r.notes) {
        notes.push_back({{"topic", n.topic},
                         {"method", n.method.english()},
                         {"source", n.source.english()},
                         {"assumed", n.assumed}});
    }
    Json findings = Json::array();
    for (const auto& f : r.findings)
        findings.push_back({{"record", f.record.english()}, {"sentence", f.sentence.english()}});
    for (const auto& f : answer.meter_findings) {
        findings.push_back({{"record", "meter " + f.meter},
                            {"sentence", f.sentence.english()},
                            {"kind", meter::text_of(f.kind).english()},
                            {"from", calendar::format_date(f.from)},
                            {"to", calendar::format_date(f.to)},
                            {"gal", in_or_null(f.volume, us_gallon)},
                            {"how_sure", meter::text_of(f.confidence).english()},
                            {"limit", f.limit.english()},
                            {"source", f.source.english()}});
    }
    const std::size_t index = only != nullptr ? static_cast<std::size_t>(only - r.areas.data()) : 0;
    return {{"site", r.site},
            {"area", only != nullptr ? Json(only->area) : Json(nullptr)},
            {"from", calendar::format_month(r.from)},
            {"to", calendar::format_month(r.to)},
            {"program", r.program.name},
            {"months", std::move(months)},
            {"total", figures_json(only != nullptr ? only->total : r.total)},
            {"areas", std::move(areas)},
            {"cost", cost_of_season_json(r)},
            {"intervals", intervals_of_season_json(
                              r, only != nullptr ? std::optional(index) : std::nullopt)},
            {"notes", std::move(notes)},
            {"findings", std::move(findings)}};
}

std::string gallons(const std::optional<units::Volume>& v) {
    return v ? format_grouped(v->in(us_gallon), 0) : "-";
}

void print_row(std::ostream& out, const std::string& label, const SeasonFigures& f) {
    out << std::left << std::setw(10) << label << std::right << std::setw(15) << gallons(f.use)
        << std::setw(15) << gallons(f.need) << std::setw(15) << gallons(f.budget) << std::setw(15)
        << gallons(f.over_budget) << std::setw(11)
        << units::format_fixed(100.0 * f.estimated_share, 0) + " %" << '\n';
}

std::string range_text(const budget::VolumeInterval& interval) {
    return format_grouped(interval.low.in(us_gallon), 0) + " to " +
           format_grouped(interval.high.in(us_gallon), 0);
}

/// The account by cans under the one by multipliers, each with its interval.
void print_cans(std::ostream& out, const SeasonFigures& total,
                const std::optional<budget::AccountIntervals>& intervals) {
    if (!total.by_cans) return;
    out << "\nThe same by a daily balance at every can, areas with a catch test, gallons\n";
    for (std::size_t i = 0; i < budget::can_lines().size(); ++i) {
        const auto& line = budget::can_lines()[i];
        out << "  " << std::left << std::setw(44) << line.words.english() << std::right << std::setw(15)
            << format_grouped(((*total.by_cans).*line.part).in(us_gallon), 0);
        if (intervals && intervals->by_cans) out << "   " << range_text((*intervals->by_cans)[i]);
        out << '\n';
    }
}

void print_waste(std::ostream& out, const SeasonFigures& total,
                 const std::optional<budget::AccountIntervals>& intervals) {
    if (!total.account) {
        out << "\nNo waste account: use or need is not known.\n";
        return;
    }
    out << "\nWhere the water went, gallons" << (intervals ? " (and 90 % interval)" : "") << '\n';
    for (std::size_t i = 0; i < budget::waste_lines().size(); ++i) {
        const auto& line = budget::waste_lines()[i];
        out << "  " << std::left << std::setw(44) << line.words.english() << std::right << std::setw(15)
            << format_grouped(((*total.account).*line.part).in(us_gallon), 0);
        if (intervals) out << "   " << range_text(intervals->lines[i]);
        out << '\n';
    }
    print_cans(out, total, intervals);
}

void print_cost(std::ostream& out, const budget::SeasonResult& r) {
    if (!r.cost) return;
    const auto money = [&](const std::optional<double>& value) {
        return value ? format_grouped(*value, 2) + " " + r.cost->currency : std::string("-");
    };
    const auto bill = r.cost->total.bill ? std::optional(r.cost->total.bill->total()) : std::nullopt;
    out << "\nWater bill " << money(bill) << ", of it not used by the turf "
        << money(r.cost->total.not_used) << ", avoidable " << money(r.cost->total.avoidable) << '\n';
    if (r.cost->total.energy) {
        out << "Pumping " << format_grouped(r.cost->total.energy->in(units::kilowatt_hour), 0)
            << " kWh, " << money(r.cost->total.energy_cost) << ", avoidable "
            << money(r.cost->total.energy_cost_avoidable) << '\n';
    }
    out << "  " << r.cost->convention << ". " << r.cost->source << '\n';
}

void print_text(std::ostream& out, const workflow::SeasonAnswer& answer, const budget::AreaSeason* only) {
    const auto& r = answer.result;
    out << r.name << (only != nullptr ? ", " + only->name : std::string()) << ", "
        << calendar::format_month(r.from) << " to " << calendar::format_month(r.to) << "\n\n"
        << std::left << std::setw(10) << "month" << std::right << std::setw(15) << "use, gal"
        << std::setw(15) << "need, gal" << std::setw(15) << "budget, gal" << std::setw(15)
        << "over, gal" << std::setw(11) << "estimated" << '\n';
    if (only != nullptr) {
        for (const auto& m : only->months) print_row(out, calendar::format_month(m.month), m);
        print_row(out, "total", only->total);
        const auto index = static_cast<std::size_t>(only - r.areas.data());
        print_waste(out, only->total, r.intervals ? r.intervals->areas[index] : std::nullopt);
    } else {
        for (const auto& m : r.months) print_row(out, calendar::format_month(m.month), m);
        print_row(out, "total", r.total);
        print_waste(out, r.total, r.intervals ? r.intervals->total : std::nullopt);
        print_cost(out, r);
    }
    if (!r.findings.empty() || !answer.meter_findings.empty()) out << "\nTo look at\n";
    for (const auto& f : r.findings) out << "  " << f.record << ": " << f.sentence << '\n';
    for (const auto& f : answer.meter_findings) {
        out << "  meter " << f.meter << ": " << f.sentence << " (" << meter::text_of(f.confidence).english() << ")\n";
    }
    out << "\nHow the figures were made\n";
    for (const auto& n : r.notes) {
        out << "  " << n.topic << ": " << n.method << (n.assumed ? " [assumed]" : "") << ". " << n.source << '\n';
    }
}

}  // namespace

int run(const SeasonOptions& o, Streams& streams) {
    const auto book = store::Book::open(o.book, store::Access::read_only);
    const auto rule = audit::quarter_rule_named(o.quarter_rule);
    if (!rule) throw InputError(o.quarter_rule, "a quarter rule");
    const auto answer = workflow::answer_season(book, {o.site, o.from, o.to, o.program, o.rain, *rule});
    const budget::AreaSeason* only = nullptr;
    if (!o.area.empty()) {
        const auto& areas = answer.result.areas;
        const auto it = std::find_if(areas.begin(), areas.end(), [&](const auto& a) { return a.area == o.area; });
        if (it == areas.end()) throw InputError(o.area, "an area of site " + o.site);
        only = &*it;
    }
    if (o.json) streams.out << print(answer_json(answer, only));
    else print_text(streams.out, answer, only);
    return done;
}

}  // namespace evenfall::cli
