// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/date.h"
#include "core/units/measure.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

/// What was asked for on the command line, one record per command. Filled by arguments.cpp and
/// arguments_without_book.cpp, which alone know how options are spelled; carried out by
/// <command>_command.cpp.
namespace evenfall::cli {

struct DemoOptions {
    std::string out;
    std::vector<std::string> formats{"xlsx", "pdf", "csv"};
    bool json = false;
};

struct NewOptions {
    std::string book;
};

struct ImportOptions {
    std::string book;
    std::vector<std::string> files;
    std::string kind;     ///< empty: told from the header
    std::string map;      ///< file of a column map; empty: none
    std::string rejects;  ///< file to write refused rows to; empty: none
    bool dry_run = false;
    bool accept_rest = false;  ///< store the good rows though some were refused
    std::string conflicts = "refuse";  ///< refuse, keep (what is stored) or replace (by the file)
    std::string choices;         ///< filled-in table of conflicts; empty: none
    std::string list_conflicts;  ///< file to write all conflicts to; empty: none
    std::string who;
    bool json = false;
};

struct UniformityOptions {
    std::string file;
    std::optional<units::Typed<units::Area>> throat_area;
    std::optional<units::Typed<units::Duration>> minutes;
    std::string layout;  ///< empty: told from the columns
    std::optional<units::Typed<units::Length>> lane_spacing;
    bool opposite_pulls = false;
    std::string quarter_rule = "whole-cans";
    std::string test;  ///< which test, when the file holds several
    std::string pivot_weights = "distance";      ///< distance or ring-area
    double inner_share_left_out = 0.0;           ///< pivot: of the radius
    std::string irregular_weights = "voronoi";   ///< voronoi or equal
    std::string outline;                         ///< CSV of x, y: corners of the tested ground
    std::optional<units::Typed<units::Speed>> wind;
    std::optional<units::Typed<units::Volume>> can_size;
    std::optional<units::Typed<units::Length>> edge_offset;
    std::optional<units::Typed<units::Flow>> flow;         ///< traveller
    std::optional<units::Typed<units::Speed>> travel_speed;
    std::string heads;                           ///< spray, rotor, impact or solid_set
    std::vector<std::string> station_minutes;    ///< NAME=MINUTES: work the test out for these
    std::vector<double> window_shares;           ///< empty: the usual ones
    std::optional<double> least_du_lq;           ///< threshold to weigh, percent or share
    std::optional<units::Typed<units::Depth>> target_depth;
    std::optional<units::Typed<units::Depth>> mean_depth;
    std::string pressures;                       ///< CSV table
    std::string findings;                        ///< CSV table
    double confidence = 0.90;
    double resamples = 10000;
    std::optional<double> seed;
    bool json = false;
};

struct ReferenceEtOptions {
    std::string file;
    double latitude = 0.0;
    units::Typed<units::Length> elevation;
    std::optional<units::Typed<units::Length>> wind_height;
    std::string surface = "short";
    std::string equation = "asce-2005";  ///< or fao-56
    std::optional<double> angstrom_a;
    std::optional<double> angstrom_b;
    std::optional<double> albedo;
    std::string siting;                ///< interior or coast; empty: not known
    double dew_point_offset = 0.0;     ///< C below the minimum, where humidity is missing
    bool ignore_recorded = false;
    std::optional<double> longitude;   ///< degrees east; hourly tables
    std::optional<double> utc_offset;  ///< hours east of UTC; hourly tables without offsets
    std::optional<double> night_clearness;  ///< Rs/Rso before the first bright hour
    std::string hour_mark = "start";   ///< what a time marks: start or end of its period
    bool json = false;
};

struct EffectiveRainOptions {
    units::Typed<units::Depth> rain;
    units::Typed<units::Depth> crop_et;
    std::optional<units::Typed<units::Depth>> depletion;
    bool json = false;
};

struct OverlapOptions {
    std::string file;
    std::optional<units::Typed<units::Length>> cell;  ///< empty: chosen from the smallest radius
    std::optional<double> wind_toward;   ///< degrees clockwise from north
    std::optional<double> wind_shift;    ///< share of the radius
    std::optional<double> wind_stretch;  ///< factor along the wind
    std::string catches;                 ///< CSV of a catch test on the same ground; empty: none
    std::string test;                    ///< which test, when that table holds several
    std::string compare;                 ///< another plan file; empty: none
    std::optional<units::Typed<units::Depth>> season_need;
    std::optional<double> price;         ///< of `price_per`
    std::optional<units::Typed<units::Volume>> price_per;
    std::optional<double> cost;          ///< of the change
    std::string drawing;                 ///< SVG file to write; empty: none
    std::string view = "layout";
    std::string system = "us";
    std::string book;                    ///< to keep the plan in; empty: keep it nowhere
    std::string site;
    std::string code;
    std::string who;
    bool json = false;
};

struct LayoutOptions {
    std::string outline;  ///< plan file whose outline counts
    std::string pattern = "square";
    std::optional<units::Typed<units::Length>> smallest_radius;
    std::optional<units::Typed<units::Length>> largest_radius;
    std::optional<units::Typed<units::Rate>> rate;
    units::Typed<units::Speed> wind = units::parse_measure<units::Speed>("5mph");
    std::optional<units::Typed<units::Flow>> station_flow;
    std::string out;      ///< plan file to write
    bool json = false;
};

struct SeasonOptions {
    std::string book;
    std::string site;
    std::string area;  ///< empty: the whole site
    calendar::Month from{};
    calendar::Month to{};
    std::string program = "general";
    std::string rain = "nrcs";  ///< nrcs, none, share:F or balance
    std::string quarter_rule = "whole-cans";
    bool json = false;
};

struct PortfolioOptions {
    std::string book;
    calendar::Month from{};
    calendar::Month to{};
    std::string program = "general";
    std::string rain = "nrcs";
    std::string order = "over-budget";
    bool json = false;
};

struct ScheduleOptions {
    std::string book;
    std::string site;
    calendar::Month from{};
    calendar::Month to{};
    std::string program = "general";
    std::string rain = "nrcs";
    std::optional<int> year;  ///< empty: the year after the last month
    std::string days;         ///< "mon,wed,fri"; empty with `window`: the book's watering rule
    std::string window;       ///< "22:00-06:00"
    int at_once = 1;
    std::string calendar;     ///< file to write; empty: none
    std::string csv;          ///< file to write; empty: none
    bool json = false;
};

struct ReportOptions {
    std::string book;
    std::string kind;  ///< audit, season, portfolio, plan or review
    std::string site;
    std::string area;
    std::string test;
    std::string plan;
    std::string application;  ///< review: of this application's filings
    std::string filing;       ///< review: of this filing, by its code or SHA-256
    std::optional<calendar::Month> from;
    std::optional<calendar::Month> to;
    std::string program = "general";
    std::string rain = "nrcs";
    std::string quarter_rule = "whole-cans";
    std::vector<std::string> formats{"xlsx", "pdf"};
    std::string paper = "letter";
    std::string system = "us";  ///< us or metric
    std::string out = ".";
    bool json = false;
    // For the signature block, as typed; empty leaves lines to write on.
    std::string signer;
    std::string certification;
    std::string certification_expires;
};

struct ExportOptions {
    std::string book;
    std::string out;  ///< folder to make
    bool areas_geojson = false;
    std::optional<calendar::Month> from;
    std::optional<calendar::Month> to;
    std::string program = "general";
    std::string rain = "nrcs";
    std::string quarter_rule = "whole-cans";
    bool json = false;
};

struct CheckOptions {
    std::string book;
    bool json = false;
};

struct FileOptions {
    std::string book;
    std::string site;
    std::vector<std::string> tests;
    std::string code;
    std::string words;  ///< JSON: who sends it and what is asked for
    std::vector<std::string> attachments;  ///< KIND=FILE
    std::string key;
    std::string quarter_rule = "whole-cans";
    std::string rain = "nrcs";
    std::string who;
    std::string out;
    bool json = false;
};

struct ReviewOptions {
    std::vector<std::string> files;
    std::string program;  ///< empty: figures only
    std::string book;     ///< empty: none
    bool together = false;
    unsigned threads = 2;
    std::string who;
    std::string out;      ///< folder for memos and letters; empty: none
    std::vector<std::string> formats{"xlsx", "pdf"};
    std::string system = "us";
    bool json = false;
};

struct ApplicationOptions {
    std::string book;
    std::string code;
    std::string status;  ///< empty: only show
    std::optional<double> amount;
    bool open = false;   ///< a new one, by hand
    std::string applicant;
    std::string site;
    std::string program;                 ///< name or file
    std::optional<calendar::Date> received;  ///< empty: today
    std::vector<std::string> filings;    ///< to put into it, by code or SHA-256
    std::vector<std::string> take_out;
    std::string note;
    std::string who;
    bool json = false;
};

using Invocation =
    std::variant<DemoOptions, NewOptions, ImportOptions, UniformityOptions, ReferenceEtOptions,
                 EffectiveRainOptions, OverlapOptions, LayoutOptions, SeasonOptions, PortfolioOptions,
                 ScheduleOptions, ReportOptions, CheckOptions, FileOptions, ReviewOptions,
                 ApplicationOptions, ExportOptions>;

}  // namespace evenfall::cli
