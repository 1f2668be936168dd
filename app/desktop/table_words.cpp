// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/table_words.h"

#include "app/desktop/core_words.h"

#include <QCoreApplication>
#include <algorithm>
#include <string>

namespace evenfall::desktop {
namespace {

/// For lupdate. Keys of soils.csv, head_types.csv and plants.csv with blanks for "_", names of findings.csv.
[[maybe_unused]] constexpr const char* known[] = {
    QT_TRANSLATE_NOOP("Core", "coarse sand"),
    QT_TRANSLATE_NOOP("Core", "medium sand"),
    QT_TRANSLATE_NOOP("Core", "fine sand"),
    QT_TRANSLATE_NOOP("Core", "sand"),
    QT_TRANSLATE_NOOP("Core", "loamy sand"),
    QT_TRANSLATE_NOOP("Core", "sandy loam"),
    QT_TRANSLATE_NOOP("Core", "fine sandy loam"),
    QT_TRANSLATE_NOOP("Core", "very fine sandy loam"),
    QT_TRANSLATE_NOOP("Core", "loam"),
    QT_TRANSLATE_NOOP("Core", "silt loam"),
    QT_TRANSLATE_NOOP("Core", "silt"),
    QT_TRANSLATE_NOOP("Core", "sandy clay loam"),
    QT_TRANSLATE_NOOP("Core", "clay loam"),
    QT_TRANSLATE_NOOP("Core", "silty clay loam"),
    QT_TRANSLATE_NOOP("Core", "sandy clay"),
    QT_TRANSLATE_NOOP("Core", "silty clay"),
    QT_TRANSLATE_NOOP("Core", "clay"),
    QT_TRANSLATE_NOOP("Core", "rotor"),
    QT_TRANSLATE_NOOP("Core", "impact"),
    QT_TRANSLATE_NOOP("Core", "spray"),
    QT_TRANSLATE_NOOP("Core", "drip"),
    QT_TRANSLATE_NOOP("Core", "pivot"),
    QT_TRANSLATE_NOOP("Core", "solid set"),
    QT_TRANSLATE_NOOP("Core", "traveller"),
    QT_TRANSLATE_NOOP("Core", "unknown"),
    QT_TRANSLATE_NOOP("Core", "cool-season"),
    QT_TRANSLATE_NOOP("Core", "warm-season"),
    QT_TRANSLATE_NOOP("Core", "cool season"),
    QT_TRANSLATE_NOOP("Core", "warm season"),
    QT_TRANSLATE_NOOP("Core", "minor"),
    QT_TRANSLATE_NOOP("Core", "moderate"),
    QT_TRANSLATE_NOOP("Core", "severe"),
    QT_TRANSLATE_NOOP("Core", "head tilted"),
    QT_TRANSLATE_NOOP("Core", "head sunken"),
    QT_TRANSLATE_NOOP("Core", "head too high"),
    QT_TRANSLATE_NOOP("Core", "nozzle clogged"),
    QT_TRANSLATE_NOOP("Core", "nozzle worn"),
    QT_TRANSLATE_NOOP("Core", "nozzles mixed"),
    QT_TRANSLATE_NOOP("Core", "nozzle wrong for its arc"),
    QT_TRANSLATE_NOOP("Core", "arc off"),
    QT_TRANSLATE_NOOP("Core", "not rotating"),
    QT_TRANSLATE_NOOP("Core", "does not retract"),
    QT_TRANSLATE_NOOP("Core", "leaking at the head"),
    QT_TRANSLATE_NOOP("Core", "drains at the lowest head"),
    QT_TRANSLATE_NOOP("Core", "head broken or missing"),
    QT_TRANSLATE_NOOP("Core", "leak in the line"),
    QT_TRANSLATE_NOOP("Core", "valve does not close or open"),
    QT_TRANSLATE_NOOP("Core", "blocked by plants or things"),
    QT_TRANSLATE_NOOP("Core", "misting"),
    QT_TRANSLATE_NOOP("Core", "pressure too low"),
    QT_TRANSLATE_NOOP("Core", "overspray onto paving or buildings"),
    QT_TRANSLATE_NOOP("Core", "reclaimed water off target"),
    QT_TRANSLATE_NOOP("Core", "runoff"),
    QT_TRANSLATE_NOOP("Core", "heads too far apart"),
    QT_TRANSLATE_NOOP("Core", "backflow protection missing or untested"),
};

}  // namespace

QString key_words(std::string_view key) {
    std::string words(key);
    std::replace(words.begin(), words.end(), '_', ' ');
    return core_words(words);
}

}  // namespace evenfall::desktop
