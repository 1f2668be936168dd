// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/finding_words.h"

#include "core/calendar/date.h"

#include <QCoreApplication>
#include <algorithm>

namespace evenfall::desktop {
namespace {

struct FindingWords {
    Q_DECLARE_TR_FUNCTIONS(FindingWords)
};

}  // namespace

QString kind_words(meter::FindingKind kind) {
    using meter::FindingKind;
    switch (kind) {
        case FindingKind::never_zero: return FindingWords::tr("flow at all hours, day after day: a leak");
        case FindingKind::overnight_flow: return FindingWords::tr("flow all through the night");
        case FindingKind::use_without_need: return FindingWords::tr("water while the turf needed none");
        case FindingKind::spike: return FindingWords::tr("far above the days around it");
        case FindingKind::stuck_register: return FindingWords::tr("the register did not move");
        case FindingKind::gap: return FindingWords::tr("no readings");
        case FindingKind::impossible_flow: return FindingWords::tr("more than a meter of that size passes");
        case FindingKind::register_fell: return FindingWords::tr("the register fell");
        case FindingKind::ran_backward: return FindingWords::tr("the meter ran backward");
        case FindingKind::overlap: return FindingWords::tr("two volumes for the same time");
        case FindingKind::master_sub: return FindingWords::tr("master meter and submeters disagree");
        case FindingKind::bill_differs: return FindingWords::tr("the bill says something else");
    }
    return {};
}

QString confidence_words(meter::Confidence confidence) {
    switch (confidence) {
        case meter::Confidence::low: return FindingWords::tr("low");
        case meter::Confidence::fair: return FindingWords::tr("fair");
        case meter::Confidence::high: return FindingWords::tr("high");
    }
    return {};
}

QString sentence_words(const meter::MeterFinding& finding, UnitsShown units) {
    //: The code of this language
    if (FindingWords::tr("en") == QStringLiteral("en")) return q(finding.sentence);
    QString words = FindingWords::tr("Meter %1: %2").arg(q(finding.meter), kind_words(finding.kind));
    words += finding.from == finding.to
                 ? FindingWords::tr(", on %1").arg(q(calendar::format_date(finding.from)))
                 : FindingWords::tr(", %1 to %2").arg(q(calendar::format_date(finding.from)),
                                                      q(calendar::format_date(finding.to)));
    if (finding.volume) words += FindingWords::tr(", about %1").arg(shown(*finding.volume, units));
    return words;
}

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
