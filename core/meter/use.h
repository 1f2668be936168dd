// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/date.h"
#include "core/calendar/time_zone.h"
#include "core/meter/meter.h"
#include "core/sentence.h"
#include "core/units/quantity.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

/// From readings to volumes by day, month or billing period.
///
///     V = (r2 - r1) m u          register values r1, r2; multiplier m; unit u of one count
///     V = (r2 - r1 + 10^d) m u   when a register of d digits went past its last number
///     V = v m u                  for a volume v that was logged for an interval
///     V = (h2 - h1) m q          for the hour counter of a pump of rated flow q
///
/// Between two readings the water is taken to flow evenly in elapsed time ("linear between
/// readings"), or in proportion to a weight per day such as reference ET, so the total is always
/// conserved. Days and months are those of the site's own clock: a day may have 23 or 25 hours.
///
/// A register that shows less than before: with a known number of digits it went on past its last
/// number, unless going back is a small part of its range (`backward_share` in
/// schemas/reference/meter_screens.csv): then water ran back, a negative volume. With no digits
/// known the fall explains nothing, so the interval is left without a volume and is reported as
/// a problem, never guessed.
///
/// Source: rollover and proration as in the reference notes "Meters, bills, leaks" (derived);
/// units NIST SP 811. Tests: tests/meter/use_test.cpp
namespace evenfall::meter {

inline constexpr Phrase method_linear = phrase("meter", "linear between readings");
inline constexpr Phrase method_weighted = phrase("meter", "by daily weight between readings");

/// The water that passed between two moments.
struct VolumeInterval {
    calendar::Instant from;
    calendar::Instant to;
    units::Volume volume;
    bool estimated = false;  ///< a reading at one of its ends, or the logged volume, is an estimate
    bool operator==(const VolumeInterval&) const = default;
};

enum class ProblemKind {
    register_fell,  ///< lower than before and the number of digits is not known
    ran_backward,   ///< counted as a negative volume
    overlap         ///< two logged volumes for the same time; the later one was cut
};

struct RecordProblem {
    ProblemKind kind;
    calendar::Instant from;
    calendar::Instant to;
    units::Volume volume;  ///< ran_backward: below zero; overlap: what was left out
};

/// A meter's readings as intervals in order of time that do not overlap.
/// Logged volumes are kept whole; register differences fill the time between them.
struct MeterRecord {
    std::vector<VolumeInterval> intervals;
    std::vector<RecordProblem> problems;
};

/// Volume of one count of the register that was in place at `at`.
units::Volume volume_per_count(const Meter& meter, calendar::Instant at);

/// Counts from `first` to `second`, by the rollover rule above when `digits` is known.
/// Nothing when the register fell and `digits` is not known.
std::optional<double> register_difference(double first, double second, std::optional<int> digits);

/// @param readings  latest revisions only, sorted by `at`
MeterRecord meter_record(const Meter& meter, std::span<const Reading> readings);

/// What fell into one period.
struct PeriodUse {
    std::optional<units::Volume> volume;  ///< nothing when no interval touches the period
    /// Share of the volume that was not read as such: from estimated readings, or allotted
    /// because the readings around it lie outside the period. 0 to 1.
    double estimated_share = 0.0;
    double from_estimates = 0.0;   ///< the part of it that comes from estimated readings
    double covered_share = 0.0;    ///< of the period's time
};

/// Sums over consecutive periods; period i runs from edges[i] to edges[i + 1].
std::vector<PeriodUse> use_between(std::span<const VolumeInterval> intervals,
                                   std::span<const calendar::Instant> edges);

struct DayUse {
    calendar::Date date;
    std::optional<units::Volume> volume;
    bool estimated = false;  ///< some of it was not read as such; see estimated_share
    double estimated_share = 0.0;
    double covered_share = 0.0;
};

struct MonthUse {
    calendar::Month month;
    std::optional<units::Volume> volume;  ///< of the covered days; nothing when there are none
    double estimated_share = 0.0;         ///< as in PeriodUse
    int days_covered = 0;                 ///< to the nearest whole day
    double from_estimates = 0.0;
};

/// Both ends included.
std::vector<DayUse> daily_use(const Meter& meter, std::span<const Reading> readings,
                              const calendar::TimeZone& zone, calendar::Date from,
                              calendar::Date to);
std::vector<MonthUse> monthly_use(const Meter& meter, std::span<const Reading> readings,
                                  const calendar::TimeZone& zone, calendar::Month from,
                                  calendar::Month to);

/// A weight for each day from `first` on, such as reference ET. Never negative.
struct DayWeights {
    calendar::Date first;
    std::vector<double> weights;
};

/// The same intervals cut at each midnight, the volume of each shared out by weight x hours.
/// An interval that reaches outside the weights, or whose weights are all zero, is shared out
/// evenly. Pieces of a cut interval are marked as estimated, since their volumes were not read.
std::vector<VolumeInterval> spread_by_weight(std::span<const VolumeInterval> intervals,
                                             const DayWeights& weights,
                                             const calendar::TimeZone& zone);

/// Monthly sums of intervals that are at hand already.
std::vector<MonthUse> monthly_use(std::span<const VolumeInterval> intervals,
                                  const calendar::TimeZone& zone, calendar::Month from,
                                  calendar::Month to);
std::vector<DayUse> daily_use(std::span<const VolumeInterval> intervals,
                              const calendar::TimeZone& zone, calendar::Date from,
                              calendar::Date to);

/// The meters that stood at one place after one another (`Meter::replaces`), oldest first, as
/// indexes into `meters`, whichever of them `code` names; empty when the code is unknown.
std::vector<std::size_t> meters_in_turn(std::span<const Meter> meters, std::string_view code);

/// The records of meters that stood at one place after one another as one: in order of time, and
/// where two overlap the later one is cut.
std::vector<VolumeInterval> records_in_turn(std::span<const MeterRecord> records);

/// A master meter against the meters below it, month by month.
struct MonthUnaccounted {
    calendar::Month month;
    std::optional<units::Volume> master;
    std::optional<units::Volume> submeters;    ///< nothing when a submeter has no reading
    std::optional<units::Volume> unaccounted;  ///< master - submeters; below zero is a finding
};

/// @param submeters  one row per submeter, months as in `master`
std::vector<MonthUnaccounted> unaccounted(std::span<const MonthUse> master,
                                          std::span<const std::vector<MonthUse>> submeters);

}  // namespace evenfall::meter
