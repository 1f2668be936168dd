// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/workflow/write_report.h"

#include "app/workflow/print_sibling.h"
#include "core/input_error.h"
#include "core/sentence_error.h"
#include "reports/text/report_json.h"
#include "reports/text/write_csv.h"
#include "reports/text/write_text.h"
#include "reports/xlsx/write_xlsx.h"

#include <algorithm>
#include <fstream>
#include <functional>

namespace evenfall::workflow {
namespace {

namespace fs = std::filesystem;

void write_whole(const fs::path& path, const std::function<void(std::ostream&)>& write) {
    fs::path part = path;
    part += ".part";
    {
        std::ofstream out(part, std::ios::binary | std::ios::trunc);
        write(out);
        out.close();
        if (!out) throw SentenceError({phrase("workflow", "cannot write %1"), path.string()});
    }
    fs::rename(part, path);
}

class Writer {
  public:
    Writer(const reports::Report& report, const ReportOrder& order)
        : report_(report), order_(order) {}

    void write(const std::string& format) {
        if (format == "xlsx") {
            const fs::path path = file(".xlsx");
            reports::write_xlsx(report_, path.string());
            written_.push_back(path);
        } else if (format == "csv") {
            csv();
        } else if (format == "txt") {
            text(".txt", reports::write_text(report_));
        } else if (format == "json") {
            text(".json", reports::write_json(report_));
        } else if (format == "pdf") {
            print(report_, {program(), format, order_.paper, file(".pdf")});
            written_.push_back(file(".pdf"));
        } else {
            images(format);
        }
    }

    std::vector<fs::path> take() { return std::move(written_); }

  private:
    fs::path file(const std::string& ending) const { return order_.directory / (order_.name + ending); }

    fs::path program() const {
        return order_.print_program.empty() ? print_program() : order_.print_program;
    }

    void text(const std::string& ending, const std::string& content) {
        write_whole(file(ending), [&](std::ostream& out) { out << content; });
        written_.push_back(file(ending));
    }

    void csv() {
        for (const reports::Table* table : report_.tables()) {
            text("-" + table->key + ".csv", reports::write_csv(*table));
        }
        for (const auto& raw : report_.raw_tables) {
            const fs::path path = file("-" + raw.key + ".csv");
            write_whole(path, [&](std::ostream& out) { reports::write_csv(raw, out); });
            written_.push_back(path);
        }
    }

    void images(const std::string& format) {
        const fs::path directory = file("-charts");
        fs::create_directories(directory);
        print(report_, {program(), format, order_.paper, directory});
        for (const auto& section : report_.sections) {
            for (const auto& block : section.blocks) {
                if (const auto* chart = std::get_if<reports::Chart>(&block)) {
                    written_.push_back(directory / (chart->key + "." + format));
                }
            }
        }
    }

    const reports::Report& report_;
    const ReportOrder& order_;
    std::vector<fs::path> written_;
};

}  // namespace

const std::vector<std::string>& report_formats() {
    static const std::vector<std::string> formats{"xlsx", "pdf", "csv", "txt", "json", "png", "svg"};
    return formats;
}

std::string file_name_of(const std::string& text) {
    std::string out;
    for (const char c : text) {
        const bool fit = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') ||
                         (c >= '0' && c <= '9') || c == '_';
        if (fit) {
            out += c;
        } else if (!out.empty() && out.back() != '-') {
            out += '-';
        }
    }
    while (!out.empty() && out.back() == '-') out.pop_back();
    if (out.size() > 80) out.resize(80);
    return out.empty() ? "report" : out;
}

std::vector<fs::path> write_report(const reports::Report& report, const ReportOrder& order) {
    const auto& known = report_formats();
    for (const auto& format : order.formats) {
        if (std::find(known.begin(), known.end(), format) == known.end()) {
            throw InputError(printable(format), phrase("workflow", "one of xlsx, pdf, csv, txt, json, png, svg"));
        }
    }
    if (order.paper != "letter" && order.paper != "a4") {
        throw InputError(printable(order.paper), phrase("workflow", "letter or a4"));
    }
    reports::check(report);
    fs::create_directories(order.directory);
    Writer writer(report, order);
    for (const auto& format : order.formats) writer.write(format);
    return writer.take();
}

}  // namespace evenfall::workflow
