// SPDX-License-Identifier: GPL-3.0-or-later
// Commands that work on files alone: catch tests, weather and design plans.
#include "app/cli/option_parts.h"

namespace evenfall::cli {

void add_uniformity(CLI::App& app, Result& result) {
    auto [cmd, o] = add_command<UniformityOptions>(
        app, result, "uniformity", "Work out one catch test from a table of catches; needs no book");
    cmd->add_option("catches", o->file, "CSV table of catches")->required();
    add_measure<units::Area>(cmd, "--throat-area", o->throat_area, "Opening of a can, such as 16.61in2");
    add_minutes(cmd, o->minutes);
    cmd->add_option("--layout", o->layout, "How the cans stood; told from the columns when left out")
        ->check(CLI::IsMember({"grid", "pivot", "lateral", "traveller", "irregular"}));
    add_measure<units::Length>(cmd, "--lane-spacing", o->lane_spacing, "Traveller: distance between lanes");
    cmd->add_flag("--opposite-pulls", o->opposite_pulls, "Traveller: neighbouring lanes are pulled the other way");
    add_measure<units::Flow>(cmd, "--flow", o->flow, "Traveller: flow of the machine, such as 400gpm");
    add_measure<units::Speed>(cmd, "--travel-speed", o->travel_speed, "Traveller: such as 2ft_min");
    cmd->add_option("--pivot-weights", o->pivot_weights, "Pivot: what a can stands for")
        ->check(CLI::IsMember({"distance", "ring-area"}))->capture_default_str();
    add_number(cmd, "--inner-share-left-out", o->inner_share_left_out, 0.0, 0.99, "Pivot: share of the radius, such as 0.2");
    cmd->add_option("--irregular-weights", o->irregular_weights, "Irregular: what a can stands for")
        ->check(CLI::IsMember({"voronoi", "equal"}))->capture_default_str();
    cmd->add_option("--outline", o->outline, "Irregular: CSV with x and y of the tested ground's corners");
    cmd->add_option("--station-minutes", o->station_minutes,
                    "Several stations: NAME=MINUTES, work the area out for these run times");
    add_measure<units::Speed>(cmd, "--wind", o->wind, "Wind during the test, such as 4mph");
    add_measure<units::Volume>(cmd, "--can-size", o->can_size, "What a can holds when full, such as 500ml");
    add_measure<units::Length>(cmd, "--edge-offset", o->edge_offset, "Outer cans to the zone's edge");
    cmd->add_option("--heads", o->heads, "Kind of head, for the rules and ratings that depend on it")
        ->check(CLI::IsMember({"spray", "rotor", "impact", "solid_set"}));
    cmd->add_option("--pressures", o->pressures, "CSV table of pressures");
    cmd->add_option("--findings", o->findings, "CSV table of what was found on the ground");
    add_numbers(cmd, "--window-share", o->window_shares, "Scheduling coefficient: window as a share of the ground");
    add_number(cmd, "--least-du-lq", o->least_du_lq, 0.0, 1.0, "How sure is a DU_LQ of at least this share?");
    add_measure<units::Depth>(cmd, "--target-depth", o->target_depth, "Adequacy: depth every spot should get");
    add_measure<units::Depth>(cmd, "--mean-depth", o->mean_depth, "Adequacy: depth applied on average; the target when left out");
    add_number(cmd, "--confidence", o->confidence, 0.01, 0.9999, "Two-sided, such as 0.9");
    add_number(cmd, "--resamples", o->resamples, 100, 1e7, "Of the bootstrap; 10000 when left out");
    add_number(cmd, "--seed", o->seed, 0, 9e15, "Of the bootstrap, a whole number");
    add_quarter_rule(cmd, o->quarter_rule);
    cmd->add_option("--test", o->test, "Which test, when the table holds several");
    add_json(cmd, o->json);
}

void add_reference_et(CLI::App& app, Result& result) {
    auto [cmd, o] = add_command<ReferenceEtOptions>(
        app, result, "reference-et", "Reference evapotranspiration from a weather table; needs no book");
    cmd->add_option("weather", o->file, "CSV table of weather")->required();
    add_number(cmd, "--latitude", o->latitude, -90, 90, "Degrees north")->required();
    add_measure<units::Length>(cmd, "--elevation", o->elevation, "Above sea level, such as 1208.5m")->required();
    add_measure<units::Length>(cmd, "--wind-height", o->wind_height, "Of the anemometer; 2 m when left out");
    cmd->add_option("--surface", o->surface, "Reference surface")
        ->check(CLI::IsMember({"short", "tall"}))->capture_default_str();
    cmd->add_option("--equation", o->equation, "Whose constants")
        ->check(CLI::IsMember({"asce-2005", "fao-56"}))->capture_default_str();
    add_number(cmd, "--angstrom-a", o->angstrom_a, 0, 1, "Calibrated radiation coefficient a");
    add_number(cmd, "--angstrom-b", o->angstrom_b, 0, 1, "Calibrated radiation coefficient b");
    add_number(cmd, "--albedo", o->albedo, 0, 0.99, "Of the surface; 0.23 when left out");
    cmd->add_option("--siting", o->siting, "Where radiation is missing: interior or coast")
        ->check(CLI::IsMember({"interior", "coast"}));
    add_number(cmd, "--dew-point-offset", o->dew_point_offset, 0, 10,
               "Where humidity is missing: dew point this many C below the minimum; 2 to 3 in arid places");
    cmd->add_flag("--ignore-recorded", o->ignore_recorded, "Compute even where the table gives ETo");
    add_number(cmd, "--longitude", o->longitude, -180, 180, "Hourly tables: degrees east");
    add_number(cmd, "--utc-offset", o->utc_offset, -12, 14,
               "Hourly tables whose times have no offset: hours east of UTC of their standard time");
    add_number(cmd, "--night-clearness", o->night_clearness, 0.3, 1,
               "Hourly tables: share of clear sky before the first bright hour; 0.75 when left out");
    cmd->add_option("--hour-mark", o->hour_mark, "Hourly tables: what a time marks")
        ->check(CLI::IsMember({"start", "end"}))->capture_default_str();
    add_json(cmd, o->json);
}

void add_effective_rain(CLI::App& app, Result& result) {
    auto [cmd, o] = add_command<EffectiveRainOptions>(
        app, result, "effective-rain", "Rain of a month that the roots can use, NRCS monthly form");
    add_measure<units::Depth>(cmd, "--rain", o->rain, "Rain of the month, such as 2.0in")->required();
    add_measure<units::Depth>(cmd, "--crop-et", o->crop_et, "Crop evapotranspiration of the month")->required();
    add_measure<units::Depth>(cmd, "--depletion", o->depletion, "Usable soil water storage; 3 in when left out");
    add_json(cmd, o->json);
}

void add_overlap(CLI::App& app, Result& result) {
    auto [cmd, o] = add_command<OverlapOptions>(
        app, result, "overlap", "Predict how evenly a design plan applies water");
    cmd->add_option("plan", o->file, "Plan file, JSON")->required();
    add_measure<units::Length>(cmd, "--cell", o->cell, "Size of a cell, such as 0.1m; chosen when left out");
    add_number(cmd, "--wind-toward", o->wind_toward, -360.0, 360.0,
               "Wind, approximate: degrees clockwise from north it blows to");
    add_number(cmd, "--wind-shift", o->wind_shift, 0.0, 1.0,
               "How far patterns move, as a share of their radius");
    add_number(cmd, "--wind-stretch", o->wind_stretch, 1.0, 2.0,
               "Factor by which patterns are drawn out along the wind");
    cmd->add_option("--catches", o->catches, "Hold the plan against this catch test, CSV; positions in the plan's frame");
    cmd->add_option("--test", o->test, "Which test, when the table holds several");
    auto* compare = cmd->add_option("--compare", o->compare, "What changing to this plan file is worth");
    auto* need = add_measure<units::Depth>(cmd, "--season-need", o->season_need, "Need of the turf in a season, such as 24in");
    compare->needs(need);
    auto* price = add_number(cmd, "--price", o->price, 0, 1e9, "Water and pumping, per --price-per");
    price->needs(add_measure<units::Volume>(cmd, "--price-per", o->price_per, "Volume the price is for, such as 1kgal"));
    add_number(cmd, "--cost", o->cost, 0, 1e12, "What the change costs");
    cmd->add_option("--drawing", o->drawing, "Write a drawing to scale to this file, .svg or .pdf");
    auto* book = cmd->add_option("--keep-in", o->book, "Keep the plan in this record book");
    book->needs(cmd->add_option("--site", o->site, "Code of the site it belongs to"));
    book->needs(cmd->add_option("--code", o->code, "Code of the plan in the book"));
    cmd->add_option("--by", o->who, "Who does this, for the journal");
    cmd->add_option("--view", o->view, "What the drawing shows")
        ->check(CLI::IsMember({"layout", "rate", "islands", "difference"}))->capture_default_str();
    cmd->add_option("--units", o->system, "Units of the drawing")
        ->check(CLI::IsMember({"us", "metric"}))->capture_default_str();
    add_json(cmd, o->json);
}

void add_layout(CLI::App& app, Result& result) {
    auto [cmd, o] = add_command<LayoutOptions>(app, result, "layout",
                                               "Fit heads to an outline from the outside in: a first draft to check");
    cmd->add_option("outline", o->outline, "Plan file, JSON; its outline and units count, its heads do not")->required();
    cmd->add_option("--pattern", o->pattern, "How heads stand to each other")
        ->check(CLI::IsMember({"square", "rectangular", "equilateral"}))->capture_default_str();
    add_measure<units::Length>(cmd, "--smallest-radius", o->smallest_radius, "Of throw, such as 20ft")->required();
    add_measure<units::Length>(cmd, "--largest-radius", o->largest_radius, "Of throw, such as 30ft")->required();
    add_measure<units::Rate>(cmd, "--rate", o->rate, "Design rate of application, such as 0.5in_h")->required();
    add_measure<units::Speed>(cmd, "--wind", o->wind, "Usual wind, which sets the widest spacing; 5mph when left out");
    add_measure<units::Flow>(cmd, "--station-flow", o->station_flow, "Most flow of a station; all on one when left out");
    cmd->add_option("--out", o->out, "Plan file to write")->required();
    add_json(cmd, o->json);
}

}  // namespace evenfall::cli
