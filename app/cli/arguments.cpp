// SPDX-License-Identifier: GPL-3.0-or-later
// The only file that includes CLI11: it is slow to compile.
#include "app/cli/arguments.h"

#include "core/input_error.h"

#include <CLI/CLI.hpp>
#include <functional>
#include <memory>
#include <sstream>
#include <utility>

namespace evenfall::cli {
namespace {

using Result = std::optional<Invocation>;

/// Reads a quantity with its unit into `target`; the unit is part of the text.
template <class Q, class Target>
CLI::Option* add_measure(CLI::App* cmd, const std::string& name, Target& target,
                         const std::string& help) {
    return cmd
        ->add_option_function<std::string>(
            name,
            [&target, name](const std::string& text) {
                try {
                    target = units::parse_measure<Q>(text);
                } catch (const InputError& e) {
                    throw CLI::ValidationError(name, e.what());
                }
            },
            help)
        ->type_name("QUANTITY");
}

template <class Target>
CLI::Option* add_month(CLI::App* cmd, const std::string& name, Target& target,
                       const std::string& help) {
    return cmd
        ->add_option_function<std::string>(
            name,
            [&target, name](const std::string& text) {
                const auto month = calendar::parse_month(text);
                if (!month) throw CLI::ValidationError(name, "expected a month such as 2024-07");
                target = *month;
            },
            help)
        ->type_name("YYYY-MM");
}

/// @param low,high  the bounds, both allowed
template <class Target>
CLI::Option* add_number(CLI::App* cmd, const std::string& name, Target& target, double low,
                        double high, const std::string& help) {
    return cmd
        ->add_option_function<std::string>(
            name,
            [&target, name, low, high](const std::string& text) {
                const auto value = units::parse_number(text);
                if (!value || *value < low || *value > high) {
                    throw CLI::ValidationError(name, "expected a number from " +
                                                         units::format_shortest(low) + " to " +
                                                         units::format_shortest(high));
                }
                target = *value;
            },
            help)
        ->type_name("NUMBER");
}

void add_numbers(CLI::App* cmd, const std::string& name, std::vector<double>& target,
                 const std::string& help) {
    cmd->add_option_function<std::vector<std::string>>(
           name,
           [&target, name](const std::vector<std::string>& texts) {
               for (const std::string& text : texts) {
                   const auto value = units::parse_number(text);
                   if (!value) throw CLI::ValidationError(name, "expected a number");
                   target.push_back(*value);
               }
           },
           help)
        ->type_name("NUMBER ...");
}

/// The option is called minutes, so a bare number is minutes.
void add_minutes(CLI::App* cmd, std::optional<units::Typed<units::Duration>>& target) {
    cmd->add_option_function<std::string>(
           "--minutes",
           [&target](const std::string& text) {
               try {
                   if (const auto bare = units::parse_number(text)) {
                       target = units::Typed<units::Duration>{*bare, units::unit_named<units::Duration>("min")};
                   } else {
                       target = units::parse_measure<units::Duration>(text);
                   }
               } catch (const InputError& e) {
                   throw CLI::ValidationError("--minutes", e.what());
               }
           },
           "Run time of the test, such as 20 or 0.5h")
        ->type_name("MINUTES");
}

void add_book(CLI::App* cmd, std::string& book) {
    cmd->add_option("book", book, "The record book, a file ending in .evenfall")->required();
}

void add_json(CLI::App* cmd, bool& json) {
    cmd->add_flag("--json", json, "Print one JSON object and nothing else");
}

void add_rules(CLI::App* cmd, std::string& program, std::string& rain) {
    cmd->add_option("--program", program,
                    "Budget rules: the name of a program that comes with Evenfall, or a JSON file")
        ->capture_default_str();
    cmd->add_option("--rain", rain, "Effective rain: nrcs, none, share:F (such as share:0.25) or balance")
        ->capture_default_str();
}

CLI::Option* add_quarter_rule(CLI::App* cmd, std::string& rule) {
    return cmd
        ->add_option("--quarter-rule", rule,
                     "Which cans are the low quarter when their number is no multiple of four")
        ->check(CLI::IsMember({"whole-cans", "nearest", "round-up", "part-can"}))
        ->capture_default_str();
}

/// Makes the options of one command; its callback hands the filled record over.
template <class Options>
std::pair<CLI::App*, Options*> add_command(CLI::App& app, Result& result, const std::string& name,
                                           const std::string& help) {
    auto options = std::make_shared<Options>();
    CLI::App* cmd = app.add_subcommand(name, help);
    cmd->callback([options, &result] { result = *options; });
    return {cmd, options.get()};
}

void add_demo(CLI::App& app, Result& result) {
    auto [cmd, o] = add_command<DemoOptions>(
        app, result, "demo", "Invent two organisations, build their book and write every report");
    cmd->add_option("--out", o->out, "Folder to write to; made when missing")->required();
    cmd->add_option("--format", o->formats, "xlsx, pdf, csv, separated by commas")
        ->delimiter(',')->check(CLI::IsMember({"xlsx", "pdf", "csv"}));
    add_json(cmd, o->json);
}

void add_new(CLI::App& app, Result& result) {
    auto [cmd, o] = add_command<NewOptions>(app, result, "new", "Make an empty record book");
    add_book(cmd, o->book);
}

void add_import(CLI::App& app, Result& result) {
    auto [cmd, o] = add_command<ImportOptions>(
        app, result, "import", "Add records from files; all of them or, on any error, none");
    add_book(cmd, o->book);
    cmd->add_option("files", o->files, "Tables to read, in this order")->required();
    cmd->add_option("--as", o->kind, "Kind of table, when its header leaves a doubt");
    cmd->add_option("--map", o->map, "JSON file that names columns, units and date order");
    cmd->add_option("--rejects", o->rejects, "Write refused rows with their reasons to this file");
    cmd->add_flag("--dry-run", o->dry_run, "Say what would happen and change nothing");
    cmd->add_flag("--accept-rest", o->accept_rest, "Store the good rows though some are refused");
    cmd->add_option("--conflicts", o->conflicts,
                    "A stored value that the file contradicts: refuse, keep or replace; both stay in the journal")
        ->check(CLI::IsMember({"refuse", "keep", "replace"}))->capture_default_str();
    cmd->add_option("--by", o->who, "Who does this, for the journal");
    add_json(cmd, o->json);
}

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
    cmd->add_option("--drawing", o->drawing, "Write a drawing to scale to this SVG file");
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

void add_season(CLI::App& app, Result& result) {
    auto [cmd, o] = add_command<SeasonOptions>(
        app, result, "season", "Use, budget and waste of one site, month by month");
    add_book(cmd, o->book);
    cmd->add_option("--site", o->site, "Code of the site")->required();
    cmd->add_option("--area", o->area, "Only this area");
    add_month(cmd, "--from", o->from, "First month")->required();
    add_month(cmd, "--to", o->to, "Last month")->required();
    add_rules(cmd, o->program, o->rain);
    add_quarter_rule(cmd, o->quarter_rule);
    add_json(cmd, o->json);
}

void add_portfolio(CLI::App& app, Result& result) {
    auto [cmd, o] = add_command<PortfolioOptions>(app, result, "portfolio", "Every site of a book, ranked");
    add_book(cmd, o->book);
    add_month(cmd, "--from", o->from, "First month")->required();
    add_month(cmd, "--to", o->to, "Last month")->required();
    add_rules(cmd, o->program, o->rain);
    cmd->add_option("--order", o->order, "What to rank by")
        ->check(CLI::IsMember({"over-budget", "per-acre", "money"}))->capture_default_str();
    add_json(cmd, o->json);
}

void add_schedule(CLI::App& app, Result& result) {
    auto [cmd, o] = add_command<ScheduleOptions>(
        app, result, "schedule", "Base schedule: minutes per station and week, month by month");
    add_book(cmd, o->book);
    cmd->add_option("--site", o->site, "Code of the site")->required();
    add_month(cmd, "--from", o->from, "First month of the weather it is made from")->required();
    add_month(cmd, "--to", o->to, "Last month of it")->required();
    add_rules(cmd, o->program, o->rain);
    cmd->add_option("--year", o->year, "Year it is for; the one after --to when left out")
        ->check(CLI::Range(calendar::first_year, calendar::last_year));
    auto* days = cmd->add_option("--days", o->days,
                                 "Allowed days such as mon,wed,fri, in place of the book's watering rule");
    auto* window = cmd->add_option("--window", o->window, "Water window such as 22:00-06:00");
    days->needs(window);
    window->needs(days);
    cmd->add_option("--at-once", o->at_once, "Stations that run at the same time")
        ->check(CLI::Range(1, 1000))->needs(days)->capture_default_str();
    cmd->add_option("--calendar", o->calendar, "Write a calendar (iCalendar) to this file");
    cmd->add_option("--csv", o->csv, "Write the table to this file");
    add_json(cmd, o->json);
}

void add_report(CLI::App& app, Result& result) {
    auto [cmd, o] = add_command<ReportOptions>(app, result, "report", "Write a report as xlsx, PDF or CSV");
    add_book(cmd, o->book);
    cmd->add_option("kind", o->kind, "Which report")
        ->required()->check(CLI::IsMember({"audit", "season", "portfolio", "plan", "review"}));
    cmd->add_option("--site", o->site, "Code of the site");
    cmd->add_option("--area", o->area, "Only this area");
    cmd->add_option("--test", o->test, "Code of the catch test");
    cmd->add_option("--plan", o->plan, "Code of the plan, or a plan file");
    add_month(cmd, "--from", o->from, "First month");
    add_month(cmd, "--to", o->to, "Last month");
    add_rules(cmd, o->program, o->rain);
    add_quarter_rule(cmd, o->quarter_rule);
    cmd->add_option("--format", o->formats, "xlsx, pdf, csv, separated by commas")
        ->delimiter(',')->check(CLI::IsMember({"xlsx", "pdf", "csv"}));
    cmd->add_option("--paper", o->paper, "Paper of the PDF")
        ->check(CLI::IsMember({"letter", "a4"}))->capture_default_str();
    cmd->add_option("--units", o->system, "Units shown")
        ->check(CLI::IsMember({"us", "metric"}))->capture_default_str();
    cmd->add_option("--signer", o->signer, "Name for the signature block");
    cmd->add_option("--certification", o->certification, "Certification number of the signer");
    cmd->add_option("--certification-expires", o->certification_expires, "As on the certificate");
    cmd->add_option("--out", o->out, "Folder to write to")->capture_default_str();
    add_json(cmd, o->json);
}

void add_check(CLI::App& app, Result& result) {
    auto [cmd, o] = add_command<CheckOptions>(
        app, result, "check", "Look a book over: integrity, gaps, impossible values");
    add_book(cmd, o->book);
    add_json(cmd, o->json);
}

void add_file(CLI::App& app, Result& result) {
    auto [cmd, o] = add_command<FileOptions>(
        app, result, "file", "Freeze a filing in the book and write it as one file that anyone can recompute");
    add_book(cmd, o->book);
    cmd->add_option("--site", o->site, "File a site: its areas, meters, readings, weather and tests");
    cmd->add_option("--test", o->tests, "Code of a catch test; may be given several times");
    cmd->add_option("--code", o->code, "Name of the filing; made of site or test and day when left out");
    cmd->add_option("--request", o->words, "JSON file: applicant, auditor, sector, devices, invoices, claims");
    cmd->add_option("--attach", o->attachments, "photo=FILE, invoice=FILE, report=FILE or other=FILE; may be given several times");
    cmd->add_option("--key", o->key, "The auditor's own Ed25519 private key (PEM), to sign with");
    cmd->add_option("--rain", o->rain, "Effective rain: nrcs, none or share:F")->capture_default_str();
    add_quarter_rule(cmd, o->quarter_rule);
    cmd->add_option("--by", o->who, "Who does this, for the journal");
    cmd->add_option("--out", o->out, "File to write, ending in .zip; must not be there yet")->required();
    add_json(cmd, o->json);
}

void add_review(CLI::App& app, Result& result) {
    auto [cmd, o] = add_command<ReviewOptions>(
        app, result, "review", "Verify filings, work their figures out again and judge them by a program");
    cmd->add_option("filings", o->files, "Filings, or folders of them")->required();
    cmd->add_option("--program", o->program, "Rebate program: a name that comes with Evenfall, or a JSON file");
    cmd->add_option("--book", o->book, "Keep filings and applications in this book; ask about what earlier ones share");
    cmd->add_flag("--together", o->together, "The filings are one case, such as before and after");
    cmd->add_option("--threads", o->threads, "How many filings at a time")->check(CLI::Range(1, 64))->capture_default_str();
    cmd->add_option("--by", o->who, "Who does this, for the journal");
    cmd->add_option("--out", o->out, "Write a memo and a letter for each filing to this folder");
    cmd->add_option("--format", o->formats, "Of the memo: xlsx, pdf, csv, separated by commas")
        ->delimiter(',')->check(CLI::IsMember({"xlsx", "pdf", "csv"}));
    cmd->add_option("--units", o->system, "Units shown")->check(CLI::IsMember({"us", "metric"}))->capture_default_str();
    add_json(cmd, o->json);
}

void add_application(CLI::App& app, Result& result) {
    auto [cmd, o] = add_command<ApplicationOptions>(
        app, result, "application", "Show rebate applications, or change where one stands");
    add_book(cmd, o->book);
    cmd->add_option("application", o->code, "Its number; all of them when left out");
    cmd->add_option("--set", o->status, "New status")
        ->check(CLI::IsMember({"received", "incomplete", "under review", "approved", "declined", "paid"}));
    cmd->add_option_function<double>("--amount", [amount = &o->amount](const double& v) { *amount = v; }, "Money, with approved and paid")
        ->check(CLI::NonNegativeNumber);
    cmd->add_option("--note", o->note, "A sentence for the history");
    cmd->add_option("--by", o->who, "Who does this, for the journal");
    add_json(cmd, o->json);
}

}  // namespace

std::variant<Invocation, Stop> parse_arguments(int argc, const char* const* argv) {
    Result result;
    CLI::App app{"Evenfall: record book and calculator for the water on large turf", "evenfall"};
    app.set_version_flag("--version", "evenfall " EVENFALL_VERSION);
    app.require_subcommand(1);
    app.get_formatter()->column_width(34);
    app.footer(
        "Quantities carry their unit: 16.61in2, 107cm2, 1208.5m, 20min, 2.0in.\n"
        "Exit status: 0 done; 1 the answer is no; 2 bad arguments; 3 bad input, nothing changed;\n"
        "4 the book cannot be used. \"evenfall COMMAND --help\" explains one command.");
    add_demo(app, result);
    add_new(app, result);
    add_import(app, result);
    add_uniformity(app, result);
    add_reference_et(app, result);
    add_effective_rain(app, result);
    add_overlap(app, result);
    add_layout(app, result);
    add_season(app, result);
    add_portfolio(app, result);
    add_schedule(app, result);
    add_report(app, result);
    add_check(app, result);
    add_file(app, result);
    add_review(app, result);
    add_application(app, result);
    try {
        app.parse(argc, argv);
    } catch (const CLI::ParseError& e) {
        std::ostringstream out;
        std::ostringstream err;
        const int status = app.exit(e, out, err);
        return status == 0 ? Stop{0, out.str()} : Stop{2, out.str() + err.str()};
    }
    return *std::move(result);
}

}  // namespace evenfall::cli
