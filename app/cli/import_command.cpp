// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/command.h"
#include "app/cli/json_number.h"
#include "app/workflow/moment.h"
#include "core/exchange/import.h"
#include "core/input_error.h"

#include <chrono>
#include <ostream>

namespace evenfall::cli {
namespace {

/// One line on a terminal, rewritten a few times a second.
class ProgressLine {
  public:
    explicit ProgressLine(Streams& streams) : streams_(streams) {}
    ~ProgressLine() {
        if (shown_) streams_.err << "\r\033[K";
    }
    ProgressLine(const ProgressLine&) = delete;
    ProgressLine& operator=(const ProgressLine&) = delete;

    void show(const exchange::ImportProgress& p) {
        if (!streams_.err_is_terminal) return;
        const auto now = std::chrono::steady_clock::now();
        if (p.file != file_) {
            file_ = p.file;
            begun_ = now;
        }
        if (shown_ && now - last_ < std::chrono::milliseconds(200)) return;
        last_ = now;
        shown_ = true;
        const double seconds = std::chrono::duration<double>(now - begun_).count();
        streams_.err << "\r\033[K" << printable(p.file) << "  " << units::format_fixed(100.0 * p.done, 0)
                     << " %  " << units::format_grouped(static_cast<double>(p.rows), 0) << " rows";
        if (seconds > 0.5 && p.done > 0.0) {
            streams_.err << "  " << units::format_grouped(static_cast<double>(p.rows) / seconds, 0)
                         << " rows/s  " << units::format_fixed(seconds * (1.0 - p.done) / p.done, 0)
                         << " s left";
        }
        streams_.err << std::flush;
    }

  private:
    Streams& streams_;
    std::string file_;
    std::chrono::steady_clock::time_point begun_{};
    std::chrono::steady_clock::time_point last_{};
    bool shown_ = false;
};

exchange::ConflictChoice choice_named(const std::string& name) {
    if (name == "keep") return exchange::ConflictChoice::keep;
    if (name == "replace") return exchange::ConflictChoice::replace;
    return exchange::ConflictChoice::refuse;
}

Json word_of(store::Stands stands) {
    switch (stands) {
        case store::Stands::undecided: break;
        case store::Stands::in_book: return "book";
        case store::Stands::in_file: return "file";
    }
    return nullptr;
}

Json result_json(const exchange::ImportResult& r) {
    Json issues = Json::array();
    for (const Issue& i : r.issues) issues.push_back(i.text());
    Json conflicts = Json::array();
    for (const auto& c : r.conflict_list) {
        conflicts.push_back({{"place", c.place.text()}, {"record", c.record}, {"in_book", c.in_book}, {"in_file", c.in_file},
                             {"stands", word_of(c.stands)}});
    }
    return {{"file", r.file},           {"kind", exchange::name_of(r.kind)}, {"read", r.read},
            {"added", r.added},         {"unchanged", r.unchanged},
            {"conflicts", r.conflicts}, {"replaced", r.replaced},
            {"open", r.open},           {"decided_before", r.decided_before},
            {"rejected", r.rejected},   {"stored", r.stored},
            {"conflict_list", std::move(conflicts)}, {"issues", std::move(issues)}};
}

/// The sums over all files, with the files beside them.
Json answer_json(const std::vector<exchange::ImportResult>& results) {
    exchange::ImportResult sum;
    Json files = Json::array();
    for (const auto& r : results) {
        sum.read += r.read;
        sum.added += r.added;
        sum.unchanged += r.unchanged;
        sum.conflicts += r.conflicts;
        sum.rejected += r.rejected;
        files.push_back(result_json(r));
    }
    return {{"kind", results.size() == 1 ? Json(exchange::name_of(results.front().kind)) : Json(nullptr)},
            {"read", sum.read}, {"added", sum.added}, {"unchanged", sum.unchanged},
            {"conflicts", sum.conflicts}, {"rejected", sum.rejected}, {"files", std::move(files)}};
}

void print_text(std::ostream& out, const std::vector<exchange::ImportResult>& results, const ImportOptions& o) {
    bool differing = false;
    for (const auto& r : results) {
        out << r.file << ": " << exchange::name_of(r.kind) << ", " << r.read << " rows read, " << r.added
            << (o.dry_run ? " would be added, " : " added, ") << r.unchanged << " there already";
        if (r.decided_before != 0) out << ", " << r.decided_before << " decided before";
        if (r.conflicts != 0) out << ", " << r.conflicts << " conflicts";
        if (r.open != 0 && r.open != r.conflicts) out << " (" << r.open << " without a choice)";
        if (r.replaced != 0) out << ", " << r.replaced << (o.dry_run ? " would take" : " took") << " the file's value";
        if (r.rejected != 0) out << ", " << r.rejected << " refused";
        out << '\n';
        for (const auto& note : r.notes) out << "  " << note << '\n';
        differing = differing || r.conflicts + r.decided_before != 0;
    }
    if (differing && !o.list_conflicts.empty()) {
        out << "Where book and files differ stands in " << o.list_conflicts
            << "; with book or file in its column choice it goes back in with --choices.\n";
    }
}

}  // namespace

int run(const ImportOptions& o, Streams& streams) {
    auto book = store::Book::open(o.book, store::Access::read_write);
    exchange::ImportOptions options;
    if (!o.kind.empty()) options.kind = exchange::kind_named(o.kind);
    if (!o.map.empty()) options.map = o.map;
    if (!o.rejects.empty()) options.rejects = o.rejects;
    options.dry_run = o.dry_run;
    options.accept_rest = o.accept_rest;
    options.conflicts = choice_named(o.conflicts);
    if (!o.choices.empty()) options.choices = o.choices;
    if (!o.list_conflicts.empty()) options.list_conflicts = o.list_conflicts;
    options.at = workflow::present_moment();
    options.who = o.who.empty() ? workflow::present_user() : o.who;
    std::vector<exchange::ImportResult> results;
    {
        ProgressLine line(streams);
        options.progress = [&](const exchange::ImportProgress& p) { line.show(p); };
        const std::vector<std::filesystem::path> files(o.files.begin(), o.files.end());
        results = exchange::import_files(book, files, options);
    }
    if (!o.dry_run) exchange::require_accepted(results);
    if (o.json) streams.out << print(answer_json(results));
    else print_text(streams.out, results, o);
    return done;
}

}  // namespace evenfall::cli
