// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/ratio.h"

#include "core/input_error.h"
#include "core/units/number.h"

#include <cmath>

namespace evenfall::units {

double checked_ratio(double value, double low, double high, Phrase name) {
    if (!std::isfinite(value) || value < low || value > high) {
        if (high < 1e300) {
            throw InputError(format_shortest(value), {phrase("units", "a finite value for %1 from %2 to %3"), name,
                                                      format_shortest(low), format_shortest(high)});
        }
        throw InputError(format_shortest(value), {phrase("units", "a finite value for %1"), name});
    }
    return value;
}

}  // namespace evenfall::units
