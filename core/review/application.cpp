// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/review/application.h"

#include <algorithm>
#include <array>
#include <utility>

namespace evenfall::review {
namespace {

constexpr std::array words{
    std::pair{Status::received, phrase("review", "received")},
    std::pair{Status::incomplete, phrase("review", "incomplete")},
    std::pair{Status::under_review, phrase("review", "under review")},
    std::pair{Status::approved, phrase("review", "approved")},
    std::pair{Status::declined, phrase("review", "declined")},
    std::pair{Status::paid, phrase("review", "paid")}};

constexpr std::array steps{
    std::pair{Status::received, Status::incomplete},   std::pair{Status::received, Status::under_review},
    std::pair{Status::received, Status::approved},     std::pair{Status::received, Status::declined},
    std::pair{Status::incomplete, Status::received},   std::pair{Status::incomplete, Status::under_review},
    std::pair{Status::incomplete, Status::declined},   std::pair{Status::under_review, Status::incomplete},
    std::pair{Status::under_review, Status::approved}, std::pair{Status::under_review, Status::declined},
    std::pair{Status::approved, Status::paid},         std::pair{Status::approved, Status::under_review},
    std::pair{Status::declined, Status::under_review}};

}  // namespace

Phrase text_of(Status status) {
    for (const auto& [value, word] : words) {
        if (value == status) return word;
    }
    return {};
}

std::optional<Status> status_named(std::string_view text) {
    for (const auto& [value, word] : words) {
        if (text == word.english()) return value;
    }
    return std::nullopt;
}

bool may_follow(Status from, Status to) {
    return std::find(steps.begin(), steps.end(), std::pair{from, to}) != steps.end();
}

Status Application::status() const { return history.empty() ? Status::received : history.back().status; }

double budget_left(double budget, const std::vector<Application>& of_the_program) {
    double left = budget;
    for (const Application& a : of_the_program) {
        const Status status = a.status();
        if (status == Status::approved || status == Status::paid) left -= a.history.back().amount.value_or(0.0);
    }
    return left;
}

}  // namespace evenfall::review
