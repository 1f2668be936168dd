// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/calendar/time_zone.h"
#include "core/exchange/import_run.h"
#include "core/store/meter_store.h"
#include "core/store/reading_writer.h"
#include "core/store/site_store.h"
#include "core/units/number.h"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace evenfall::exchange {
namespace {

using calendar::Instant;
using meter::Reading;
using meter::ReadingKind;
using store::ReadingWriter;

/// Readings that are sorted and stored together. 40 bytes each: some 20 MB.
constexpr std::size_t batch_size = 500'000;
constexpr std::chrono::seconds longest_span = std::chrono::days{400};

struct Known {
    std::int64_t id;
    std::string code;
    calendar::TimeZone zone;
    std::optional<Instant> installed;
    std::optional<Instant> removed;
    double most;  ///< counts of its largest register
};

struct Pending {
    std::int64_t meter;
    std::int64_t at;
    double value;
    std::uint32_t span;
    std::uint32_t row;
    std::uint32_t known;
    std::uint8_t kind;

    auto key() const { return std::tuple(meter, at, span, row); }
};

struct TextHash {
    using is_transparent = void;
    std::size_t operator()(std::string_view s) const { return std::hash<std::string_view>{}(s); }
};

class ReadingImport {
  public:
    explicit ReadingImport(ImportRun& run)
        : run_(run),
          writer_(run.book, run.import),
          has_register_(run.columns.has("register")),
          has_volume_(run.columns.has("volume")),
          has_start_(run.columns.has("start")) {
        if (has_register_ && has_volume_) {
            throw InputError(Issue{{run.rows.file(), run.rows.row(), "volume"},
                                   phrase("exchange", "register and volume"),
                                   phrase("exchange", "either registers or volumes in one table")});
        }
        batch_.reserve(batch_size);
        meter_cell_ = run.columns.find("meter")->index;
        plain_ = has_register_ && run.format.decimal_mark == '.' &&
                 run.format.date_order == DateOrder::iso && run.format.missing.empty();
        if (plain_) {
            time_cell_ = run.columns.find("time")->index;
            value_cell_ = run.columns.find("register")->index;
            if (const auto* kind = run.columns.find("kind")) kind_cell_ = kind->index;
        }
    }

    void take(RowReader& row) {
        if (plain_ && take_plain(row.row())) return;
        const Known* meter = known(row);
        const auto span = read_span(row, meter);
        const auto value = read_value(row, meter);
        const ReadingKind kind = read_kind(row);
        if (!row.ok()) return;
        batch_.push_back({meter->id, span->second.time_since_epoch().count(), *value,
                          static_cast<std::uint32_t>(span->first.count()),
                          static_cast<std::uint32_t>(row.row()),
                          static_cast<std::uint32_t>(meter - meters_.data()),
                          static_cast<std::uint8_t>(kind)});
        if (batch_.size() == batch_size) flush();
    }

    void finish() {
        flush();
        if (date_only_ > 0) {
            run_.note({phrase("exchange", "%1: %2 readings have a date without a time; each is taken at the start of its "
                                          "day, 00:00 on the site's clock."),
                       run_.rows.file(), date_only_});
        }
    }

  private:
    /// The usual row, a good register reading with nothing odd about it, without the search for
    /// columns by name. False for any other row: the careful way then says what is wrong with it.
    bool take_plain(std::size_t row) {
        const auto cells = run_.rows.cells();
        const std::string_view code = cells[meter_cell_];
        if (last_ >= meters_.size() || meters_[last_].code != code) {
            const auto found = index_.find(code);
            if (found == index_.end()) return false;
            last_ = found->second;
        }
        const Known& meter = meters_[last_];
        if (kind_cell_ && !cells[*kind_cell_].empty() && cells[*kind_cell_] != "measured") return false;
        const auto value = units::parse_number(cells[value_cell_]);
        if (!value || *value < 0 || *value >= meter.most) return false;
        const auto at = plain_instant(cells[time_cell_], meter);
        if (!at || (meter.installed && *at < *meter.installed) ||
            (meter.removed && *at > *meter.removed)) {
            return false;
        }
        batch_.push_back({meter.id, at->time_since_epoch().count(), *value, 0,
                          static_cast<std::uint32_t>(row), static_cast<std::uint32_t>(last_),
                          static_cast<std::uint8_t>(ReadingKind::measured)});
        if (batch_.size() == batch_size) flush();
        return true;
    }

