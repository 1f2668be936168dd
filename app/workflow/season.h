// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/workflow/site_weather.h"
#include "core/budget/season.h"
#include "core/meter/screens.h"
#include "core/store/book.h"

#include <optional>
#include <string>
#include <vector>

/// A season of one site, from the book to its answer. Tests: tests/app/schedule_test.cpp, tests/app/portfolio_test.cpp
namespace evenfall::workflow {

struct SeasonQuestion {
    std::string site;
    calendar::Month from{};
    calendar::Month to{};
    std::string program;  ///< name of one that comes with Evenfall, or a file ending in .json
    std::string rain;     ///< as weather::parse_rain_rule reads it
    audit::QuarterRule quarter_rule;
};

struct SeasonAnswer {
    budget::SeasonInputs inputs;   ///< what it was made from, to explain it
    budget::SeasonResult result;
    std::vector<meter::MeterFinding> meter_findings;  ///< by meter, then by date
};

/// @throws InputError for a site that is not in the book, a program or rain rule that cannot be
///   read, and as weather_of_site()
budget::SeasonInputs season_inputs(const store::Book& book, const SeasonQuestion& question);
/// The same for one of many sites.
budget::SeasonInputs season_inputs(const store::Book& book, const SeasonQuestion& question,
                                   WeatherAtHand& weather);

/// Draws, seed and confidence of the intervals that answers carry: 90 %, the same every time.
budget::IntervalChoice interval_choice();

/// Loads, screens the meters for leaks, and computes.
SeasonAnswer answer_season(const store::Book& book, const SeasonQuestion& question);

/// Money and energy of a season at the book's rates and pumps; nothing when it has none.
/// @throws InputError for rates that overlap or cannot be
std::optional<budget::SeasonCost> season_cost_of(const store::Book& book,
                                                 const budget::SeasonResult& season);

/// A program by name, or from a file when the text ends in ".json".
/// @throws InputError when there is none, or the file is over 1 MiB or not valid
budget::Program program_named(const std::string& name_or_file);

}  // namespace evenfall::workflow
