// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/json_screen.h"

#include "core/input_error.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <fstream>
#include <set>
#include <vector>

namespace evenfall::exchange {
namespace {

constexpr std::size_t deepest = 32;

/// Listens to the parser; returning false ends it.
class Screen {
  public:
    Screen(std::string_view text, const std::string& file, std::initializer_list<JsonLimit> limits)
        : text_(text), file_(file), limits_(limits) {}

    bool null() { return value(); }
    bool boolean(bool) { return value(); }
    bool number_integer(std::int64_t) { return value(); }
    bool number_unsigned(std::uint64_t) { return value(); }
    bool number_float(double, const std::string&) { return value(); }
    bool string(std::string&) { return value(); }
    bool binary(nlohmann::json::binary_t&) { return value(); }

    bool start_object(std::size_t) {
        if (!value()) return false;
        keys_.emplace_back();
        return descend();
    }
    bool end_object() {
        keys_.pop_back();
        --depth_;
        return true;
    }
    bool start_array(std::size_t) {
        if (!value()) return false;
        keys_.emplace_back();
        if (depth_ == 1) counted_ = 0;
        return descend();
    }
    bool end_array() { return end_object(); }

    bool key(std::string& name) {
        if (!keys_.back().insert(name).second) {
            issue_ = {{file_, 0, printable(name)}, phrase("exchange", "a key that stands twice in one object"),
                      phrase("exchange", "each key once")};
            return false;
        }
        if (depth_ == 1) top_ = name;
        return true;
    }

    bool parse_error(std::size_t position, const std::string& token,
                     const nlohmann::detail::exception& error) {
        const std::size_t at = std::min(position == 0 ? 0 : position - 1, text_.size());
        const auto before = text_.substr(0, at);
        const auto row = static_cast<std::size_t>(std::count(before.begin(), before.end(), '\n')) + 1;
        const std::size_t line = before.rfind('\n');
        const std::size_t column = at - (line == std::string_view::npos ? 0 : line + 1) + 1;
        // 406: a number beyond any double; the others are faults of the text.
        const bool number = error.id == 406;
        issue_ = {{file_, row, "character " + std::to_string(column)},
                  token.empty() ? Sentence(phrase("exchange", "the end of the file")) : Sentence(printable(token, 40)),
                  number ? phrase("exchange", "a finite number") : phrase("exchange", "JSON in UTF-8")};
        if (at >= text_.size()) issue_.expected = Sentence(phrase("exchange", "%1; the file may be cut short"), issue_.expected);
        return false;
    }

    const Issue& issue() const { return issue_; }

  private:
    bool descend() {
        if (++depth_ <= deepest) return true;
        issue_ = {{file_, 0, top_}, phrase("exchange", "values nested more than 32 deep"), phrase("exchange", "a flatter file")};
        return false;
    }

    bool value() {
        ++values_;
        if (depth_ == 2) ++counted_;
        for (const JsonLimit& limit : limits_) {
            const bool whole = limit.key.empty();
            const std::size_t count = whole ? values_ : depth_ == 2 && top_ == limit.key ? counted_ : 0;
            if (count > limit.most) {
                issue_ = {{file_, 0, std::string(limit.key)},
                          whole ? Sentence(phrase("exchange", "more than %1 values"), limit.most)
                                : Sentence(phrase("exchange", "more than %1 entries"), limit.most),
                          {phrase("exchange", "at most %1"), limit.most}};
                return false;
            }
        }
        return true;
    }

    std::string_view text_;
    const std::string& file_;
    std::vector<JsonLimit> limits_;
    std::vector<std::set<std::string>> keys_;
    std::string top_;
    std::size_t depth_ = 0;
    std::size_t values_ = 0;
    std::size_t counted_ = 0;
    Issue issue_;
};

}  // namespace

void screen_json(std::string_view text, const std::string& file, std::initializer_list<JsonLimit> limits) {
    Screen screen(text, file, limits);
    if (!nlohmann::json::sax_parse(text.data(), text.data() + text.size(), &screen)) {
        throw InputError(screen.issue());
    }
}

std::string read_text_file(const std::filesystem::path& path, std::size_t most,
                           const Sentence& expected) {
    const std::string name = path.filename().string();
    std::ifstream in(path, std::ios::binary);
    if (!in || std::filesystem::is_directory(path)) {
        throw InputError(Issue{{name, 0, ""}, phrase("exchange", "no readable file"), phrase("exchange", "the path of a file")});
    }
    std::string text;
    std::vector<char> block(1U << 20U);
    while (in) {
        in.read(block.data(), static_cast<std::streamsize>(block.size()));
        text.append(block.data(), static_cast<std::size_t>(in.gcount()));
        if (text.size() > most) {
            throw InputError(Issue{{name, 0, ""}, {phrase("exchange", "a file of more than %1 MiB"), most >> 20U}, expected});
        }
    }
    if (in.bad()) {
        throw InputError(Issue{{name, 0, ""}, phrase("exchange", "a file that cannot be read to its end"),
                               phrase("exchange", "a sound file")});
    }
    return text;
}

}  // namespace evenfall::exchange
