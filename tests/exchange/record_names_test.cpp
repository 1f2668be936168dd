// SPDX-License-Identifier: GPL-3.0-or-later
// Names of records as sentences that can be said in another language. All CONSTRUCTED.
#include "core/exchange/record_names.h"

#include <catch2/catch.hpp>

#include <string>
#include <vector>

using namespace evenfall;
using namespace evenfall::exchange;

namespace {

struct Case {
    Sentence name;
    std::vector<std::string> values;
};

}  // namespace

TEST_CASE("a name is told apart into its form and its values", "[exchange][constructed]") {
    const auto c = GENERATE(values<Case>({
        {{record_form::site, "S 1"}, {"S 1"}},
        {{record_form::weather_station, "W"}, {"W"}},
        {{record_form::reading, "M-1", "2024-07-01T13:00:00Z"}, {"M-1", "2024-07-01T13:00:00Z"}},
        {{record_form::volume, "M", "15", "2024-07-01T13:00:00Z"}, {"M", "15", "2024-07-01T13:00:00Z"}},
        {{record_form::day, "W", "2024-07-01"}, {"W", "2024-07-01"}},
        {{record_form::hour, "W", "2024-07-01T13:00:00Z"}, {"W", "2024-07-01T13:00:00Z"}},
        {{record_form::bill, "M", "2024-07-01", "2024-08-01"}, {"M", "2024-07-01", "2024-08-01"}},
        {{record_form::finding, "tilted", "T1", "row 2"}, {"tilted", "T1", "row 2"}},
        {{record_form::finding_nowhere, "tilted", "T1"}, {"tilted", "T1"}},
        {{record_form::findings, "T1"}, {"T1"}},
        {{record_form::planting, "sod", "A-2", "2024-04-10"}, {"sod", "A-2", "2024-04-10"}},
        {{record_form::outline, "A"}, {"A"}},
    }));
    CAPTURE(c.name.english());
    const Sentence found = record_sentence(c.name.english());
    CHECK(found.english() == c.name.english());
    CHECK(std::string(found.form().english()) == std::string(c.name.form().english()));
    REQUIRE(found.values().size() == c.values.size());
    for (std::size_t i = 0; i < c.values.size(); ++i) CHECK(found.values()[i] == c.values[i]);
}

TEST_CASE("any other text stays as it is", "[exchange][constructed]") {
    for (const char* text : {"", "site", "site ", "reading of M", "reading of  at ", "%1", "bill of M from 2024-07-01", "%1 of area %2 from %3"}) {
        CAPTURE(text);
        CHECK(record_sentence(text).english() == text);
    }
    CHECK(record_sentence("reading of M").form().english().empty());
}
