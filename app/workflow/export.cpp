// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/workflow/export.h"

#include "app/workflow/area_map.h"
#include "core/input_error.h"
#include "core/sentence_error.h"
#include "core/store/snapshot.h"

#include <fstream>
#include <system_error>
#include <unistd.h>

namespace evenfall::workflow {
namespace {

namespace fs = std::filesystem;

/// A folder beside the one asked for, gone at the end unless it took that one's place.
class Draft {
  public:
    explicit Draft(fs::path place) : place_(std::move(place)), draft_(place_) {
        draft_ += ".part-" + std::to_string(::getpid());
        fs::remove_all(draft_);
        fs::create_directories(draft_);
    }
    ~Draft() {
        std::error_code ignored;
        if (!draft_.empty()) fs::remove_all(draft_, ignored);
    }
    Draft(const Draft&) = delete;
    Draft& operator=(const Draft&) = delete;

    const fs::path& folder() const { return draft_; }
    void put_in_place() {
        fs::rename(draft_, place_);  // over nothing, or over an empty folder
        draft_.clear();
    }

  private:
    fs::path place_;
    fs::path draft_;
};

/// "out/" and "out" are one folder.
fs::path without_slash(const fs::path& folder) { return folder.has_filename() ? folder : folder.parent_path(); }

void refuse_what_is_there(const fs::path& folder) {
    if (folder.empty()) throw InputError(phrase("workflow", "no folder"), phrase("workflow", "the name of a folder to make"));
    std::error_code error;
    if (!fs::exists(folder, error)) return;
    if (fs::is_directory(folder, error) && fs::is_empty(folder, error)) return;
    throw InputError(printable(folder.string(), 300),
                     phrase("workflow", "a folder that is not there yet or is empty; nothing is overwritten"));
}

/// A word for the shell, in single quotes where it needs them.
std::string shell_word(const std::string& text) {
    const bool plain = !text.empty() && text.find_first_not_of("abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ"
                                                               "0123456789._/-") == std::string::npos;
    if (plain && text.front() != '-') return text;
    std::string out = "'";
    for (const char c : text) out += c == '\'' ? std::string("'\\''") : std::string(1, c);
    return out + "'";
}

std::string rows_text(std::size_t rows) { return std::to_string(rows) + (rows == 1 ? " row" : " rows"); }

std::string contents_text(const ExportAnswer& answer) {
    std::string text =
        "A record book of Evenfall as tables. Values stand as they were typed, with every digit; the unit is\n"
        "in the name of the column. Times are UTC. A text that a spreadsheet would take for a formula has an\n"
        "apostrophe in front, which is taken off when the table is read back.\n\nTables\n";
    for (const auto& file : answer.tables.files) {
        text += "  " + file.name + "  " + file.kind + ", " + rows_text(file.rows) + "\n";
    }
    if (answer.tables.files.empty()) text += "  none: the book is empty\n";
    text += "\nTo read them back\n  evenfall new NEW.evenfall\n";
    if (!answer.tables.files.empty()) text += "  evenfall import NEW.evenfall *.csv\n";
    for (const auto& plan : answer.tables.plans) {
        text += "  evenfall overlap " + shell_word(plan.file) + " --keep-in NEW.evenfall --site " + shell_word(plan.site) +
                " --code " + shell_word(plan.code) + "\n";
    }
    if (answer.areas) {
        text += "\nMap\n  areas.geojson  " + std::to_string(*answer.areas) +
                " areas with their results; longitude and latitude, WGS 84 (RFC 7946). Results are worked out\n"
                "  when it is written and are not read back.\n";
        for (const auto& gap : answer.gaps) text += "  " + gap + "\n";
    }
    text += "\nNot in here\n";
    for (const auto& sentence : answer.tables.left_out) text += "  " + sentence + "\n";
    if (answer.tables.left_out.empty()) text += "  nothing that the book holds\n";
    return text;
}

void write_text(const fs::path& path, const std::string& text) {
    std::ofstream out(path, std::ios::binary | std::ios::trunc);
    out << text;
    out.close();
    if (!out) throw SentenceError({phrase("workflow", "cannot write %1"), path.string()});
}

}  // namespace

ExportAnswer export_to_folder(const store::Book& book, const ExportOrder& order,
                              const std::function<void(const std::string&)>& progress) {
    const fs::path folder = without_slash(order.folder);
    refuse_what_is_there(folder);
    if (order.period) {
        // Said before anything is written, not once for each site.
        static_cast<void>(program_named(order.period->program));
        static_cast<void>(weather::parse_rain_rule(order.period->rain));
        if (order.period->to < order.period->from) {
            throw InputError({phrase("workflow", "%1 to %2"), calendar::format_month(order.period->from),
                              calendar::format_month(order.period->to)},
                             phrase("workflow", "months in order, the first one first"));
        }
    }
    const store::Snapshot all_at_once(book);
    Draft draft(folder);
    ExportAnswer answer;
    answer.tables = exchange::export_book(book, draft.folder(), progress);
    if (order.areas_geojson) {
        if (progress) progress("map of areas");
        exchange::FeatureFile file(draft.folder() / "areas.geojson");
        write_area_map(book, order, file, answer.gaps);
        file.close();
        answer.areas = file.features();
    }
    write_text(draft.folder() / "CONTENTS.txt", contents_text(answer));
    draft.put_in_place();
    return answer;
}

}  // namespace evenfall::workflow
