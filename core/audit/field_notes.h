// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/measure.h"

#include <cstddef>
#include <optional>
#include <string>

/// What the auditor writes down beside the catches.
namespace evenfall::audit {

/// A pressure read during the test.
struct PressureReading {
    std::string place;               ///< "head A3", "end of the lateral", free text
    units::Typed<units::Pressure> pressure;
    std::optional<units::Typed<units::Pressure>> nozzle_low;   ///< range its maker gives
    std::optional<units::Typed<units::Pressure>> nozzle_high;
    std::size_t row = 0;             ///< of the file it came from; 0 when not from a file
};

enum class Severity : int { minor = 1, moderate = 2, severe = 3 };  ///< stored: frozen

/// Something seen in the field. `kind` is a key of schemas/reference/findings.csv.
struct Finding {
    std::string kind;
    std::string place;
    int count = 1;
    Severity severity = Severity::moderate;
    std::string note;
    bool corrected = false;          ///< put right before the test
    std::size_t row = 0;
};

}  // namespace evenfall::audit
