// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/review/application.h"

#include <catch2/catch.hpp>

using namespace evenfall::review;

TEST_CASE("the steps of an application", "[review][constructed]") {
    CHECK(may_follow(Status::received, Status::under_review));
    CHECK(may_follow(Status::approved, Status::paid));
    CHECK(may_follow(Status::declined, Status::under_review));
    CHECK_FALSE(may_follow(Status::received, Status::paid));
    CHECK_FALSE(may_follow(Status::declined, Status::paid));
    CHECK_FALSE(may_follow(Status::paid, Status::approved));
    for (int s = 1; s <= 6; ++s) {
        const auto status = static_cast<Status>(s);
        CHECK(status_named(text_of(status).english()) == status);
    }
    CHECK_FALSE(status_named("lost"));
}

TEST_CASE("budget left", "[review][constructed]") {
    Application a;
    a.history = {{{}, "x", Status::received, "", {}}, {{}, "x", Status::approved, "", 300.0}, {{}, "x", Status::paid, "", 250.0}};
    Application b;
    b.history = {{{}, "x", Status::approved, "", 100.0}, {{}, "x", Status::under_review, "", {}}};
    Application c;
    c.history = {{{}, "x", Status::approved, "", 50.0}};
    CHECK(budget_left(1000.0, {a, b, c}) == 700.0);
    CHECK(Application{}.status() == Status::received);
}
