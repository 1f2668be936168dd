// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/budget/program.h"

#include "core/audit/multiplier.h"
#include "core/input_error.h"
#include "core/units/number.h"
#include "schemas/schemas.h"

#include <map>
#include <memory>
#include <mutex>

namespace evenfall::budget {
namespace {

constexpr std::string_view folder = "programs/";
constexpr std::string_view ending = ".json";

/// "ETo x 0.8 - effective rain"
Sentence water_of(const Program& program) {
    const std::string factor = units::format_shortest(program.factor.value());
    const Sentence water = program.special_factor ? Sentence{phrase("budget", "ETo x %1, special areas x %2"), factor,
                                                             units::format_shortest(*program.special_factor)}
                                                  : Sentence{"ETo x " + factor};
    switch (program.rain_credit) {
        case RainCredit::effective:
            return {phrase("budget", "%1 - effective rain"), water};
        case RainCredit::share:
            return {phrase("budget", "%1 - %2 x rain"), water, units::format_shortest(program.rain_share.value())};
        case RainCredit::none: break;
    }
    return water;
}

/// The built-in program of that title, or null.
const Program* built_in_with(const std::string& title) {
    for (const std::string& name : built_in_program_names()) {
        const Program& program = built_in_program(name);
        if (program.title == title) return &program;
    }
    return nullptr;
}

}  // namespace

units::Multiplier Program::target_multiplier() const {
    return audit::linear_multiplier(target_du);
}

double Program::divisor_value() const {
    switch (divisor) {
        case Divisor::efficiency: return efficiency.value().value();
        case Divisor::target_du: return 1.0 / target_multiplier().value();
        case Divisor::none: break;
    }
    return 1.0;
}

Sentence Program::title_words() const {
    const Program* known = built_in_with(title);
    return known == nullptr ? Sentence(title) : Sentence(Phrase{"Core", known->title.c_str()});
}

Sentence Program::source_words() const {
    const Program* known = built_in_with(title);
    if (known == nullptr || known->source != source) return source;
    return Phrase{"reference", known->source.c_str()};
}

Sentence Program::formula() const {
    Sentence text = phrase("budget", "need");
    if (basis != Basis::need) text = {phrase("budget", "(%1) x area"), water_of(*this)};
    if (gallons_per_ft2_inch) {
        text = {phrase("budget", "%1 x %2 gal per ft2 and inch"), text,
                units::format_shortest(*gallons_per_ft2_inch)};
    }
    if (divisor == Divisor::efficiency) {
        text = {phrase("budget", "%1 / efficiency %2"), text, units::format_shortest(divisor_value())};
    } else if (divisor == Divisor::target_du) {
        text = Sentence::joined({text, "(0.4 + 0.6 x " + units::format_shortest(target_du.value()) + ")"}, " / ");
    }
    if (period == Period::year) return {phrase("budget", "budget = %1, by the calendar year"), text};
    return {phrase("budget", "budget = %1, by the month"), text};
}

std::vector<std::string> built_in_program_names() {
    std::vector<std::string> names;
    for (std::string_view path : schemas::names(folder)) {
        path.remove_prefix(folder.size());
        path.remove_suffix(ending.size());
        names.emplace_back(path);
    }
    return names;
}

const Program& built_in_program(std::string_view name) {
    static std::mutex mutex;
    static std::map<std::string, std::unique_ptr<const Program>, std::less<>> programs;
    const std::lock_guard lock(mutex);
    if (const auto it = programs.find(name); it != programs.end()) return *it->second;

    const auto names = built_in_program_names();
    std::string known;
    for (const std::string& one : names) {
        if (one != name) {
            known += (known.empty() ? "" : ", ") + one;
            continue;
        }
        const std::string path = std::string(folder) + one + std::string(ending);
        auto program = std::make_unique<const Program>(read_program(schemas::text(path), path));
        return *programs.emplace(one, std::move(program)).first->second;
    }
    throw InputError(name, {phrase("budget", "a program: %1"), known});
}

}  // namespace evenfall::budget
