// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <functional>
#include <list>
#include <unordered_map>
#include <utility>
#include <vector>

/// Rows of a long list, fetched a page at a time as they come into view; a few pages are kept.
/// Tests: tests/app/desktop_window_test.cpp, tests/app/desktop_conflicts_test.cpp
namespace evenfall::desktop {

template <class Row>
class RowPages {
  public:
    static constexpr std::int64_t page_size = 512;
    static constexpr std::size_t pages_kept = 24;
    /// The rows of the page with that number, counted from 0.
    using Fetch = std::function<std::vector<Row>(std::int64_t page)>;

    explicit RowPages(Fetch fetch) : fetch_(std::move(fetch)) {}

    /// Valid until the next call; null where there is no such row.
    const Row* row(std::int64_t at) {
        const std::int64_t number = at / page_size;
        auto page = pages_.find(number);
        if (page == pages_.end()) {
            if (recent_.size() == pages_kept) {
                pages_.erase(recent_.back());
                recent_.pop_back();
            }
            ++fetches_;
            page = pages_.emplace(number, fetch_(number)).first;
            recent_.push_front(number);
        }
        const auto place = static_cast<std::size_t>(at % page_size);
        return place < page->second.size() ? &page->second[place] : nullptr;
    }
    /// How often a page was fetched: for tests.
    int fetches() const { return fetches_; }

  private:
    Fetch fetch_;
    std::list<std::int64_t> recent_;  ///< pages, the newest first
    std::unordered_map<std::int64_t, std::vector<Row>> pages_;
    int fetches_ = 0;
};

}  // namespace evenfall::desktop
