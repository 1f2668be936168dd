// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/date.h"
#include "core/input_error.h"
#include "core/units/measure.h"

#include <nlohmann/json.hpp>

#include <cmath>
#include <cstddef>
#include <functional>
#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

/// Reading JSON from strangers member by member: every member must be asked for, what is wrong is
/// collected with its path. Included only by the few files that read JSON.
namespace evenfall::review {

/// What is wrong with one file. Reading ends when there is too much of it.
class Problems {
  public:
    explicit Problems(std::string file) : file_(std::move(file)) {}
    void add(const std::string& path, const Sentence& found, const Sentence& expected);
    /// @throws InputError when anything was added
    void finish() const;
    bool empty() const { return issues_.empty(); }

  private:
    std::string file_;
    std::vector<Issue> issues_;
};

/// Text parsed with limits on depth and size.
/// @throws InputError for what is no JSON, deeper than `deepest`, or no object at the top
nlohmann::json parse_json(std::string_view text, const std::string& file, int deepest);

class JsonObject {
  public:
    using Json = nlohmann::json;
    JsonObject(const Json& json, std::string path, Problems& problems);

    /// Any other member is a problem; the nearest known name is given.
    void only(std::initializer_list<std::string_view> names) const;
    bool has(const char* name) const;  ///< present and not null

    std::string text(const char* name, std::size_t longest = 500) const;           ///< must be there
    std::string text_or_empty(const char* name, std::size_t longest = 500) const;  ///< null: empty
    double number(const char* name, double low, double high) const;
    std::optional<double> maybe_number(const char* name, double low, double high) const;
    bool boolean(const char* name) const;
    std::optional<calendar::Date> maybe_date(const char* name) const;
    calendar::Date date(const char* name) const;
    calendar::Instant instant(const char* name) const;
    JsonObject object(const char* name) const;
    std::optional<JsonObject> maybe_object(const char* name) const;
    /// Calls `use` for each object of an array.
    void each(const char* name, std::size_t most, const std::function<void(const JsonObject&)>& use) const;
    /// The elements of an array, whatever they are, with the path of each.
    void each_value(const char* name, std::size_t most,
                    const std::function<void(const Json&, const std::string&)>& use) const;
    /// {"value": 1.5, "unit": "ft2"}
    template <class Q>
    std::optional<units::Typed<Q>> maybe_measure(const char* name) const;

    /// Runs `read`; what it throws becomes a problem of that member.
    template <class Read>
    auto tried(const char* name, Read read) const -> decltype(read());

    void problem(const char* name, const Sentence& found, const Sentence& expected) const;
    const std::string& path() const { return path_; }

  private:
    const Json* find(const char* name) const;
    std::string at(const char* name) const;
    const Json* json_;
    std::string path_;
    Problems* problems_;
};

template <class Read>
auto JsonObject::tried(const char* name, Read read) const -> decltype(read()) {
    try {
        return read();
    } catch (const InputError& e) {
        const Issue& issue = e.issues().front();
        problem(name, issue.found, issue.expected);
        return decltype(read()){};
    }
}

template <class Q>
std::optional<units::Typed<Q>> JsonObject::maybe_measure(const char* name) const {
    const auto inner = maybe_object(name);
    if (!inner) return std::nullopt;
    inner->only({"unit", "value"});
    units::Typed<Q> measure;
    measure.value = inner->number("value", -1e15, 1e15);
    const std::string unit = inner->text("unit");
    measure.unit = inner->tried("unit", [&] { return units::unit_named<Q>(unit); });
    return measure;
}

}  // namespace evenfall::review
