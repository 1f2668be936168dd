// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/import.h"
#include "core/exchange/import_choices.h"
#include "core/exchange/record_names.h"
#include "core/exchange/records.h"
#include "core/exchange/row_reader.h"
#include "core/exchange/row_source.h"

#include <cstdint>
#include <functional>
#include <memory>
#include <span>
#include <string>
#include <string_view>
#include <unordered_map>
#include <utility>
#include <vector>

/// Shared by the importers of each kind; not for use outside core/exchange.
namespace evenfall::exchange {

/// What a row should have named.
inline constexpr Phrase site_expected = phrase("exchange", "the code of a site in the book or among these files");
inline constexpr Phrase meter_expected = phrase("exchange", "the code of a meter in the book or among these files");
inline constexpr Phrase area_expected = phrase("exchange", "the code of an area in the book or among these files");

/// Writes refused rows with their reason, as CSV, for correcting and importing again.
class RejectsWriter {
  public:
    /// @throws InputError when the file cannot be written
    explicit RejectsWriter(const std::filesystem::path& path);
    ~RejectsWriter();
    RejectsWriter(const RejectsWriter&) = delete;
    RejectsWriter& operator=(const RejectsWriter&) = delete;
    /// The first row of each source file is preceded by its header.
    /// @param row  of the file; `cells` are as many as the header of `rows` has
    void add(const RowSource& rows, std::size_t row, std::span<const std::string_view> cells,
             const std::string& reason);
    /// Puts the file in place. @throws InputError when the disk is full
    void finish();

  private:
    struct Impl;
    std::unique_ptr<Impl> impl_;
};

/// Fields of a record as text, to compare and to show: {"name", "North block"}.
using Fields = std::vector<std::pair<std::string, std::string>>;
Fields fields_of(const site::Site& s);
Fields fields_of(const site::Area& a);
Fields fields_of(const meter::Meter& m);
Fields fields_of(const store::WeatherStation& s);
Fields fields_of(const audit::CatchTest& t);
Fields fields_of(const meter::Exchange& x);

/// A row as it stood, to be refused when others have been read. Without its cells when refused rows
/// are only listed.
struct KeptRow {
    std::size_t row = 0;
    std::vector<std::string> cells{};
};

/// One file on its way into the book.
struct ImportRun {
    store::Book& book;
    const ImportOptions& options;
    RowSource& rows;
    const ColumnIndex& columns;
    const CellFormat& format;
    std::int64_t import;
    ImportResult& result;
    RejectsWriter* rejects;  ///< null: refused rows are only listed
    Choices* choices;        ///< null: no table of choices
    store::ConflictRows* listed;  ///< all conflicts; null: only the first are listed

    /// Reads every row; `use` may refuse it by its reader. Counts, rejects, reports progress.
    void each_row(const std::function<void(RowReader&)>& use);
    void refuse_row(const std::vector<Issue>& issues);
    KeptRow keep_row() const;  ///< the current one
    /// For what only shows after all rows are read: the rows are counted, and written out with the
    /// issue as their reason.
    void refuse_later(std::span<const KeptRow> kept, Issue issue);
    void refuse_later(const KeptRow& kept, Issue issue) { refuse_later(std::span(&kept, 1), std::move(issue)); }
    /// Rows that stay out because of others that were refused, and so make no issue of their own.
    void leave_out(std::span<const KeptRow> kept, const std::string& reason);
    void note(Sentence text) { result.notes.push_back(std::move(text)); }

    /// A record that the book has in another form. True when the file's is to be stored.
    /// @param superseded  an earlier revision of the record has the file's value
    bool settle(const Place& place, const std::string& record, const std::string& in_book,
                const std::string& in_file, bool superseded = false);
    /// The same for records with fields; nothing when they agree.
    std::optional<bool> settle_fields(const Place& place, const std::string& record,
                                      const Fields& in_book, const Fields& in_file);

  private:
    void write_kept(std::span<const KeptRow> kept, const std::string& reason);
    Before known_before(const Conflict& conflict) const;
    store::Stands general_choice(Before before) const;
    void list(Conflict conflict, store::Stands chosen);
    void write_journal(const Conflict& conflict, bool one_by_one);
};

void import_sites(ImportRun& run);
void import_meters(ImportRun& run);
void import_exchanges(ImportRun& run);
void import_areas(ImportRun& run);
void import_stations(ImportRun& run);
void import_readings(ImportRun& run);
void import_weather(ImportRun& run);
void import_hourly_weather(ImportRun& run);
void import_catches(ImportRun& run);
void import_pressures(ImportRun& run);
void import_findings(ImportRun& run);
void import_bills(ImportRun& run);
void import_plantings(ImportRun& run);
void import_prices(ImportRun& run);
void import_energy(ImportRun& run);
void import_pumps(ImportRun& run);
void import_controller_stations(ImportRun& run);
void import_watering_rules(ImportRun& run);
void import_area_settings(ImportRun& run);

}  // namespace evenfall::exchange
