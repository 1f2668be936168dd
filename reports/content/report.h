// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reports/content/chart.h"
#include "reports/content/table.h"

#include <string>
#include <variant>
#include <vector>

/// What a report says. It is built once from results of the core and then drawn by the writers
/// (text, CSV, JSON, workbook, print), none of which computes a figure of its own.
/// Order on paper: title, caution, answer, sections, notes, data gaps, signatures.
/// Tests: tests/reports/content_test.cpp
namespace evenfall::reports {

enum class UnitsShown { us, metric };

struct Paragraph {
    std::string text;
    bool operator==(const Paragraph&) const = default;
};

using Block = std::variant<Paragraph, Table, Chart>;

struct Section {
    std::string key;    ///< names the sheet of the workbook: at most 31 characters of a-z, 0-9, "_"
    std::string title;
    std::vector<Block> blocks;
    bool operator==(const Section&) const = default;
};

/// How a figure came about.
struct Note {
    std::string subject;     ///< the figure
    std::string method;
    std::string convention;  ///< empty when there is no choice
    std::string source;
    bool assumed = false;    ///< an input was assumed, not measured
    bool operator==(const Note&) const = default;
};

/// One thing to put right, and what that is worth.
struct Fix {
    std::string what;    ///< "Repair the leak on meter M-2"
    std::string why;     ///< the evidence, in one or two sentences
    Cell water;          ///< with unit; unknown when it cannot be told
    Cell money;
    bool operator==(const Fix&) const = default;
};

/// The page that answers in plain words.
struct Answer {
    std::vector<std::string> sentences;
    Table figures;           ///< the few figures the words rest on; may have no rows
    std::vector<Fix> fixes;  ///< most valuable first, at most three
    bool operator==(const Answer&) const = default;
};

struct Caution {
    std::string title;
    std::vector<std::string> paragraphs;
    bool operator==(const Caution&) const = default;
};

/// Typed by the person who signs; nothing is implied. Empty text leaves a line to write on.
struct Signature {
    std::string role;
    std::string name;
    std::string certification;  ///< number, as typed
    std::string expires;        ///< as typed
    bool operator==(const Signature&) const = default;
};

struct Report {
    std::string kind;      ///< audit, season, portfolio, plan, review
    std::string title;
    std::string subtitle;  ///< site, period
    std::string organisation;
    std::string created;   ///< ISO 8601 instant, "2024-02-29T13:30:00Z"
    std::string program;   ///< program and version that made it
    Caution caution;
    Answer answer;
    std::vector<Section> sections;
    std::vector<Note> notes;
    std::vector<std::string> gaps;  ///< what is missing in the data, one sentence each
    std::vector<Signature> signatures;
    std::vector<RawTable> raw_tables;
    /// Sheets to scale that follow the pages of a PDF, each of its own size: SVG as
    /// reports/text/svg_page.h writes it.
    std::vector<std::string> sheets;

    /// The table of that key, in the sections or on the answer page; null when there is none.
    const Table* find_table(std::string_view key) const;
    /// All tables in the order of the paper.
    std::vector<const Table*> tables() const;
};

/// Whether a chart has any value to draw; without one, writers put this sentence in its place.
bool has_values(const Chart& chart, const Report& report);
inline constexpr const char* nothing_to_draw = "There are no data to draw.";

/// "Worth 56,215 gal of water, 272.64 USD", or that it is not known.
std::string worth(const Fix& fix);

/// What to fix first and how figures came about, as tables for writers that want them so.
/// Keys: fixes (rank, what, why, water, money); notes (subject, method, convention, source, basis).
Table fixes_table(const Answer& answer);
Table notes_table(const std::vector<Note>& notes);

/// The caution page that every report carries.
/// Wording of our own; the duties it points to are set by local codes and licensed practice.
Caution usual_caution();

/// Looks for mistakes of the builder and for input that would spoil a file.
/// @throws InputError     text that is not UTF-8 or holds control characters, numbers that are not
///                        finite; the place names table, row and column
/// @throws std::logic_error  ragged rows, double keys, formulas or charts that point at nothing,
///                        charts without a sentence
void check(const Report& report);

}  // namespace evenfall::reports
