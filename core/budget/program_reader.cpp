// SPDX-License-Identifier: GPL-3.0-or-later
// Reads program files. Kept apart from program.cpp because of what the JSON header costs to compile.
#include "core/budget/program.h"
#include "core/input_error.h"
#include "core/nearest.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>
#include <set>
#include <span>
#include <utility>

namespace evenfall::budget {
namespace {

using Json = nlohmann::json;

constexpr std::size_t largest_file = 1U << 20U;

/// One object of the file: every key must be asked for, and what is wrong is collected.
class Object {
  public:
    Object(const Json& json, std::string path, std::string file, std::vector<Issue>& issues)
        : json_(json), path_(std::move(path)), file_(std::move(file)), issues_(issues) {}

    void allow(std::span<const std::string_view> keys) const {
        for (const auto& [key, value] : json_.items()) {
            if (std::find(keys.begin(), keys.end(), key) != keys.end()) continue;
            report(key, key, {phrase("budget", "a known key; the nearest is %1"), nearest_of(key, keys)});
        }
    }

    std::string text(const char* key) const {
        const Json* value = find(key, true);
        if (value == nullptr) return {};
        if (value->is_string() && !value->get_ref<const std::string&>().empty()) {
            return value->get<std::string>();
        }
        report(key, *value, phrase("budget", "text"));
        return {};
    }

    std::optional<double> number(const char* key, double low, double high, bool needed) const {
        const Json* value = find(key, needed);
        if (value == nullptr) return std::nullopt;
        if (value->is_number()) {
            const double number = value->get<double>();
            if (number > low && number <= high) return number;
        }
        report(key, *value, {phrase("budget", "a number above %1 and up to %2"), shown(low), shown(high)});
        return std::nullopt;
    }

    template <class Enum, std::size_t N>
    Enum choice(const char* key, const std::array<std::pair<std::string_view, Enum>, N>& choices,
                std::optional<Enum> otherwise) const {
        const Json* value = find(key, !otherwise);
        if (value != nullptr) {
            std::string known;
            for (const auto& [name, meaning] : choices) {
                if (*value == name) return meaning;
                known += (known.empty() ? "" : ", ") + std::string(name);
            }
            report(key, *value, {phrase("budget", "one of %1"), known});
        }
        return otherwise.value_or(choices.front().second);
    }

    void forbid(const char* key, Phrase why) const {
        if (const Json* value = find(key, false)) report(key, *value, why);
    }

    const Json* find(const char* key, bool needed) const {
        const auto it = json_.find(key);
        if (it != json_.end()) return &*it;
        if (needed)
            issues_.push_back({{file_, 0, path_ + key}, phrase("budget", "nothing"), phrase("budget", "this key")});
        return nullptr;
    }

    void report(const std::string& key, const Json& found, Sentence expected) const {
        const std::string text = found.is_string()
                                     ? found.get<std::string>()
                                     : found.dump(-1, ' ', true, Json::error_handler_t::replace);
        issues_.push_back({{file_, 0, path_ + key}, printable(text), std::move(expected)});
    }

  private:
    static std::string shown(double value) { return Json(value).dump(); }

