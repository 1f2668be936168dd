// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/record_names.h"

#include <array>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace evenfall::exchange {
namespace {

namespace form = record_form;

/// Those with more words first: "finding K of test T at P" has the shorter form too.
const std::array<Sentence, 17>& forms() {
    static const std::array<Sentence, 17> all{
        Sentence{form::site, ""},           Sentence{form::meter, ""},
        Sentence{form::area, ""},           Sentence{form::weather_station, ""},
        Sentence{form::outline, ""},        Sentence{form::reading, "", ""},
        Sentence{form::volume, "", "", ""}, Sentence{form::day, "", ""},
        Sentence{form::hour, "", ""},       Sentence{form::bill, "", "", ""},
        Sentence{form::pressure, "", ""},   Sentence{form::finding, "", "", ""},
        Sentence{form::finding_nowhere, "", ""}, Sentence{form::findings, ""},
        Sentence{form::watering_rule, ""},  Sentence{form::settings, ""},
        Sentence{form::planting, "", "", ""}};
    return all;
}

/// The values of a text that has the form, whose places stand in order; nothing when it has another.
std::optional<std::vector<Sentence>> values_in(std::string_view text, std::string_view form) {
    std::vector<Sentence> values;
    std::size_t place = form.find('%');
    if (text.substr(0, place) != form.substr(0, place)) return std::nullopt;
    text.remove_prefix(place);
    while (place != std::string_view::npos) {
        form.remove_prefix(place + 2);
        place = form.find('%');
        const std::string_view between = form.substr(0, place);
        const std::size_t end = between.empty() ? text.size() : text.find(between);
        if (end == std::string_view::npos || end == 0) return std::nullopt;
        values.emplace_back(text.substr(0, end));
        text.remove_prefix(end + between.size());
    }
    return text.empty() ? std::optional(std::move(values)) : std::nullopt;
}

}  // namespace

Sentence record_sentence(std::string_view name) {
    for (const Sentence& known : forms()) {
        auto values = values_in(name, known.form().english());
        if (!values) continue;
        Sentence sentence = known.with(std::move(*values));
        if (sentence.english() == name) return sentence;
    }
    return Sentence(name);
}

}  // namespace evenfall::exchange
