// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/budget/season_flag.h"

#include <algorithm>
#include <array>
#include <cassert>

namespace evenfall::budget {
namespace {

struct Words {
    SeasonFlag flag;
    std::string_view key;
    Phrase sentence;
};

constexpr std::array words{
    Words{SeasonFlag::eto_missing, "eto_missing",
          phrase("budget", "No reference ET for too many days: need and budget are not known.")},
    Words{SeasonFlag::eto_filled, "eto_filled",
          phrase("budget", "Days without reference ET were filled with the mean of the month's other days.")},
    Words{SeasonFlag::eto_inputs_assumed, "eto_inputs_assumed",
          phrase("budget", "On some days an input of the reference ET was replaced or refused.")},
    Words{SeasonFlag::rain_missing, "rain_missing",
          phrase("budget", "Rain was not recorded for too many days: need is not known under this rain rule.")},
    Words{SeasonFlag::rain_filled, "rain_filled",
          phrase("budget", "Days without a rain record were filled with the mean of the month's other days.")},
    Words{SeasonFlag::weather_part_month, "weather_part_month",
          phrase("budget", "The weather record covers a part of the month; only those days are counted.")},
    Words{SeasonFlag::meter_part_month, "meter_part_month",
          phrase("budget", "The meter readings cover a part of the month; only those days are counted.")},
    Words{SeasonFlag::meter_gap, "meter_gap",
          phrase("budget", "The meter record has a gap; need and budget are scaled to the time that was metered.")},
    Words{SeasonFlag::no_meter, "no_meter", phrase("budget", "No meter: use is not known.")},
    Words{SeasonFlag::no_readings, "no_readings", phrase("budget", "No meter readings: use is not known.")},
    Words{SeasonFlag::readings_estimated, "readings_estimated",
          phrase("budget",
                 "A part of the volume comes from estimated readings or lies between readings outside the "
                 "month.")},
    Words{SeasonFlag::use_negative, "use_negative",
          phrase("budget", "The meter ran backward over the month: there is no account.")},
    Words{SeasonFlag::submeters_above, "submeters_above",
          phrase("budget", "The submeters add up to more than the meter above them.")},
    Words{SeasonFlag::share_assumed, "share_assumed",
          phrase("budget", "The meter serves several areas; its volume was split by area times coefficient.")},
    Words{SeasonFlag::coefficient_assumed, "coefficient_assumed",
          phrase("budget", "The landscape coefficient was assumed.")},
    Words{SeasonFlag::no_catch_test, "no_catch_test",
          phrase("budget", "No catch test: a planning value of the head type stands for the uniformity.")},
    Words{SeasonFlag::head_type_unknown, "head_type_unknown",
          phrase("budget", "Neither a catch test nor a known head type is recorded.")},
    Words{SeasonFlag::test_later, "test_later", phrase("budget", "The catch test was made after the month.")},
    Words{SeasonFlag::off_target_assumed, "off_target_assumed",
          phrase("budget", "The off-target share is not known and was counted as 0.")},
    Words{SeasonFlag::leak_not_screened, "leak_not_screened",
          phrase("budget", "The readings are too far apart to show a leak; it was counted as 0.")},
    Words{SeasonFlag::leak_above_use, "leak_above_use",
          phrase("budget", "The leak found is larger than the volume and was cut to it.")},
    Words{SeasonFlag::leaching_included, "leaching_included",
          phrase("budget",
                 "The need contains the leaching requirement of salty water; rain that leaches is not "
                 "counted against it, and by cans that water shows as drained.")},
    Words{SeasonFlag::areas_missing, "areas_missing", phrase("budget", "Some areas have no account.")},
    Words{SeasonFlag::months_missing, "months_missing", phrase("budget", "Some months have no account.")},
};

const Words& find(SeasonFlag flag) {
    const auto it = std::find_if(words.begin(), words.end(),
                                 [&](const Words& w) { return w.flag == flag; });
    assert(it != words.end());
    return *it;
}

}  // namespace

std::string_view key_of(SeasonFlag flag) { return find(flag).key; }
Phrase sentence_of(SeasonFlag flag) { return find(flag).sentence; }

void add_flag(std::vector<SeasonFlag>& flags, SeasonFlag flag) {
    const auto at = std::lower_bound(flags.begin(), flags.end(), flag);
    if (at == flags.end() || *at != flag) flags.insert(at, flag);
}

void add_flags(std::vector<SeasonFlag>& flags, const std::vector<SeasonFlag>& more) {
    for (const SeasonFlag flag : more) add_flag(flags, flag);
}

bool has_flag(const std::vector<SeasonFlag>& flags, SeasonFlag flag) {
    return std::binary_search(flags.begin(), flags.end(), flag);
}

}  // namespace evenfall::budget
