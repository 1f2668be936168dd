// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv_reader.h"

#include "core/exchange/system_words.h"
#include "core/exchange/utf8.h"

#include <algorithm>
#include <cerrno>
#include <cstring>
#include <system_error>
#include <utility>

namespace evenfall::exchange {
namespace {

constexpr std::size_t chunk = std::size_t{1} << 18U;

std::string trimmed(std::string_view s) {
    const auto blank = [](char c) { return c == ' ' || c == '\t'; };
    while (!s.empty() && blank(s.front())) s.remove_prefix(1);
    while (!s.empty() && blank(s.back())) s.remove_suffix(1);
    return std::string(s);
}

}  // namespace

CsvReader::CsvReader(const std::filesystem::path& path, std::optional<char> delimiter,
                     CsvLimits limits)
    : file_(path.string()), limits_(limits) {
    std::error_code error;
    if (std::filesystem::is_directory(path, error)) fail(0, phrase("exchange", "a folder"), phrase("exchange", "a CSV file"));
    in_.reset(std::fopen(path.c_str(), "rb"));
    if (!in_) fail(0, system_words(errno), phrase("exchange", "a file that can be read"));
    std::setvbuf(in_.get(), nullptr, _IONBF, 0);  // we read in large pieces ourselves
    const auto size = std::filesystem::file_size(path, error);
    size_ = error ? 0 : size;
    buffer_.resize(2 * chunk);
    fill();
    skip_comments();
    if (delimiter) {
        delimiter_ = *delimiter;
    } else {
        tell_delimiter();
    }
    read_header();
}

void CsvReader::fail(std::size_t line, Sentence found, Sentence expected) const {
    throw InputError(Issue{{file_, line, ""}, std::move(found), std::move(expected)});
}

/// Brings more bytes behind end_, moving the record at hand to the front when room is short.
bool CsvReader::fill() {
    if (at_end_) return false;
    if (buffer_.size() - end_ < chunk) {
        if (begin_ > 0) {
            std::memmove(buffer_.data(), buffer_.data() + begin_, end_ - begin_);
            end_ -= begin_;
            begin_ = 0;
        }
        if (end_ > limits_.line) {
            fail(line_, std::string(buffer_.data(), 60),
                 {phrase("exchange", "a line of at most %1 bytes; this is no table"), limits_.line});
        }
        if (buffer_.size() - end_ < chunk) buffer_.resize(buffer_.size() * 2);
    }
    const std::size_t got = std::fread(buffer_.data() + end_, 1, chunk, in_.get());
    if (got == 0) {
        if (std::ferror(in_.get()) != 0) fail(line_, system_words(errno), phrase("exchange", "a file that can be read"));
        at_end_ = true;
        return false;
    }
    end_ += got;
    read_ += got;
    return true;
}

/// True when the buffer holds the byte `at` (an offset from begin_).
bool CsvReader::more_at(std::size_t at) {
    if (begin_ + at < end_) return true;
    return fill();
}

void CsvReader::skip_comments() {
    const auto starts = [&](std::string_view mark) {
        return std::string_view(buffer_.data() + begin_, end_ - begin_).starts_with(mark);
    };
    if (starts("\xFF\xFE") || starts("\xFE\xFF")) {
        fail(1, phrase("exchange", "UTF-16 text"), phrase("exchange", "UTF-8 text; save the table as \"CSV UTF-8\""));
    }
    if (starts("PK\x03\x04")) {
        fail(1, phrase("exchange", "a packed file"), phrase("exchange", "CSV text; a workbook needs its ending .xlsx or .ods"));
    }
    if (starts("\xEF\xBB\xBF")) begin_ += 3;
    while (more_at(0) && (buffer_[begin_] == '#' || buffer_[begin_] == '\n' ||
                          buffer_[begin_] == '\r')) {
        std::size_t at = 0;
        while (more_at(at) && buffer_[begin_ + at] != '\n') ++at;
        if (!more_at(at)) {
            begin_ = end_;
            break;
        }
        begin_ += at + 1;
        ++line_;
    }
    if (!more_at(0)) fail(0, phrase("exchange", "an empty file"), phrase("exchange", "a header line and at least one row"));
}

void CsvReader::tell_delimiter() {
    std::size_t commas = 0;
    std::size_t semicolons = 0;
    std::size_t tabs = 0;
    bool quoted = false;
    for (std::size_t at = 0; more_at(at); ++at) {
        const char c = buffer_[begin_ + at];
        if (c == '\n') break;
        if (c == '"') quoted = !quoted;
        if (quoted) continue;
        commas += c == ',' ? 1U : 0U;
        semicolons += c == ';' ? 1U : 0U;
        tabs += c == '\t' ? 1U : 0U;
    }
    delimiter_ = ',';
    if (semicolons > commas && semicolons >= tabs) delimiter_ = ';';
    if (tabs > commas && tabs > semicolons) delimiter_ = '\t';
}

void CsvReader::read_header() {
    if (!read_record()) fail(0, phrase("exchange", "an empty file"), phrase("exchange", "a header line and at least one row"));
    if (last_in_quotes_) fail(row_, std::string(record_text()), phrase("exchange", "a header line with closed quotes"));
    for (const Piece& p : pieces_) {
        const std::string_view cell(buffer_.data() + begin_ + p.begin, p.end - p.begin);
        if (first_bad_byte(cell) != std::string_view::npos) {
            fail(row_, std::string(cell), phrase("exchange", "UTF-8 text; save the table as \"CSV UTF-8\""));
        }
        std::string name = trimmed(cell);
        if (name.empty()) {
            fail(row_, {phrase("exchange", "column %1 without a name"), header_.size() + 1},
                 phrase("exchange", "a name for each column"));
        }
        if (std::find(header_.begin(), header_.end(), name) != header_.end()) {
            fail(row_, name, phrase("exchange", "each column once"));
        }
        header_.push_back(std::move(name));
    }
    step_over();
}

void CsvReader::close_cell(std::size_t begin, std::size_t end) {
    if (end - begin > limits_.cell) {
        fail(line_, std::string(buffer_.data() + begin_ + begin, 60),
             {phrase("exchange", "a cell of at most %1 bytes"), limits_.cell});
    }
    if (pieces_.size() >= limits_.columns) {
        fail(line_, {phrase("exchange", "more than %1 cells"), limits_.columns}, phrase("exchange", "a narrower table"));
    }
    pieces_.push_back({begin, end});
}

/// A cell that does not start with a quote, up to the delimiter or the end of the line.
void CsvReader::read_plain(std::size_t& at) {
    const std::size_t begin = at;
    while (more_at(at)) {
        const char* p = buffer_.data() + begin_ + at;
        const char* const stop = buffer_.data() + end_;
        const char d = delimiter_;
        while (p != stop && *p != d && *p != '\n' && *p != '"') ++p;
        at = static_cast<std::size_t>(p - buffer_.data()) - begin_;
        if (at - begin > limits_.cell) close_cell(begin, at);
        if (p == stop) continue;
        if (*p == '"') {
            fail(line_, std::string(buffer_.data() + begin_ + begin, at - begin + 1),
                 phrase("exchange", "quotes around a whole cell, and doubled inside it"));
        }
        break;
    }
    std::size_t end = at;
    const bool at_line_end = begin_ + at >= end_ || buffer_[begin_ + at] == '\n';
    if (at_line_end && end > begin && buffer_[begin_ + end - 1] == '\r') --end;
    if (std::memchr(buffer_.data() + begin_ + begin, '\r', end - begin) != nullptr) {
        fail(line_, std::string(buffer_.data() + begin_ + begin, std::min<std::size_t>(end - begin, 60)),
             phrase("exchange", "lines that end in LF or CRLF; this one has a lone CR"));
    }
    close_cell(begin, end);
}

/// A quoted cell; its text is moved together in place. False when the file ends inside it.
bool CsvReader::read_quoted(std::size_t& at) {
    ++at;
    const std::size_t begin = at;
    std::size_t write = at;
    while (true) {
        if (!more_at(at)) {
            pieces_.push_back({begin, write});
            return false;
        }
        const char c = buffer_[begin_ + at];
        if (c == '"') {
            ++at;
            if (more_at(at) && buffer_[begin_ + at] == '"') {
                buffer_[begin_ + write++] = '"';
                ++at;
                continue;
            }
            break;
        }
        if (c == '\n') ++line_;
        if (write - begin > limits_.cell) break;
        buffer_[begin_ + write++] = c;
        ++at;
    }
    close_cell(begin, write);
    if (more_at(at) && buffer_[begin_ + at] == '\r' && more_at(at + 1) &&
        buffer_[begin_ + at + 1] == '\n') {
        ++at;
        return true;
    }
    if (more_at(at) && buffer_[begin_ + at] != delimiter_ && buffer_[begin_ + at] != '\n') {
        fail(line_, std::string(buffer_.data() + begin_ + begin, write - begin),
             phrase("exchange", "a delimiter or the end of the line after a closing quote"));
    }
    return true;
}

/// Moves on behind the record at hand and its line end. The bytes of its cells stay in place.
void CsvReader::step_over() {
    while (more_at(used_)) {
        if (buffer_[begin_ + used_++] != '\n') continue;
        ++line_;
        break;
    }
    begin_ += used_;
    used_ = 0;
}

/// Reads one record into pieces_, without its line end. False at the end of the file.
bool CsvReader::read_record() {
    pieces_.clear();
    last_in_quotes_ = false;
    if (!more_at(0)) return false;
    row_ = line_;
    std::size_t at = 0;
    while (true) {
        if (more_at(at) && buffer_[begin_ + at] == '"') {
            if (!read_quoted(at)) {
                last_in_quotes_ = last_open_ = true;
                used_ = at;
                return true;
            }
        } else {
            read_plain(at);
        }
        if (!more_at(at)) {
            last_open_ = true;
            used_ = at;
            return true;
        }
        if (buffer_[begin_ + at] != delimiter_) {  // a line end
            used_ = at;
            return true;
        }
        ++at;
    }
}

std::string_view CsvReader::record_text() const {
    if (pieces_.empty()) return {};
    return {buffer_.data() + begin_, std::min<std::size_t>(pieces_.back().end, 200)};
}

bool CsvReader::next() {
    issue_.reset();
    cells_.clear();
    const auto is_empty = [](const Piece& p) { return p.begin == p.end; };
    while (true) {
        if (last_open_ || !read_record()) return false;
        if (last_in_quotes_ || (last_open_ && pieces_.size() < header_.size())) {
            fail(row_, std::string(record_text()),
                 phrase("exchange", "a whole row; the file ends in the middle of this one, so it was cut short"));
        }
        if (!std::all_of(pieces_.begin(), pieces_.end(), is_empty)) break;
        step_over();
    }
    for (const Piece& p : pieces_) {
        cells_.emplace_back(buffer_.data() + begin_ + p.begin, p.end - p.begin);
    }
    check_row();
    if (!last_open_) step_over();  // its line end is in the buffer, so no cell moves
    return true;
}

void CsvReader::check_row() {
    if (cells_.size() != header_.size()) {
        issue_ = Issue{{file_, row_, ""},
                       {phrase("exchange", "%1 cells"), cells_.size()},
                       {phrase("exchange", "%1 cells as in the header"), header_.size()}};
        return;
    }
    if (first_bad_byte({buffer_.data() + begin_, used_}) == std::string_view::npos) return;
    for (std::size_t i = 0; i < cells_.size() && !issue_; ++i) {
        if (first_bad_byte(cells_[i]) != std::string_view::npos) {
            issue_ = Issue{{file_, row_, header_[i]}, std::string(cells_[i]), phrase("exchange", "UTF-8 text")};
        }
    }
}

double CsvReader::done() const {
    if (size_ == 0) return 1.0;
    return std::min(1.0, static_cast<double>(read_ - (end_ - begin_)) / static_cast<double>(size_));
}

std::vector<Sentence> CsvReader::notes() const {
    if (!last_open_) return {};
    return {Sentence(phrase("exchange", "%1: the last line has no line end. If the file was cut short, its last value "
                                        "is too; compare it with the source."), file_)};
}

}  // namespace evenfall::exchange
