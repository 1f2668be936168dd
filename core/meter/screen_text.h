// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/meter/screens.h"
#include "core/sentence.h"

#include <string>
#include <string_view>
#include <vector>

/// Shared by the screens: limits, medians and how a finding is worded. Tests: screens_test.cpp
namespace evenfall::meter {

/// A limit by its name in schemas/reference/meter_screens.csv.
double screen_limit(std::string_view name);

/// A finding that carries the limit's value and source.
MeterFinding make_finding(FindingKind kind, const std::string& meter, calendar::Date from, calendar::Date to,
                          std::optional<units::Volume> volume, Sentence sentence, Confidence confidence,
                          std::string_view limit);

/// "12,300 gal (46.6 m3)"
std::string volume_text(units::Volume volume);
/// "4.2 gpm (0.95 m3/h)"
std::string flow_text(units::Flow flow);
/// "on 2024-06-03" or "from 2024-06-03 to 2024-06-19"
Sentence days_text(calendar::Date from, calendar::Date to);

/// Middle value; the mean of the two middle ones for an even count. Zero for none.
double median(std::vector<double> values);

/// A value that `share` (0 to 1) of the values do not exceed, by nearest rank. Zero for none.
double percentile(std::vector<double> values, double share);

}  // namespace evenfall::meter
