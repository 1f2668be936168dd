// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/options.h"
#include "core/input_error.h"

#include <CLI/CLI.hpp>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <vector>

/// Options that several commands have in common, and quantities that carry their unit. The only
/// header that includes CLI11, which is slow to compile: the files that use it are built as one.
namespace evenfall::cli {

/// What was asked for, once a command has been read.
using Result = std::optional<Invocation>;

/// Reads a quantity with its unit into `target`; the unit is part of the text.
template <class Q, class Target>
CLI::Option* add_measure(CLI::App* cmd, const std::string& name, Target& target,
                         const std::string& help) {
    return cmd
        ->add_option_function<std::string>(
            name,
            [&target, name](const std::string& text) {
                try {
                    target = units::parse_measure<Q>(text);
                } catch (const InputError& e) {
                    throw CLI::ValidationError(name, e.what());
                }
            },
            help)
        ->type_name("QUANTITY");
}

template <class Target>
CLI::Option* add_month(CLI::App* cmd, const std::string& name, Target& target,
                       const std::string& help) {
    return cmd
        ->add_option_function<std::string>(
            name,
            [&target, name](const std::string& text) {
                const auto month = calendar::parse_month(text);
                if (!month) throw CLI::ValidationError(name, "expected a month such as 2024-07");
                target = *month;
            },
            help)
        ->type_name("YYYY-MM");
}

template <class Target>
CLI::Option* add_date(CLI::App* cmd, const std::string& name, Target& target, const std::string& help) {
    return cmd
        ->add_option_function<std::string>(
            name,
            [&target, name](const std::string& text) {
                const auto date = calendar::parse_date(text);
                if (!date) throw CLI::ValidationError(name, "expected a day such as 2024-07-31");
                target = *date;
            },
            help)
        ->type_name("YYYY-MM-DD");
}

/// @param low,high  the bounds, both allowed
template <class Target>
CLI::Option* add_number(CLI::App* cmd, const std::string& name, Target& target, double low,
                        double high, const std::string& help) {
    return cmd
        ->add_option_function<std::string>(
            name,
            [&target, name, low, high](const std::string& text) {
                const auto value = units::parse_number(text);
                if (!value || *value < low || *value > high) {
                    throw CLI::ValidationError(name, "expected a number from " +
                                                         units::format_shortest(low) + " to " +
                                                         units::format_shortest(high));
                }
                target = *value;
            },
            help)
        ->type_name("NUMBER");
}

inline void add_numbers(CLI::App* cmd, const std::string& name, std::vector<double>& target,
                 const std::string& help) {
    cmd->add_option_function<std::vector<std::string>>(
           name,
           [&target, name](const std::vector<std::string>& texts) {
               for (const std::string& text : texts) {
                   const auto value = units::parse_number(text);
                   if (!value) throw CLI::ValidationError(name, "expected a number");
                   target.push_back(*value);
               }
           },
           help)
        ->type_name("NUMBER ...");
}

/// The option is called minutes, so a bare number is minutes.
inline void add_minutes(CLI::App* cmd, std::optional<units::Typed<units::Duration>>& target) {
    cmd->add_option_function<std::string>(
           "--minutes",
           [&target](const std::string& text) {
               try {
                   if (const auto bare = units::parse_number(text)) {
                       target = units::Typed<units::Duration>{*bare, units::unit_named<units::Duration>("min")};
                   } else {
                       target = units::parse_measure<units::Duration>(text);
                   }
               } catch (const InputError& e) {
                   throw CLI::ValidationError("--minutes", e.what());
               }
           },
           "Run time of the test, such as 20 or 0.5h")
        ->type_name("MINUTES");
}

inline void add_book(CLI::App* cmd, std::string& book) {
    cmd->add_option("book", book, "The record book, a file ending in .evenfall")->required();
}

inline void add_json(CLI::App* cmd, bool& json) {
    cmd->add_flag("--json", json, "Print one JSON object and nothing else");
}

inline void add_rules(CLI::App* cmd, std::string& program, std::string& rain) {
    cmd->add_option("--program", program,
                    "Budget rules: the name of a program that comes with Evenfall, or a JSON file")
        ->capture_default_str();
    cmd->add_option("--rain", rain, "Effective rain: nrcs, none, share:F (such as share:0.25) or balance")
        ->capture_default_str();
}

inline CLI::Option* add_quarter_rule(CLI::App* cmd, std::string& rule) {
    return cmd
        ->add_option("--quarter-rule", rule,
                     "Which cans are the low quarter when their number is no multiple of four")
        ->check(CLI::IsMember({"whole-cans", "nearest", "round-up", "part-can"}))
        ->capture_default_str();
}

/// Makes the options of one command; its callback hands the filled record over.
template <class Options>
std::pair<CLI::App*, Options*> add_command(CLI::App& app, Result& result, const std::string& name,
                                           const std::string& help) {
    auto options = std::make_shared<Options>();
    CLI::App* cmd = app.add_subcommand(name, help);
    cmd->callback([options, &result] { result = *options; });
    return {cmd, options.get()};
}

// arguments_without_book.cpp
void add_uniformity(CLI::App& app, Result& result);
void add_reference_et(CLI::App& app, Result& result);
void add_effective_rain(CLI::App& app, Result& result);
void add_overlap(CLI::App& app, Result& result);
void add_layout(CLI::App& app, Result& result);

}  // namespace evenfall::cli
