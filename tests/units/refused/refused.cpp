// SPDX-License-Identifier: GPL-3.0-or-later
// Each CASE but 0 holds one mix-up that the types must refuse; CASE 0 is the control that the
// same headers and the right calls do compile. Built by the tests named "refused", never linked.
#include "core/units/quantity.h"
#include "core/units/ratio.h"
#include "core/units/temperature.h"

using namespace evenfall::units;

void attempt() {
    const Depth depth = 10.0 * millimetre;
    const Area area = 2.0 * acre;
#if CASE == 0
    const Volume right = depth * area;
    static_cast<void>(right);
#elif CASE == 1
    static_cast<void>(depth + area);  // a depth and an area
#elif CASE == 2
    const Depth wrong = 3.0 * metre;  // a distance is not a depth of water
    static_cast<void>(wrong);
#elif CASE == 3
    const Efficiency wrong = LowQuarterDu::of(0.7);  // a uniformity is not an efficiency
    static_cast<void>(wrong);
#elif CASE == 4
    const Depth wrong = 10.0;  // a bare number has no unit
    static_cast<void>(wrong);
#elif CASE == 5
    const double wrong = depth;  // a quantity does not leave without a unit
    static_cast<void>(wrong);
#elif CASE == 6
    static_cast<void>(depth.in(inch_per_hour));  // a depth in a unit of rate
#elif CASE == 7
    const Efficiency wrong{0.75};  // a bare number is not an efficiency
    static_cast<void>(wrong);
#elif CASE == 8
    const Temperature wrong = 20.0;  // a temperature needs its scale
    static_cast<void>(wrong);
#endif
}
