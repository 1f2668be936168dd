// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/finding_words.h"

#include <QCoreApplication>
#include <algorithm>

namespace evenfall::desktop {
namespace {

struct FindingWords {
    Q_DECLARE_TR_FUNCTIONS(FindingWords)
};

}  // namespace

void sort_by_urgency(std::vector<meter::MeterFinding>& findings) {
    std::stable_sort(findings.begin(), findings.end(), [](const auto& a, const auto& b) {
        if (a.confidence != b.confidence) return a.confidence > b.confidence;
        return a.volume.value_or(units::Volume{}) > b.volume.value_or(units::Volume{});
    });
}

QString table_words(exchange::Kind kind) {
    using exchange::Kind;
    switch (kind) {
        case Kind::sites: return FindingWords::tr("sites");
        case Kind::meters: return FindingWords::tr("meters");
        case Kind::exchanges: return FindingWords::tr("exchanges of meters");
        case Kind::areas: return FindingWords::tr("areas");
        case Kind::weather_stations: return FindingWords::tr("weather stations");
        case Kind::readings: return FindingWords::tr("readings");
        case Kind::weather: return FindingWords::tr("weather");
        case Kind::catches: return FindingWords::tr("catches");
        case Kind::bills: return FindingWords::tr("bills");
        case Kind::plantings: return FindingWords::tr("plantings");
        case Kind::prices: return FindingWords::tr("prices of water");
        case Kind::energy: return FindingWords::tr("prices of energy");
        case Kind::pumps: return FindingWords::tr("pumps");
        case Kind::stations: return FindingWords::tr("stations");
        case Kind::watering_rules: return FindingWords::tr("watering rules");
        case Kind::area_settings: return FindingWords::tr("settings of areas");
        case Kind::hourly_weather: return FindingWords::tr("hourly weather");
        case Kind::pressures: return FindingWords::tr("pressures");
        case Kind::findings: return FindingWords::tr("findings");
    }
    return {};
}

}  // namespace evenfall::desktop
