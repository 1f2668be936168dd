// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/content/report.h"

namespace evenfall::reports {

Caution usual_caution() {
    return {
        "Read this first",
        {
            "The figures in this report support judgement. They do not replace local codes, "
            "watering restrictions, permits, the instructions of manufacturers or the work of "
            "licensed people. Where a rule that binds the site and this report differ, the rule "
            "decides.",
            "Backflow and cross-connection: an irrigation system can draw chemicals, fertiliser "
            "and soil into drinking water. Do not remove, bypass or isolate a backflow "
            "preventer. Have it tested by a certified tester as the water supplier requires.",
            "Reclaimed water: keep it apart from drinking water, keep its signs and colours in "
            "place, keep it off people, food and drinking fountains, and wash after contact. "
            "Hours and setbacks are set by the permit.",
            "Pressure: lines, filters and tanks hold energy after the pump has stopped. Relieve "
            "the pressure before a fitting, a sprinkler or a gauge is opened. Fill long lines "
            "slowly; a line that closes fast can burst from surge.",
            "Electricity: pumps, pivots and controllers can kill. Lock out and tag out before "
            "opening a panel. Keep aluminium pipe and tall ladders away from overhead wires.",
            "Buried lines: gas, power, telephone and sewer cross most sites. Have lines located "
            "by the local notification service before digging, probing or driving stakes.",
            "Machinery: pivots, hose reels and pumps start without warning. Stand clear of drive "
            "trains, hose under tension and turning shafts. Do not work alone.",
            "Traffic and overspray: water on a road, a path or an airfield makes it slippery and "
            "dazzles drivers. Stop a test that throws water there, mark the work area, and look "
            "out for vehicles and for people using the turf.",
            "Heat, lightning, slopes and wet turf hurt more people than any fitting. End the test "
            "when the weather turns.",
        },
    };
}

}  // namespace evenfall::reports
