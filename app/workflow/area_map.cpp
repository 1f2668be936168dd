// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/workflow/area_map.h"

#include "core/audit/uniformity.h"
#include "core/input_error.h"
#include "core/store/catch_test_store.h"
#include "core/store/outline_store.h"
#include "core/store/site_store.h"

#include <algorithm>
#include <optional>

namespace evenfall::workflow {
namespace {

using exchange::Property;
using exchange::PropertyValue;

PropertyValue text_or_nothing(const std::string& text) {
    return text.empty() ? PropertyValue() : PropertyValue(text);
}

class Properties {
  public:
    void add(std::string name, PropertyValue value) { list.emplace_back(std::move(name), std::move(value)); }
    template <class Q>
    void add(const std::string& name, const std::optional<Q>& value, Q unit) {
        add(name, value ? PropertyValue(value->in(unit)) : PropertyValue());
    }
    /// In gallons and cubic metres.
    void add_volume(const std::string& name, const std::optional<units::Volume>& value) {
        add(name + "_gal", value, units::us_gallon);
        add(name + "_m3", value, units::cubic_metre);
    }
    std::vector<Property> list;
};

/// The latest test of the area; tests come oldest first.
const audit::CatchTest* latest_of(const std::vector<audit::CatchTest>& tests, const std::string& area) {
    const audit::CatchTest* latest = nullptr;
    for (const audit::CatchTest& t : tests) {
        if (t.area == area) latest = &t;
    }
    return latest;
}

void add_test(Properties& out, const audit::CatchTest* test, audit::QuarterRule rule, std::vector<std::string>& gaps) {
    std::optional<audit::UniformityResult> figures;
    if (test != nullptr) {
        try {
            figures = audit::analyse_uniformity(*test, rule);
        } catch (const InputError& e) {
            gaps.push_back("Catch test " + test->code + ": " + e.what());
        }
    }
    out.add("catch_test", test ? PropertyValue(test->code) : PropertyValue());
    out.add("catch_test_date", test ? PropertyValue(calendar::format_date(test->date)) : PropertyValue());
    out.add("quarter_rule", test ? PropertyValue(std::string(audit::text_of(rule))) : PropertyValue());
    out.add("du_lq", figures ? PropertyValue(figures->du_lq.value()) : PropertyValue());
    out.add("cu", figures ? PropertyValue(figures->cu.value()) : PropertyValue());
    const auto rate = figures ? figures->net_rate : std::nullopt;
    out.add("net_rate_in_h", rate, units::inch_per_hour);
    out.add("net_rate_mm_h", rate, units::millimetre_per_hour);
}

void add_season(Properties& out, const MapPeriod& period, const budget::SeasonFigures* f) {
    out.add("from_month", calendar::format_month(period.from));
    out.add("to_month", calendar::format_month(period.to));
    out.add("program", period.program);
    out.add("days_counted", f ? PropertyValue(f->days_counted) : PropertyValue());
    out.add_volume("use", f ? f->use : std::nullopt);
    out.add_volume("need", f ? f->need : std::nullopt);
    out.add_volume("budget", f ? f->budget : std::nullopt);
    out.add_volume("over_budget", f ? f->over_budget : std::nullopt);
    for (const budget::WasteLine& line : budget::waste_lines()) {
        std::optional<units::Volume> part;
        if (f && f->account) part = (*f->account).*line.part;
        out.add_volume(std::string(line.key), part);
    }
    out.add("estimated_share", f && f->use ? PropertyValue(f->estimated_share) : PropertyValue());
}

std::optional<budget::SeasonResult> season_of(const store::Book& book, const std::string& site, const ExportOrder& order,
                                              std::vector<std::string>& gaps) {
    if (!order.period) return std::nullopt;
    const MapPeriod& p = *order.period;
    try {
        return budget::season(season_inputs(book, {site, p.from, p.to, p.program, p.rain, order.quarter_rule}));
    } catch (const InputError& e) {
        gaps.push_back("Site " + site + ": no season could be worked out: " + e.what());
        return std::nullopt;
    }
}

const budget::SeasonFigures* figures_of(const std::optional<budget::SeasonResult>& season, const std::string& area) {
    if (!season) return nullptr;
    const auto found = std::find_if(season->areas.begin(), season->areas.end(),
                                    [&](const budget::AreaSeason& a) { return a.area == area; });
    return found == season->areas.end() ? nullptr : &found->total;
}

}  // namespace

void write_area_map(const store::Book& book, const ExportOrder& order, exchange::FeatureFile& file,
                    std::vector<std::string>& gaps) {
    for (const site::Site& site : store::sites(book)) {
        const auto tests = store::catch_tests_of_site(book, site.code);
        const auto season = season_of(book, site.code, order, gaps);
        for (const site::Area& area : store::areas(book, site.code)) {
            const auto stored = store::find_outline(book, area.code);
            const auto outline = exchange::map_outline(stored ? stored->geojson : std::string(),
                                                       stored ? stored->measured : units::Area());
            Properties out;
            out.add("area", area.code);
            out.add("area_name", text_or_nothing(area.name));
            out.add("site", area.site);
            out.add("site_name", site.name);
            out.add("size_ac", area.size.quantity().in(units::acre));
            out.add("size_m2", area.size.quantity().in(units::square_metre));
            out.add("plant", text_or_nothing(area.plant));
            out.add("head_type", text_or_nothing(area.head_type));
            out.add("meter", text_or_nothing(area.meter));
            add_test(out, latest_of(tests, area.code), order.quarter_rule, gaps);
            if (order.period) add_season(out, *order.period, figures_of(season, area.code));
            out.add("no_outline_because", text_or_nothing(outline.why_none));
            file.feature(area.code, outline.geometry, out.list);
        }
    }
}

}  // namespace evenfall::workflow
