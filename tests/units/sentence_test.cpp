// SPDX-License-Identifier: GPL-3.0-or-later
// Sentences of the core: their English is put together here, other languages from the same parts.
#include "core/input_error.h"
#include "core/sentence.h"
#include "core/sentences.h"

#include <catch2/catch.hpp>
#include <sstream>

using evenfall::Issue;
using evenfall::InputError;
using evenfall::phrase;
using evenfall::places_in;
using evenfall::printable_sentence;
using evenfall::Sentence;

TEST_CASE("the values stand at their places, whatever their order and kind", "[units]") {
    const Sentence cans(phrase("audit", "%2 of %1 cans"), 24, "three");
    CHECK(cans == "three of 24 cans");
    CHECK(cans.form().english() == "%2 of %1 cans");
    CHECK(cans.values().at(1) == "three");
    const Sentence nested(phrase("audit", "the test: %1"), cans);
    CHECK(nested == "the test: three of 24 cans");
    CHECK(nested.values().at(0).form().english() == "%2 of %1 cans");
}

TEST_CASE("a per cent sign is no place, and a value is not searched for places", "[units]") {
    CHECK(places_in("within 5 % of %1") == 1);
    CHECK(places_in("100 %") == 0);
    CHECK(Sentence(phrase("audit", "within 5 % of %1"), "%1 and %2") == "within 5 % of %1 and %2");
}

TEST_CASE("parts are joined, and an empty sentence is empty", "[units]") {
    CHECK(Sentence().empty());
    CHECK(Sentence::joined({}, ", ").empty());
    const auto joined = Sentence::joined({phrase("core", "one"), "two"}, ", ");
    CHECK(joined == "one, two");
    CHECK(joined.values().size() == 2);
    CHECK(joined.with({"1", "2"}) == "1, 2");
    std::ostringstream out;
    out << joined;
    CHECK(out.str() == "one, two");
}

TEST_CASE("what a stranger wrote is made fit for a line, within a form too", "[units]") {
    const Sentence head(phrase("plan", "head %1"), std::string("a\nb\x01"));
    CHECK(printable_sentence(head) == "head a\\x0Ab\\x01");
    std::string cut(80, 'x');
    cut.append("...");
    CHECK(printable_sentence(Sentence(std::string(100, 'x'))) == cut);
    // As one text: parts that are short enough alone may be too long together.
    const Sentence parts(phrase("plan", "%1 and %2"), std::string(60, 'x'), std::string(60, 'y'));
    CHECK(printable_sentence(parts) == evenfall::printable(parts.english()));
    CHECK(printable_sentence(parts).values().empty());
    CHECK(printable_sentence(parts, 200).values().size() == 2);
    CHECK(Issue{{"f.csv", 3, "arc"}, head, phrase("core", "none")}.text() ==
          "f.csv, row 3, column arc: found \"head a\\x0Ab\\x01\", expected none");
}

TEST_CASE("an error keeps its sentences", "[units]") {
    const InputError error(Sentence(phrase("plan", "more than %1 heads"), 9), phrase("plan", "a smaller plan"));
    CHECK(std::string(error.what()) == "found \"more than 9 heads\", expected a smaller plan");
    CHECK(error.issues().front().sentence().values().at(0).form().english() == "more than %1 heads");
}

TEST_CASE("an error is one sentence that reads as its message", "[units]") {
    const Issue issue{{"f.csv", 3, "arc"}, "12x", phrase("core", "a number")};
    for (const std::size_t n : {1U, 2U, 20U, 23U}) {
        const InputError error(std::vector<Issue>(n, issue));
        CHECK(evenfall::sentence_of(error) == std::string(error.what()));
    }
    CHECK(evenfall::sentence_of(InputError(issue)).values().back().values().back().form().english() == "a number");
    std::vector<Sentence> once;
    for (const char* text : {"a", "", "b", "a"}) evenfall::add_once(once, text);
    CHECK(evenfall::english_of(once) == std::vector<std::string>{"a", "b"});
}
