// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/conflict_words.h"

#include "core/exchange/record_names.h"

#include <array>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

namespace evenfall::exchange {
namespace {

// Parts of values, as they stand between commas.
constexpr std::array none_recorded{phrase("exchange", "%1 not recorded"), phrase("exchange", "its like in %1"),
                                   phrase("exchange", "(nothing)")};
constexpr std::array reading_kinds{phrase("exchange", "estimated"), phrase("exchange", "corrected")};
constexpr std::array nozzle_range{phrase("exchange", "nozzle from %1"), phrase("exchange", "nozzle to %1")};
constexpr std::array inspection{phrase("exchange", "inspected"), phrase("exchange", "nothing found"),
                                phrase("exchange", "corrected")};
constexpr std::array planting_parts{phrase("exchange", "to no last day"), phrase("exchange", "to %1"),
                                    phrase("exchange", "coefficient %1")};
constexpr std::array rule_parts{phrase("exchange", "%1 to %2 minutes after midnight"), phrase("exchange", "%1 at once")};
constexpr std::array setting_parts{phrase("exchange", "off target %1 (%2)"), phrase("exchange", "special"),
                                   phrase("exchange", "water %1 dS/m"), phrase("exchange", "soil kept at %1 dS/m")};

struct Known {
    Phrase record;
    std::span<const Phrase> parts;
};

/// Those that another one might be taken for stand after it.
const std::array known{
    Known{record_form::reading, reading_kinds},
    Known{record_form::volume, reading_kinds},
    Known{record_form::hour, none_recorded},
    Known{record_form::day, none_recorded},
    Known{record_form::weather_station, none_recorded},
    Known{record_form::site, none_recorded},
    Known{record_form::meter, none_recorded},
    Known{record_form::area, none_recorded},
    Known{record_form::outline, {}},
    Known{record_form::bill, {}},
    Known{record_form::pressure, nozzle_range},
    Known{record_form::findings, inspection},
    Known{record_form::finding, inspection},
    Known{record_form::finding_nowhere, inspection},
    Known{record_form::watering_rule, rule_parts},
    Known{record_form::settings, setting_parts},
    Known{record_form::planting, planting_parts},
};

/// A form with the values that make it read as `text`. A value may hold what stands between the
/// places, too; the text is the same wherever it is parted.
std::optional<Sentence> read_as(Phrase form, std::string_view text) {
    std::vector<std::string_view> fixed;
    std::string_view rest = form.english();
    while (true) {
        const std::size_t place = rest.find('%');
        fixed.push_back(rest.substr(0, place));
        if (place == std::string_view::npos) break;
        rest.remove_prefix(place + 2);
    }
    if (fixed.size() == 1) return text == fixed[0] ? std::optional(Sentence(form)) : std::nullopt;
    if (!text.starts_with(fixed.front()) || !text.ends_with(fixed.back())) return std::nullopt;
    if (text.size() < fixed.front().size() + fixed.back().size()) return std::nullopt;
    text.remove_prefix(fixed.front().size());
    text.remove_suffix(fixed.back().size());
    std::vector<Sentence> values(fixed.size() - 1);
    for (std::size_t i = values.size() - 1; i > 0; --i) {
        const std::size_t at = text.rfind(fixed[i]);
        if (at == std::string_view::npos) return std::nullopt;
        values[i] = text.substr(at + fixed[i].size());
        text = text.substr(0, at);
    }
    values[0] = text;
    return Sentence(form).with(std::move(values));
}

const Known* known_record(const std::string& record) {
    for (const Known& k : known) {
        if (read_as(k.record, record)) return &k;
    }
    return nullptr;
}

Sentence part_words(std::span<const Phrase> forms, std::string_view part) {
    for (const Phrase& form : forms) {
        if (auto found = read_as(form, part)) return *std::move(found);
    }
    return part;
}

}  // namespace

Sentence record_words(const std::string& record) {
    const Known* k = known_record(record);
    return k == nullptr ? Sentence(record) : *read_as(k->record, record);
}

Sentence value_words(const std::string& record, const std::string& value) {
    const Known* k = known_record(record);
    if (k == nullptr || k->parts.empty()) return value;
    static constexpr std::string_view between = ", ";
    std::vector<Sentence> parts;
    std::string_view rest = value;
    while (true) {
        const std::size_t comma = rest.find(between);
        parts.push_back(part_words(k->parts, rest.substr(0, comma)));
        if (comma == std::string_view::npos) break;
        rest.remove_prefix(comma + between.size());
    }
    return Sentence::joined(std::move(parts), between);
}

}  // namespace evenfall::exchange
