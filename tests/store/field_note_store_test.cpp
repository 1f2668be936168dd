// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/catch_test_store.h"
#include "core/store/field_note_store.h"
#include "core/store/site_store.h"
#include "tests/audit/catches.h"
#include "tests/support/scratch.h"

#include <catch2/catch.hpp>

using namespace evenfall;
using namespace evenfall::store;
using evenfall::tests::Scratch;

namespace {

/// With the area A of the site S.
Book book_with_area(const Scratch& scratch) {
    Book book = Book::create(scratch / "b.evenfall");
    site::Site s;
    s.code = s.name = "S";
    s.latitude = 40;
    add_site(book, s, std::nullopt);
    site::Area area;
    area.code = "A";
    area.site = "S";
    area.size = units::parse_measure<units::Area>("2ac");
    add_area(book, area, std::nullopt);
    return book;
}

audit::CatchTest sheet_of(const std::string& code) {
    audit::CatchTest t = test::sheet({10, 11, 12, 13});
    t.code = code;
    t.area = "A";
    t.date = calendar::make_date(2024, 5, 14);
    return t;
}

}  // namespace

TEST_CASE("pressures and findings come back with their test; none noted is not none found", "[store]") {
    const Scratch scratch;
    Book book = book_with_area(scratch);
    audit::CatchTest t = sheet_of("noted");
    audit::PressureReading p;
    p.place = "head 3";
    p.pressure = units::parse_measure<units::Pressure>("48.5psi");
    p.nozzle_low = units::parse_measure<units::Pressure>("3bar");
    t.pressures = std::vector{p};
    audit::Finding f;
    f.kind = "tilted";
    f.place = "row 2";
    f.count = 3;
    f.severity = audit::Severity::severe;
    f.corrected = true;
    f.note = "frost heave";
    t.findings = std::vector{f};
    add_catch_test(book, t, std::nullopt);
    t.code = "nothing noted";
    t.pressures.reset();
    t.findings.reset();
    add_catch_test(book, t, std::nullopt);
    t.code = "nothing found";
    t.findings.emplace();
    add_catch_test(book, t, std::nullopt);

    const auto noted = find_catch_test(book, "noted");
    REQUIRE((noted && noted->pressures && noted->findings));
    REQUIRE(noted->pressures->size() == 1);
    CHECK(noted->pressures->front().pressure.text() == "48.5 psi");
    CHECK(noted->pressures->front().nozzle_low->text() == "3 bar");
    CHECK_FALSE(noted->pressures->front().nozzle_high.has_value());
    REQUIRE(noted->findings->size() == 1);
    CHECK(noted->findings->front().kind == "tilted");
    CHECK(noted->findings->front().count == 3);
    CHECK(noted->findings->front().severity == audit::Severity::severe);
    CHECK(noted->findings->front().corrected);
    CHECK(noted->findings->front().note == "frost heave");
    CHECK_FALSE(find_catch_test(book, "nothing noted")->findings.has_value());
    REQUIRE(find_catch_test(book, "nothing found")->findings.has_value());
    CHECK(find_catch_test(book, "nothing found")->findings->empty());
}

TEST_CASE("the notes of a test are replaced as a whole; what was measured stays", "[store]") {
    const Scratch scratch;
    Book book = book_with_area(scratch);
    audit::CatchTest t = sheet_of("T");
    t.pressures = {{"head 3", units::parse_measure<units::Pressure>("48.5psi"), {}, {}}, {"head 4", units::parse_measure<units::Pressure>("50psi"), {}, {}}};
    add_catch_test(book, t, std::nullopt);

    t.pressures = {{"head 9", units::parse_measure<units::Pressure>("3bar"), {}, {}}};
    t.findings.emplace();
    t.catches.clear();
    set_field_notes(book, t);
    const auto after = find_catch_test(book, "T");
    REQUIRE((after && after->pressures && after->findings));
    REQUIRE(after->pressures->size() == 1);
    CHECK(after->pressures->front().place == "head 9");
    CHECK(after->findings->empty());
    CHECK(after->catches.size() == 4);

    t.pressures.reset();
    t.findings.reset();
    set_field_notes(book, t);
    CHECK_FALSE(find_catch_test(book, "T")->pressures.has_value());
    CHECK_FALSE(find_catch_test(book, "T")->findings.has_value());
    t.code = "not there";
    CHECK_THROWS_AS(set_field_notes(book, t), BookError);
}
