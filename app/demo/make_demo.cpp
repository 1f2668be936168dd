// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/demo/make_demo.h"

#include "app/demo/desk.h"
#include "app/demo/scenario.h"
#include "app/workflow/reports.h"
#include "app/workflow/write_report.h"
#include "core/exchange/import.h"
#include "core/sentence_error.h"
#include "core/store/journal_store.h"
#include "core/store/site_store.h"

#include <fstream>

namespace evenfall::demo {
namespace {

namespace fs = std::filesystem;

/// The scenario ends with 2025; its reports are dated soon after, so that the demo gives the same
/// bytes on any day.
constexpr const char* scenario_moment = "2026-01-05T17:00:00Z";
constexpr const char* first_entry = "The demo book was made; everything in it is invented.";

store::Book fresh_book(const fs::path& file) {
    if (fs::exists(file)) {
        // Only a book that the demo itself made may be replaced.
        const auto entries = store::journal(store::Book::open(file, store::Access::read_only));
        if (entries.empty() || entries.front().what != first_entry) {
            throw store::BookError({phrase("workflow", "The book %1 was not made by the demo; give the demo another folder."),
                                    file.string()});
        }
        for (const char* tail : {"", "-wal", "-shm"}) fs::remove(fs::path(file.string() + tail));
    }
    store::Book book = store::Book::create(file);
    store::Transaction transaction(book);
    store::add_journal_entry(book, {scenario_moment, "evenfall demo", first_entry, "book", ""});
    transaction.commit();
    return book;
}

std::vector<fs::path> write_tables(const fs::path& folder) {
    fs::create_directories(folder);
    std::vector<fs::path> files;
    for (const TableFile& table : scenario_files()) {
        files.push_back(folder / table.name);
        std::ofstream out(files.back(), std::ios::binary | std::ios::trunc);
        out << table.text;
        out.close();
        if (!out) throw SentenceError({phrase("workflow", "could not write %1"), files.back().string()});
    }
    return files;
}

}  // namespace

DemoOutcome make_demo(const fs::path& out, const std::vector<std::string>& formats,
                      const fs::path& print_program) {
    fs::create_directories(out);
    const auto files = write_tables(out / "data");
    store::Book book = fresh_book(out / "demo.evenfall");
    exchange::ImportOptions options;
    options.at = scenario_moment;
    options.who = "evenfall demo";
    exchange::require_accepted(exchange::import_files(book, files, options));
    add_desk(book, options.at, options.who);

    DemoOutcome outcome{book.file(), {}};
    reports::Frame frame{reports::UnitsShown::us, "", scenario_moment, "Evenfall " EVENFALL_VERSION, {}};
    const auto write = [&](const reports::Report& report, const std::string& name) {
        workflow::ReportOrder order{formats, out / "reports", name, "letter", print_program};
        for (auto& file : workflow::write_report(report, order)) outcome.reports.push_back(std::move(file));
    };
    for (const site::Site& s : store::sites(book)) {
        const workflow::SeasonQuestion season{s.code,    first_month, last_month,
                                              "general", "nrcs",      audit::QuarterRule::whole_cans};
        write(workflow::season_report_of(book, season, frame), "season-" + s.code);
        write(workflow::audit_report_of_site(book, s.code, audit::QuarterRule::whole_cans, frame),
              "audit-" + s.code);
    }
    return outcome;
}

}  // namespace evenfall::demo