    const Json& json_;
    std::string path_;
    std::string file_;
    std::vector<Issue>& issues_;
};

/// Parses and refuses a key that stands twice in one object: the second would win silently.
Json parse(std::string_view text, const std::string& file) {
    if (text.size() > largest_file) {
        throw InputError(
            {{file, 0, ""}, {phrase("budget", "%1 bytes"), text.size()}, phrase("budget", "at most 1 MiB")});
    }
    std::vector<std::set<std::string>> open;
    std::vector<Issue> issues;
    const auto watch = [&](int, Json::parse_event_t event, Json& parsed) {
        if (event == Json::parse_event_t::object_start) open.emplace_back();
        if (event == Json::parse_event_t::object_end) open.pop_back();
        if (event == Json::parse_event_t::key && !open.back().insert(parsed.get<std::string>()).second) {
            issues.push_back({{file, 0, parsed.get<std::string>()},
                              phrase("budget", "the key twice"),
                              phrase("budget", "it once")});
        }
        return true;
    };
    Json json;
    try {
        json = Json::parse(text, watch);
    } catch (const Json::exception& error) {
        throw InputError({{file, 0, ""}, error.what(), phrase("budget", "JSON")});
    }
    if (!issues.empty()) throw InputError(std::move(issues));
    if (!json.is_object()) throw InputError({{file, 0, ""}, json.type_name(), phrase("budget", "a JSON object")});
    return json;
}

constexpr std::array<std::string_view, 8> outer_keys{
    "evenfall_program", "name", "title", "version", "source", "mark", "budget", "target_du"};
constexpr std::array<std::string_view, 9> budget_keys{
    "basis",   "factor",     "special_factor",       "rain_credit", "rain_share",
    "divisor", "efficiency", "gallons_per_ft2_inch", "period"};

constexpr std::array bases{std::pair{std::string_view("need"), Basis::need},
                           std::pair{std::string_view("allowance"), Basis::allowance}};
constexpr std::array divisors{std::pair{std::string_view("none"), Divisor::none},
                              std::pair{std::string_view("efficiency"), Divisor::efficiency},
                              std::pair{std::string_view("target_du"), Divisor::target_du}};
constexpr std::array credits{std::pair{std::string_view("none"), RainCredit::none},
                             std::pair{std::string_view("effective"), RainCredit::effective},
                             std::pair{std::string_view("share"), RainCredit::share}};
constexpr std::array periods{std::pair{std::string_view("month"), Period::month},
                             std::pair{std::string_view("year"), Period::year}};
constexpr std::array marks{
    std::pair{std::string_view("seen"), reference::Mark::seen},
    std::pair{std::string_view("part"), reference::Mark::part},
    std::pair{std::string_view("memory"), reference::Mark::memory},
    std::pair{std::string_view("derived"), reference::Mark::derived},
    std::pair{std::string_view("constructed"), reference::Mark::constructed},
    std::pair{std::string_view("practice"), reference::Mark::practice}};

void read_budget(const Object& object, Program& program) {
    object.allow(budget_keys);
    program.basis = object.choice<Basis>("basis", bases, std::nullopt);
    program.divisor = object.choice<Divisor>("divisor", divisors, std::nullopt);
    program.period = object.choice<Period>("period", periods, std::nullopt);
    program.rain_credit = object.choice<RainCredit>("rain_credit", credits, RainCredit::none);

    const bool allowance = program.basis == Basis::allowance;
    const bool by_share = program.rain_credit == RainCredit::share;
    const bool by_efficiency = program.divisor == Divisor::efficiency;
    program.factor = object.number("factor", 0.0, 2.0, allowance);
    program.special_factor = object.number("special_factor", 0.0, 2.0, false);
    program.rain_share = object.number("rain_share", 0.0, 1.0, by_share);
    program.gallons_per_ft2_inch = object.number("gallons_per_ft2_inch", 0.6, 0.65, false);
    if (const auto e = object.number("efficiency", 0.0, 1.0, by_efficiency)) {
        program.efficiency = units::Efficiency::of(*e);
    }
    if (!allowance) {
        for (const char* key : {"factor", "special_factor", "rain_credit", "gallons_per_ft2_inch"}) {
            object.forbid(key, phrase("budget", "this key only with basis allowance"));
        }
    }
    if (!by_share) object.forbid("rain_share", phrase("budget", "this key only with rain_credit share"));
    if (!by_efficiency) object.forbid("efficiency", phrase("budget", "this key only with divisor efficiency"));
}

}  // namespace

Program read_program(std::string_view text, const std::string& file) {
    const Json json = parse(text, file);
    std::vector<Issue> issues;
    const Object outer(json, "", file, issues);
    outer.allow(outer_keys);
    if (const Json* format = outer.find("evenfall_program", true)) {
        if (*format != 1)
            outer.report("evenfall_program", *format, phrase("budget", "1, the version of this format"));
    }
    Program program;
    program.name = outer.text("name");
    program.title = outer.text("title");
    program.version = outer.text("version");
    program.source = outer.text("source");
    program.mark = outer.choice<reference::Mark>("mark", marks, std::nullopt);
    if (const auto du = outer.number("target_du", 0.0, 1.0, true)) {
        program.target_du = units::LowQuarterDu::of(*du);
    }
    if (const Json* inner = outer.find("budget", true)) {
        if (inner->is_object()) {
            read_budget(Object(*inner, "budget.", file, issues), program);
        } else {
            outer.report("budget", *inner, phrase("budget", "an object"));
        }
    }
    if (!issues.empty()) throw InputError(std::move(issues));
    return program;
}

}  // namespace evenfall::budget
