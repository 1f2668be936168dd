// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/review/json_object.h"

#include "core/nearest.h"

#include <algorithm>
#include <span>

namespace evenfall::review {
namespace {

using Json = nlohmann::json;

constexpr std::size_t most_problems = 50;

std::string shown(const Json& value) {
    return printable(value.is_object() || value.is_array() ? std::string(value.type_name())
                                                           : value.dump(-1, ' ', true, Json::error_handler_t::replace));
}

Sentence shown_or_nothing(const Json* value) { return value == nullptr ? Sentence(phrase("review", "nothing")) : Sentence(shown(*value)); }

}  // namespace

void Problems::add(const std::string& path, const Sentence& found, const Sentence& expected) {
    issues_.push_back({{file_, 0, printable(path, 200)}, found, expected});
    if (issues_.size() >= most_problems) finish();
}

void Problems::finish() const {
    if (!issues_.empty()) throw InputError(issues_);
}

nlohmann::json parse_json(std::string_view text, const std::string& file, int deepest) {
    const auto watch_depth = [&](int depth, Json::parse_event_t, Json&) {
        if (depth > deepest) {
            throw InputError(Issue{{file, 0, ""}, {phrase("review", "JSON nested deeper than %1"), deepest},
                                   phrase("review", "the few levels of a filing")});
        }
        return true;
    };
    try {
        Json json = Json::parse(text.begin(), text.end(), watch_depth);
        if (json.is_object()) return json;
    } catch (const Json::exception& e) {
        throw InputError(Issue{{file, 0, ""}, printable(e.what(), 200), phrase("review", "JSON text (RFC 8259)")});
    }
    throw InputError(Issue{{file, 0, ""}, phrase("review", "JSON that is no object"), phrase("review", "an object")});
}

JsonObject::JsonObject(const Json& json, std::string path, Problems& problems)
    : json_(&json), path_(std::move(path)), problems_(&problems) {
    static const Json nothing = Json::object();
    if (!json.is_object()) {
        problems.add(path_, shown(json), phrase("review", "an object"));
        json_ = &nothing;
    }
}

std::string JsonObject::at(const char* name) const {
    return path_.empty() ? std::string(name) : path_ + "." + name;
}

void JsonObject::problem(const char* name, const Sentence& found, const Sentence& expected) const {
    problems_->add(at(name), printable_sentence(found), expected);
}

void JsonObject::only(std::initializer_list<std::string_view> names) const {
    for (const auto& [key, value] : json_->items()) {
        if (std::find(names.begin(), names.end(), key) != names.end()) continue;
        const std::string short_key = key.substr(0, 64);
        problems_->add(path_.empty() ? short_key : path_ + "." + short_key, printable(key),
                       {phrase("review", "a known member; the nearest is %1"), nearest_of(key, std::span(names.begin(), names.size()))});
    }
}

const Json* JsonObject::find(const char* name) const {
    const auto found = json_->find(name);
    return found == json_->end() || found->is_null() ? nullptr : &*found;
}

bool JsonObject::has(const char* name) const { return find(name) != nullptr; }

std::string JsonObject::text(const char* name, std::size_t longest) const {
    std::string value = text_or_empty(name, longest);
    if (value.empty()) problem(name, has(name) ? phrase("review", "an empty text") : phrase("review", "nothing"), phrase("review", "a text"));
    return value;
}

std::string JsonObject::text_or_empty(const char* name, std::size_t longest) const {
    const Json* value = find(name);
    if (value == nullptr) return {};
    if (!value->is_string()) {
        problem(name, shown(*value), phrase("review", "a text"));
        return {};
    }
    const auto& text = value->get_ref<const std::string&>();
    const bool unfit = std::any_of(text.begin(), text.end(), [](char c) {
        return (static_cast<unsigned char>(c) < 0x20 && c != '\n') || c == 0x7F;
    });
    if (text.size() > longest || unfit) {
        problem(name, text, {phrase("review", "at most %1 bytes of text without control characters"), longest});
        return {};
    }
    return text;
}

std::optional<double> JsonObject::maybe_number(const char* name, double low, double high) const {
    const Json* value = find(name);
    if (value == nullptr) return std::nullopt;
    if (value->is_number()) {
        const double number = value->get<double>();
        if (std::isfinite(number) && number >= low && number <= high) return number;
    }
    problem(name, shown(*value),
            {phrase("review", "a number from %1 to %2"), units::format_shortest(low), units::format_shortest(high)});
    return std::nullopt;
}

double JsonObject::number(const char* name, double low, double high) const {
    if (!has(name)) problem(name, phrase("review", "nothing"), phrase("review", "a number"));
    return maybe_number(name, low, high).value_or(low);
}

bool JsonObject::boolean(const char* name) const {
    const Json* value = find(name);
    if (value != nullptr && value->is_boolean()) return value->get<bool>();
    problem(name, shown_or_nothing(value), phrase("review", "true or false"));
    return false;
}

std::optional<calendar::Date> JsonObject::maybe_date(const char* name) const {
    const std::string value = text_or_empty(name);
    if (value.empty()) return std::nullopt;
    const auto date = calendar::parse_date(value);
    if (!date) problem(name, value, phrase("review", "a date such as 2024-06-30"));
    return date;
}

calendar::Date JsonObject::date(const char* name) const {
    if (!has(name)) problem(name, phrase("review", "nothing"), phrase("review", "a date such as 2024-06-30"));
    return maybe_date(name).value_or(calendar::Date{});
}

calendar::Instant JsonObject::instant(const char* name) const {
    const std::string value = text(name);
    const auto at_instant = calendar::parse_instant(value);
    if (!value.empty() && !at_instant) problem(name, value, phrase("review", "an instant such as 2024-06-30T12:00:00Z"));
    return at_instant.value_or(calendar::Instant{});
}

JsonObject JsonObject::object(const char* name) const {
    static const Json nothing = Json::object();
    const Json* value = find(name);
    if (value == nullptr) problem(name, phrase("review", "nothing"), phrase("review", "an object"));
    return {value == nullptr ? nothing : *value, at(name), *problems_};
}

std::optional<JsonObject> JsonObject::maybe_object(const char* name) const {
    const Json* value = find(name);
    if (value == nullptr) return std::nullopt;
    return JsonObject(*value, at(name), *problems_);
}

void JsonObject::each_value(const char* name, std::size_t most,
                            const std::function<void(const Json&, const std::string&)>& use) const {
    const Json* value = find(name);
    if (value == nullptr || !value->is_array()) {
        problem(name, shown_or_nothing(value), phrase("review", "an array"));
        return;
    }
    if (value->size() > most) {
        problem(name, {phrase("review", "%1 elements"), value->size()}, {phrase("review", "at most %1"), most});
        return;
    }
    for (std::size_t i = 0; i < value->size(); ++i) {
        use((*value)[i], at(name) + "[" + std::to_string(i) + "]");
    }
}

void JsonObject::each(const char* name, std::size_t most,
                      const std::function<void(const JsonObject&)>& use) const {
    each_value(name, most, [&](const Json& value, const std::string& path) {
        use(JsonObject(value, path, *problems_));
    });
}

}  // namespace evenfall::review