    static std::optional<Instant> plain_instant(std::string_view text, const Known& meter) {
        if (const auto instant = calendar::parse_instant(text)) return instant;
        const auto local = calendar::parse_local_time(text);
        if (!local) return std::nullopt;
        try {
            return meter.zone.to_instant(*local);
        } catch (const InputError&) {
            return std::nullopt;  // a time that spring skips
        }
    }

    /// The meter of the row; rows of one meter often follow each other.
    const Known* known(RowReader& row) {
        const std::string_view code = row.text("meter");
        if (last_ < meters_.size() && meters_[last_].code == code) return &meters_[last_];
        const auto found = index_.find(code);
        if (found != index_.end()) {
            last_ = found->second;
            return &meters_[last_];
        }
        const auto meter = store::find_meter(run_.book, std::string(code));
        if (!meter) {
            row.refuse("meter", code, meter_expected);
            return nullptr;
        }
        add_known(*meter);
        return &meters_.back();
    }

    void add_known(const meter::Meter& m) {
        const auto site = store::find_site(run_.book, m.site);
        const calendar::TimeZone zone(site->time_zone);
        Known k{store::meter_id(run_.book, m.code), m.code, zone, std::nullopt, std::nullopt,
                m.digits ? std::pow(10.0, *m.digits) : HUGE_VAL};
        for (const meter::Exchange& x : m.exchanges) {
            if (x.digits) k.most = std::max(k.most, std::pow(10.0, *x.digits));
        }
        if (m.installed) k.installed = zone.start_of_day(*m.installed);
        if (m.removed) k.removed = zone.start_of_day(*m.removed + std::chrono::days{1});
        last_ = meters_.size();
        index_.emplace(m.code, last_);
        meters_.push_back(std::move(k));
    }

    std::optional<Instant> instant(RowReader& row, std::string_view group, const Known* meter) {
        const auto written = row.needed_time(group);
        if (!written || meter == nullptr) return std::nullopt;
        if (written->instant) return written->instant;
        if (written->date_only) ++date_only_;
        try {
            return meter->zone.to_instant(*written->local);
        } catch (const InputError& e) {
            row.refuse(group, row.text(group), e.issues().front().expected);
            return std::nullopt;
        }
    }

