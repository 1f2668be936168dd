// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/date.h"
#include "core/units/measure.h"

#include <chrono>
#include <optional>
#include <string>
#include <vector>

/// A meter and what was read from it. Values stay in the register's own unit, as read.
namespace evenfall::meter {

/// A register taken out and another put in its place, with what both showed at that moment.
/// A field that is empty stays as it was.
struct Exchange {
    calendar::Instant at;
    double final_value = 0.0;  ///< of the old register
    double first_value = 0.0;  ///< of the new one
    std::optional<units::NamedUnit<units::Volume>> unit{};  ///< of the new register
    std::optional<double> multiplier{};
    std::optional<int> digits{};
};

struct Meter {
    std::string code;
    std::string site;
    units::NamedUnit<units::Volume> unit;  ///< of one count of the register
    double multiplier = 1.0;               ///< volume = register difference x multiplier x unit
    std::optional<int> digits;             ///< of the register, for rollover
    std::string parent;                    ///< code of the meter upstream, if any
    std::optional<calendar::Date> installed;
    std::optional<calendar::Date> removed;
    std::string replaces;                  ///< code of the meter that stood here before, if any;
                                           ///< an area names either, and gets the use of both
    std::vector<Exchange> exchanges{};     ///< in order of time
    /// Where there is no meter but an hour counter on a pump: the register counts hours, and the
    /// volume is hours x this flow. `unit` is then without meaning.
    std::optional<units::Typed<units::Flow>> rated_flow{};
    std::optional<units::Typed<units::Length>> size{};  ///< nominal size of the meter's bore
};

enum class ReadingKind : int { measured = 1, estimated = 2, corrected = 3 };  ///< stored: frozen

/// Either a register value at an instant (span zero) or the volume that passed in the
/// `span` that ends at `at`.
struct Reading {
    calendar::Instant at;
    std::chrono::seconds span{0};
    double value = 0.0;  ///< register counts, in the meter's unit, before the multiplier
    ReadingKind kind = ReadingKind::measured;
    bool operator==(const Reading&) const = default;
};

}  // namespace evenfall::meter
