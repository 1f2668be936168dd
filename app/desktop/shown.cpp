// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/shown.h"

#include "core/units/number.h"

#include <QCoreApplication>

namespace evenfall::desktop {
namespace {

struct Choice {
    const char* us;
    double us_per_si;
    int us_decimals;
    const char* metric;
    double metric_per_si;
    int metric_decimals;
};

QString with_unit(double si, UnitsShown units, const Choice& c) {
    const bool us = units == UnitsShown::us;
    return shown_number(si / (us ? c.us_per_si : c.metric_per_si), us ? c.us_decimals : c.metric_decimals) +
           QChar(0xA0) + QString::fromUtf8(us ? c.us : c.metric);
}

UnitChoice choice(UnitsShown units, const Choice& c) {
    return units == UnitsShown::us ? UnitChoice{QString::fromUtf8(c.us), c.us_per_si}
                                   : UnitChoice{QString::fromUtf8(c.metric), c.metric_per_si};
}

using namespace units;
constexpr Choice volume{"gal", us_gallon.si(), 0, "m³", 1.0, 1};
constexpr Choice ground{"ac", acre.si(), 2, "ha", hectare.si(), 2};
constexpr Choice depth{"in", inch.si(), 2, "mm", millimetre.si(), 1};
constexpr Choice rate{"in/h", inch_per_hour.si(), 2, "mm/h", millimetre_per_hour.si(), 1};
constexpr Choice length{"ft", foot.si(), 1, "m", 1.0, 2};
constexpr Choice flow{"gpm", gallon_per_minute.si(), 1, "L/min", litre_per_minute.si(), 1};
constexpr Choice pressure{"psi", psi.si(), 1, "kPa", kilopascal.si(), 0};
constexpr Choice speed{"mph", mile_per_hour.si(), 1, "m/s", 1.0, 1};

}  // namespace

UnitChoice volume_unit(UnitsShown u) { return choice(u, volume); }
UnitChoice area_unit(UnitsShown u) { return choice(u, ground); }
UnitChoice depth_unit(UnitsShown u) { return choice(u, depth); }
UnitChoice rate_unit(UnitsShown u) { return choice(u, rate); }
UnitChoice length_unit(UnitsShown u) { return choice(u, length); }
UnitChoice flow_unit(UnitsShown u) { return choice(u, flow); }
UnitChoice pressure_unit(UnitsShown u) { return choice(u, pressure); }
UnitChoice speed_unit(UnitsShown u) { return choice(u, speed); }

QString shown(Volume v, UnitsShown u) { return with_unit(v.si(), u, volume); }
QString shown(Area a, UnitsShown u) { return with_unit(a.si(), u, ground); }
QString shown(Depth d, UnitsShown u) { return with_unit(d.si(), u, depth); }
QString shown(Rate r, UnitsShown u) { return with_unit(r.si(), u, rate); }
QString shown(Length l, UnitsShown u) { return with_unit(l.si(), u, length); }
QString shown(Flow f, UnitsShown u) { return with_unit(f.si(), u, flow); }
QString shown(Pressure p, UnitsShown u) { return with_unit(p.si(), u, pressure); }
QString shown(Speed s, UnitsShown u) { return with_unit(s.si(), u, speed); }

QString shown_percent(double share, int decimals) {
    return shown_number(share * 100.0, decimals) + QChar(0xA0) + QLatin1Char('%');
}

QString shown_number(double value, int decimals) { return q(units::format_grouped(value, decimals)); }

QString not_recorded() { return QCoreApplication::translate("Shown", "not recorded"); }

}  // namespace evenfall::desktop
