// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/content/wrap.h"

#include "reports/content/utf8.h"

namespace evenfall::reports {
namespace {

class Wrapper {
  public:
    explicit Wrapper(std::size_t width) : width_(width == 0 ? 1 : width) {}

    void word(std::string word) {
        std::size_t n = length_in_characters(word);
        if (used_ > 0 && used_ + 1 + n > width_) end_line();
        while (n > width_) {
            std::size_t cut = 0;
            for (std::size_t i = 0; i < width_; ++i) cut += sequence_length(word, cut);
            lines_.push_back(word.substr(0, cut));
            word.erase(0, cut);
            n -= width_;
        }
        if (used_ > 0) {
            line_ += ' ';
            ++used_;
        }
        line_ += word;
        used_ += n;
    }

    void end_line() {
        lines_.push_back(line_);
        line_.clear();
        used_ = 0;
    }

    std::vector<std::string> take() {
        if (!line_.empty() || lines_.empty()) end_line();
        return std::move(lines_);
    }

  private:
    std::size_t width_;
    std::size_t used_ = 0;
    std::string line_;
    std::vector<std::string> lines_;
};

}  // namespace

std::vector<std::string> wrap(const std::string& text, std::size_t width) {
    Wrapper wrapper(width);
    std::size_t at = 0;
    while (at < text.size()) {
        if (text[at] == '\n') wrapper.end_line();
        if (text[at] == '\n' || text[at] == ' ' || text[at] == '\t') {
            ++at;
            continue;
        }
        std::size_t end = text.find_first_of(" \t\n", at);
        if (end == std::string::npos) end = text.size();
        wrapper.word(text.substr(at, end - at));
        at = end;
    }
    return wrapper.take();
}

}  // namespace evenfall::reports
