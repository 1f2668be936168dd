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

std::string rain_text(const Program& program) {
    switch (program.rain_credit) {
        case RainCredit::effective: return " - effective rain";
        case RainCredit::share:
            return " - " + units::format_shortest(program.rain_share.value()) + " x rain";
        case RainCredit::none: break;
    }
    return "";
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

std::string Program::formula() const {
    std::string text = "budget = ";
    if (basis == Basis::need) {
        text += "need";
    } else {
        text += "(ETo x " + units::format_shortest(factor.value());
        if (special_factor) {
            text += ", special areas x " + units::format_shortest(*special_factor);
        }
        text += rain_text(*this) + ") x area";
    }
    if (gallons_per_ft2_inch) {
        text += " x " + units::format_shortest(*gallons_per_ft2_inch) + " gal per ft2 and inch";
    }
    if (divisor == Divisor::efficiency) {
        text += " / efficiency " + units::format_shortest(divisor_value());
    } else if (divisor == Divisor::target_du) {
        text += " / (0.4 + 0.6 x " + units::format_shortest(target_du.value()) + ")";
    }
    return text + (period == Period::year ? ", by the calendar year" : ", by the month");
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
    throw InputError(std::string(name), "a program: " + known);
}

}  // namespace evenfall::budget