    /// Length and end of the time that the row is about; length zero for a register.
    std::optional<std::pair<std::chrono::seconds, Instant>> read_span(RowReader& row,
                                                                      const Known* meter) {
        const std::string_view end_group = has_start_ ? "end" : "time";
        const auto end = instant(row, end_group, meter);
        std::chrono::seconds length{0};
        if (has_start_) {
            const auto start = instant(row, "start", meter);
            if (!start || !end) return std::nullopt;
            length = *end - *start;
        } else if (has_volume_) {
            if (row.text("minutes").empty()) row.refuse("minutes", "", phrase("exchange", "minutes above zero"));
            const auto minutes = row.number_within("minutes", 1.0 / 60, 600'000, phrase("exchange", "minutes above zero"));
            if (!minutes) return std::nullopt;
            length = std::chrono::seconds{std::lround(*minutes * 60)};
        }
        if (!end) return std::nullopt;
        if (has_volume_ && (length.count() <= 0 || length > longest_span)) {
            row.refuse(end_group, row.text(end_group), phrase("exchange", "an end after the start, by at most 400 days"));
        }
        if (meter->installed && *end - length < *meter->installed) {
            row.refuse(has_start_ ? "start" : end_group, row.text(has_start_ ? "start" : end_group),
                       {phrase("exchange", "a time not before meter %1 was installed (%2)"), meter->code,
                        calendar::format_date(meter->zone.day_of(*meter->installed))});
        }
        if (meter->removed && *end > *meter->removed) {
            row.refuse(end_group, row.text(end_group),
                       {phrase("exchange", "a time not after meter %1 was removed (%2)"), meter->code,
                        calendar::format_date(meter->zone.day_of(*meter->removed - std::chrono::seconds{1}))});
        }
        return std::pair(length, *end);
    }

    std::optional<double> read_value(RowReader& row, const Known* meter) {
        if (has_volume_) return row.needed_number("volume");
        const auto value = row.needed_number("register");
        if (!value || meter == nullptr) return value;
        if (*value < 0 || *value >= meter->most) {
            row.refuse("register", row.text("register"),
                       meter->most < HUGE_VAL
                           ? Sentence(phrase("exchange", "a register of zero or more, below %1"),
                                      units::format_shortest(meter->most))
                           : Sentence(phrase("exchange", "a register of zero or more")));
        }
        return value;
    }

    ReadingKind read_kind(RowReader& row) {
        const std::string_view kind = row.text("kind");
        if (kind.empty() || kind == "measured") return ReadingKind::measured;
        if (kind == "estimated") return ReadingKind::estimated;
        if (kind == "corrected") return ReadingKind::corrected;
        row.refuse("kind", kind, phrase("exchange", "measured, estimated or corrected"));
        return ReadingKind::measured;
    }

    void flush() {
        std::sort(batch_.begin(), batch_.end(),
                  [](const Pending& a, const Pending& b) { return a.key() < b.key(); });
        for (const Pending& p : batch_) store_one(p);
        batch_.clear();
    }

    void store_one(const Pending& p) {
        const Reading reading{Instant{std::chrono::seconds{p.at}}, std::chrono::seconds{p.span},
                              p.value, static_cast<ReadingKind>(p.kind)};
        const auto outcome = writer_.add(p.meter, reading, false);
        switch (outcome) {
            case ReadingWriter::Outcome::added: ++run_.result.added; return;
            case ReadingWriter::Outcome::unchanged: ++run_.result.unchanged; return;
            default: break;
        }
        if (run_.settle({run_.rows.file(), p.row, has_volume_ ? "volume" : "register"},
                        name_of(meters_[p.known].code, reading), text_of(writer_.in_book()), text_of(reading),
                        outcome == ReadingWriter::Outcome::superseded)) {
            writer_.add(p.meter, reading, true);
        }
    }

    static std::string name_of(const std::string& meter, const Reading& r) {
        const std::string end = calendar::format_instant(r.at);
        if (r.span.count() == 0) return Sentence(record_form::reading, meter, end).english();
        const std::string minutes = units::format_shortest(static_cast<double>(r.span.count()) / 60.0);
        return Sentence(record_form::volume, meter, minutes, end).english();
    }

    static std::string text_of(const Reading& r) {
        std::string text = units::format_shortest(r.value);
        if (r.kind == ReadingKind::estimated) text += ", estimated";
        if (r.kind == ReadingKind::corrected) text += ", corrected";
        return text;
    }

    ImportRun& run_;
    ReadingWriter writer_;
    bool has_register_;
    bool has_volume_;
    bool has_start_;
    bool plain_ = false;
    std::size_t meter_cell_ = 0;
    std::size_t time_cell_ = 0;
    std::size_t value_cell_ = 0;
    std::optional<std::size_t> kind_cell_;
    std::vector<Known> meters_;
    std::unordered_map<std::string, std::size_t, TextHash, std::equal_to<>> index_;
    std::size_t last_ = 0;
    std::vector<Pending> batch_;
    std::size_t date_only_ = 0;
};

}  // namespace

void import_readings(ImportRun& run) {
    ReadingImport import(run);
    run.each_row([&](RowReader& row) { import.take(row); });
    import.finish();
    std::sort(run.result.conflict_list.begin(), run.result.conflict_list.end(),
              [](const Conflict& a, const Conflict& b) { return a.place.row < b.place.row; });
}

}  // namespace evenfall::exchange
