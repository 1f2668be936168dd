// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/command.h"
#include "app/cli/json_number.h"
#include "app/workflow/portfolio.h"
#include "core/units/number.h"

#include <iomanip>
#include <ostream>

namespace evenfall::cli {
namespace {

using budget::PortfolioSite;
using budget::RankBy;
using budget::SeasonFigures;
using units::us_gallon;

RankBy order_named(const std::string& name) {
    if (name == "per-acre") return RankBy::per_area;
    if (name == "money") return RankBy::money;
    return RankBy::over_budget;
}

Json waste_json(const SeasonFigures& f) {
    if (!f.account) return nullptr;
    Json out = Json::object();
    for (const auto& line : budget::waste_lines()) {
        out[std::string(line.key) + "_gal"] = ((*f.account).*line.part).in(us_gallon);
    }
    return out;
}

Json figures_json(const SeasonFigures& f) {
    Json flags = Json::array();
    for (const auto flag : f.flags) flags.push_back(budget::key_of(flag));
    return {{"use_gal", in_or_null(f.use, us_gallon)},
            {"need_gal", in_or_null(f.need, us_gallon)},
            {"budget_gal", in_or_null(f.budget, us_gallon)},
            {"over_budget_gal", in_or_null(f.over_budget, us_gallon)},
            {"outside_account_gal", in_or_null(f.outside_account, us_gallon)},
            {"estimated_share", f.estimated_share},
            {"waste", waste_json(f)},
            {"flags", std::move(flags)}};
}

Json site_json(const PortfolioSite& s) {
    Json out = {{"rank", s.rank > 0 ? Json(s.rank) : Json(nullptr)},
                {"site", s.site},
                {"name", s.name},
                {"size_ac", s.size.in(units::acre)},
                {"size_counted_ac", s.size_counted.in(units::acre)},
                {"over_budget_in", in_or_null(s.over_budget_depth, units::inch)},
                {"avoidable_money", number_or_null(s.avoidable_money)},
                {"currency", s.currency.empty() ? Json(nullptr) : Json(s.currency)}};
    out.update(figures_json(s.total));
    return out;
}

Json answer_json(const PortfolioOptions& o, const workflow::PortfolioAnswer& answer) {
    Json sites = Json::array();
    for (const auto& s : answer.portfolio.sites) sites.push_back(site_json(s));
    Json months = Json::array();
    for (const auto& m : answer.portfolio.months) {
        Json month = {{"month", calendar::format_month(m.month)}};
        month.update(figures_json(m));
        months.push_back(std::move(month));
    }
    Json problems = Json::array();
    for (const auto& p : answer.problems) problems.push_back({{"site", p.site}, {"reason", p.reason}});
    return {{"from", calendar::format_month(o.from)},
            {"to", calendar::format_month(o.to)},
            {"program", o.program},
            {"order", o.order},
            {"sites", std::move(sites)},
            {"months", std::move(months)},
            {"total", figures_json(answer.portfolio.total)},
            {"not_computed", std::move(problems)}};
}

std::string gallons(const std::optional<units::Volume>& v) {
    return v ? units::format_grouped(v->in(us_gallon), 0) : "-";
}

void print_text(std::ostream& out, const PortfolioOptions& o, const workflow::PortfolioAnswer& answer) {
    out << calendar::format_month(o.from) << " to " << calendar::format_month(o.to) << ", program "
        << o.program << ", ranked by " << o.order << "\n\n"
        << std::setw(5) << "rank" << "  " << std::left << std::setw(24) << "site" << std::right
        << std::setw(10) << "acres" << std::setw(15) << "use, gal" << std::setw(15) << "budget, gal"
        << std::setw(15) << "over, gal" << std::setw(10) << "over, in" << std::setw(14)
        << "avoidable" << '\n';
    for (const auto& s : answer.portfolio.sites) {
        out << std::setw(5) << (s.rank > 0 ? std::to_string(s.rank) : std::string("-")) << "  "
            << std::left << std::setw(24) << s.site << std::right << std::setw(10)
            << units::format_fixed(s.size.in(units::acre), 1) << std::setw(15) << gallons(s.total.use)
            << std::setw(15) << gallons(s.total.budget) << std::setw(15)
            << gallons(s.total.over_budget) << std::setw(10)
            << (s.over_budget_depth ? units::format_fixed(s.over_budget_depth->in(units::inch), 1)
                                    : std::string("-"))
            << std::setw(14)
            << (s.avoidable_money ? units::format_grouped(*s.avoidable_money, 0) + " " + s.currency
                                  : std::string("-"))
            << '\n';
    }
    for (const auto& p : answer.problems) {
        out << "\nNot computed: " << p.site << ": " << p.reason << '\n';
    }
}

}  // namespace

int run(const PortfolioOptions& o, Streams& streams) {
    const auto book = store::Book::open(o.book, store::Access::read_only);
    const auto progress = [&](std::size_t finished, std::size_t all) {
        if (!streams.err_is_terminal) return;
        streams.err << '\r' << finished << " of " << all << " sites" << (finished == all ? "\n" : "")
                    << std::flush;
    };
    const auto answer = workflow::answer_portfolio(
        book,
        {o.from, o.to, o.program, o.rain, audit::QuarterRule::whole_cans, order_named(o.order)},
        progress);
    if (o.json) {
        streams.out << print(answer_json(o, answer));
    } else {
        print_text(streams.out, o, answer);
    }
    return done;
}

}  // namespace evenfall::cli
