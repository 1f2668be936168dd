// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/ratio.h"

#include "core/input_error.h"
#include "core/units/number.h"

#include <cmath>
#include <string>

namespace evenfall::units {

double checked_ratio(double value, double low, double high, const char* name) {
    if (!std::isfinite(value) || value < low || value > high) {
        std::string expected = std::string("a finite value for ") + name;
        if (high < 1e300) {
            expected += " from " + format_shortest(low) + " to " + format_shortest(high);
        }
        throw InputError(format_shortest(value), expected);
    }
    return value;
}

}  // namespace evenfall::units
