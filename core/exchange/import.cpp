// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/import.h"

#include "core/exchange/bag_digest.h"
#include "core/exchange/conflict_table.h"
#include "core/exchange/conflict_words.h"
#include "core/exchange/csv_reader.h"
#include "core/exchange/gis_loader.h"
#include "core/exchange/import_run.h"
#include "core/exchange/table_map.h"
#include "core/store/journal_store.h"

#include <algorithm>
#include <cassert>
#include <numeric>

namespace evenfall::exchange {
namespace {

/// A file that was opened and whose columns are known.
struct OpenFile {
    std::unique_ptr<RowSource> rows;
    std::optional<ColumnIndex> columns;
    CellFormat format;
};

std::unique_ptr<RowSource> rows_of(const std::filesystem::path& path, const TableMap& map) {
    switch (form_of(path)) {
        case FileForm::workbook: return workbook_rows(path, map.sheet);
        case FileForm::map: return outline_rows(path, map);
        case FileForm::text: break;
    }
    return std::make_unique<CsvReader>(path, map.delimiter);
}

OpenFile open_file(const std::filesystem::path& path, const ImportOptions& options,
                   const TableMap& map, Kind& kind) {
    OpenFile file;
    file.rows = mapped(rows_of(path, map), map);
    file.format = map.format;
    if (map.kind) kind = *map.kind;
    else kind = options.kind ? *options.kind : kind_of_header(file.rows->header(), file.rows->file());
    file.columns.emplace(spec_of(kind), file.rows->header(), file.rows->file(), file.rows->row());
    return file;
}

void import_kind(ImportRun& run) {
    switch (run.result.kind) {
        case Kind::sites: import_sites(run); return;
        case Kind::meters: import_meters(run); return;
        case Kind::exchanges: import_exchanges(run); return;
        case Kind::areas: import_areas(run); return;
        case Kind::weather_stations: import_stations(run); return;
        case Kind::readings: import_readings(run); return;
        case Kind::weather: import_weather(run); return;
        case Kind::hourly_weather: import_hourly_weather(run); return;
        case Kind::catches: import_catches(run); return;
        case Kind::pressures: import_pressures(run); return;
        case Kind::findings: import_findings(run); return;
        case Kind::bills: import_bills(run); return;
        case Kind::plantings: import_plantings(run); return;
        case Kind::prices: import_prices(run); return;
        case Kind::energy: import_energy(run); return;
        case Kind::pumps: import_pumps(run); return;
        case Kind::stations: import_controller_stations(run); return;
        case Kind::watering_rules: import_watering_rules(run); return;
        case Kind::area_settings: import_area_settings(run); return;
    }
}

void refuse_file(ImportResult& result, const InputError& error) {
    result.complete = false;
    for (Issue issue : error.issues()) {
        if (issue.place.file.empty()) issue.place.file = result.file;
        result.issues.push_back(std::move(issue));
    }
}

/// How many records a file changed.
std::size_t changed(const ImportResult& r) { return r.added + r.replaced; }

/// What all files of a call share.
struct Shared {
    std::unique_ptr<RejectsWriter> rejects;
    std::unique_ptr<Choices> choices;
    std::unique_ptr<store::ConflictRows> listed;
};

void note_decided_before(ImportRun& run) {
    const std::size_t n = run.result.decided_before;
    if (n == 0) return;
    if (n == 1) {
        run.note(phrase("exchange", "1 value was replaced or set aside before, and what the book has stands. To take the "
                                    "file's all the same, choose so for the record."));
    } else {
        run.note({phrase("exchange", "%1 values were replaced or set aside before, and what the book has stands. To take the "
                                     "file's all the same, choose so for the record."),
                  n});
    }
}

void import_one(store::Book& book, const ImportOptions& options, OpenFile& file,
                ImportResult& result, const Shared& shared) {
    const std::string name = std::filesystem::path(result.file).filename().string();
    const std::string kind(name_of(result.kind));
    const std::int64_t import = store::add_import(book, {name, kind, "", options.at, 0});
    ImportRun run{book,   options, *file.rows,           *file.columns,        file.format,
                  import, result,  shared.rejects.get(), shared.choices.get(), shared.listed.get()};
    try {
        import_kind(run);
    } catch (const InputError& e) {
        refuse_file(result, e);
        return;
    }
    note_decided_before(run);
    store::set_import_added(book, import, static_cast<std::int64_t>(changed(result)));
    // Only now: of a file that is refused on its way no more is read than it takes to refuse it.
    store::set_import_digest(book, import, sha256_of_file(result.file));
    if (changed(result) > 0) {
        store::add_journal_entry(book, {options.at, options.who,
                                        "Imported " + std::to_string(result.added) + " new and " +
                                            std::to_string(result.replaced) + " corrected " + kind,
                                        "file " + name, ""});
    }
}

bool all_read(const std::vector<ImportResult>& results, const ImportOptions& options) {
    return std::all_of(results.begin(), results.end(), [&](const ImportResult& r) {
        return r.complete && (r.rejected == 0 || options.accept_rest);
    });
}

bool acceptable(const std::vector<ImportResult>& results, const ImportOptions& options) {
    return all_read(results, options) &&
           std::all_of(results.begin(), results.end(), [](const ImportResult& r) { return r.open == 0; });
}

/// The map of each file.
std::vector<TableMap> maps_of(const ImportOptions& options, std::size_t files) {
    assert(options.maps.empty() || options.maps.size() == files);
    std::vector<TableMap> maps(files, options.map ? read_table_map(*options.map) : TableMap{});
    for (std::size_t i = 0; i < options.maps.size(); ++i) maps[i] = read_table_map(options.maps[i]);
    for (const TableMap& map : maps) {
        if (!map.kind || !options.kind || *map.kind == *options.kind) continue;
        throw InputError(std::string(name_of(*options.kind)),
                         {phrase("exchange", "the kind that the map names, %1"), name_of(*map.kind)});
    }
    return maps;
}

}  // namespace

std::vector<ImportResult> import_files(store::Book& book,
                                       std::span<const std::filesystem::path> files,
                                       const ImportOptions& options) {
    const std::vector<TableMap> maps = maps_of(options, files.size());
    std::vector<ImportResult> results(files.size());
    std::vector<OpenFile> open(files.size());
    for (std::size_t i = 0; i < files.size(); ++i) {
        results[i].file = files[i].string();
        try {
            open[i] = open_file(files[i], options, maps[i], results[i].kind);
        } catch (const InputError& e) {
            refuse_file(results[i], e);
        }
    }
    const bool all_open = std::all_of(results.begin(), results.end(),
                                      [](const ImportResult& r) { return r.complete; });
    if (!all_open) return results;

    std::vector<std::size_t> order(files.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        return results[a].kind < results[b].kind;
    });
    Shared shared;
    if (options.rejects) shared.rejects = std::make_unique<RejectsWriter>(*options.rejects);
    if (options.choices) shared.choices = std::make_unique<Choices>(*options.choices);
    if (options.list_conflicts) shared.listed = std::make_unique<store::ConflictRows>();
    store::Transaction transaction(book);
    for (std::size_t i : order) import_one(book, options, open[i], results[i], shared);
    if (shared.rejects) shared.rejects->finish();
    if (shared.listed) write_conflicts(*options.list_conflicts, *shared.listed);
    // A row that was refused may be the one that a choice is about: the refusal comes first then.
    if (shared.choices && all_read(results, options)) shared.choices->require_used(book);

    const bool something = std::any_of(results.begin(), results.end(), [](const ImportResult& r) {
        return changed(r) > 0 || r.conflicts > 0;
    });
    if (options.dry_run || !acceptable(results, options)) return results;
    // Nothing new: the transaction is rolled back, and the book stays as it is to the byte.
    if (something) transaction.commit();
    for (ImportResult& r : results) r.stored = true;
    return results;
}

void require_accepted(std::span<const ImportResult> results) {
    std::vector<Issue> issues;
    bool stored = true;
    for (const ImportResult& r : results) {
        stored = stored && r.stored;
        issues.insert(issues.end(), r.issues.begin(), r.issues.end());
        for (const Conflict& c : r.conflict_list) {
            if (c.stands != store::Stands::undecided) continue;
            issues.push_back({c.place, value_words(c.record, c.in_file),
                              {phrase("exchange", "%1 as the book has it for the %2, or an explicit choice which of "
                                                  "the two stands"), value_words(c.record, c.in_book), record_words(c.record)}});
        }
    }
    if (!stored && !issues.empty()) throw InputError(std::move(issues));
}

}  // namespace evenfall::exchange
