// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/command.h"
#include "app/cli/json_number.h"
#include "core/units/number.h"
#include "core/weather/effective_rain.h"

#include <ostream>

namespace evenfall::cli {

int run(const EffectiveRainOptions& options, Streams& streams) {
    using units::inch;
    using units::millimetre;
    const units::Depth rain = options.rain.quantity();
    const units::Depth crop_et = options.crop_et.quantity();
    const units::Depth storage = options.depletion ? options.depletion->quantity() : 3.0 * inch;
    const units::Depth effective = weather::effective_rain_nrcs(rain, crop_et, storage);
    const weather::RainRule rule{weather::RainRule::Kind::nrcs_monthly, {}, storage};
    const double factor = weather::storage_factor(storage);

    if (options.json) {
        const Json answer{{"effective_rain_in", effective.in(inch)},
                          {"effective_rain_mm", effective.in(millimetre)},
                          {"rain_mm", rain.in(millimetre)},
                          {"crop_et_mm", crop_et.in(millimetre)},
                          {"storage_in", storage.in(inch)},
                          {"storage_factor", factor},
                          {"storage_assumed", !options.depletion.has_value()},
                          {"method", rule.name().english()},
                          {"source", rule.source().english()}};
        streams.out << print(answer);
        return done;
    }
    const auto line = [&](const char* name, units::Depth depth) {
        streams.out << name << units::format_fixed(depth.in(inch), 2) << " in ("
                    << units::format_fixed(depth.in(millimetre), 1) << " mm)\n";
    };
    line("Effective rain  ", effective);
    line("of rain         ", rain);
    line("with crop ET    ", crop_et);
    streams.out << "Storage factor  " << units::format_fixed(factor, 3) << '\n'
                << "Method: " << rule.name() << (options.depletion ? "" : " (the usual one, not given)")
                << ".\nSource: " << rule.source() << ".\n";
    return done;
}

}  // namespace evenfall::cli
