// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/row_source.h"

#include <cstddef>
#include <cstdint>
#include <cstdio>
#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// Reading CSV as a stream. RFC 4180 (2005) with these choices where it leaves one:
///   encoding    UTF-8 only, with or without a byte order mark; a row with other bytes is unfit
///   delimiter   comma, semicolon or tab, the one the header line has most of, or as told
///   line ends   LF or CRLF; a lone CR is an error
///   quotes      a quote inside a cell that does not start with one is an error
///   comments    lines that start with "#" before the header
///   empty lines, and rows whose cells are all empty, are skipped
///   end         the last line may lack its line end; if it then has fewer cells than the header,
///               or ends inside quotes, the file was cut and nothing of it can be trusted
/// Memory stays flat whatever the size of the file; a line or cell above the limit is refused as
/// soon as the limit is reached, without reading the rest.
/// Tests: tests/exchange/csv_reader_test.cpp
namespace evenfall::exchange {

struct CsvLimits {
    std::size_t cell = std::size_t{1} << 20U;  ///< bytes
    std::size_t line = std::size_t{4} << 20U;  ///< bytes, quoted line breaks included
    std::size_t columns = 4000;
};

class CsvReader final : public RowSource {
  public:
    /// Opens the file and reads its header.
    /// @param delimiter  or nothing, to tell it from the header
    /// @throws InputError for a file that cannot be opened, is empty, or has a header that cannot
    ///   be read (a column without a name, the same name twice, UTF-16)
    explicit CsvReader(const std::filesystem::path& path,
                       std::optional<char> delimiter = std::nullopt, CsvLimits limits = {});

    const std::string& file() const override { return file_; }
    const std::vector<std::string>& header() const override { return header_; }
    bool next() override;
    std::span<const std::string_view> cells() const override { return cells_; }
    std::size_t row() const override { return row_; }
    const std::optional<Issue>& row_issue() const override { return issue_; }
    double done() const override;
    std::vector<Sentence> notes() const override;

    char delimiter() const { return delimiter_; }

  private:
    struct Closer {
        void operator()(std::FILE* f) const noexcept { std::fclose(f); }
    };
    bool fill();
    bool read_record();
    void check_row();
    bool read_quoted(std::size_t& at);
    void read_plain(std::size_t& at);
    bool more_at(std::size_t at);
    void step_over();
    void close_cell(std::size_t begin, std::size_t end);
    void skip_comments();
    void tell_delimiter();
    void read_header();
    [[noreturn]] void fail(std::size_t line, Sentence found, Sentence expected) const;
    std::string_view record_text() const;

    std::string file_;
    std::unique_ptr<std::FILE, Closer> in_;
    CsvLimits limits_;
    char delimiter_ = ',';
    std::uint64_t size_ = 0;
    std::uint64_t read_ = 0;
    std::vector<char> buffer_;
    std::size_t begin_ = 0;  ///< of the record at hand
    std::size_t end_ = 0;    ///< of the bytes in the buffer
    std::size_t used_ = 0;   ///< bytes of the record at hand, without its line end
    bool at_end_ = false;    ///< of the file: nothing more to fill
    std::size_t line_ = 1;   ///< of the next byte to be read
    std::size_t row_ = 0;
    bool last_open_ = false;      ///< the record had no line end: it is the last one
    bool last_in_quotes_ = false;
    std::vector<std::string> header_;
    struct Piece {
        std::size_t begin;
        std::size_t end;
    };
    std::vector<Piece> pieces_;   ///< offsets from begin_: the buffer may move while reading
    std::vector<std::string_view> cells_;
    std::optional<Issue> issue_;
};

}  // namespace evenfall::exchange
