// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <cstddef>
#include <exception>
#include <thread>
#include <vector>

namespace evenfall::stats {

/// Runs work(begin, end) over [0, n) cut into one piece per thread. No lock is taken; the pieces
/// must write to places of their own. The first exception of the lowest piece is rethrown here.
/// @param threads  0: as many as the machine has
/// Tests: tests/stats/random_test.cpp
template <class Work>
void in_pieces(std::size_t n, unsigned threads, const Work& work) {
    if (threads == 0) threads = std::max(1U, std::thread::hardware_concurrency());
    const std::size_t pieces = std::max<std::size_t>(1, std::min<std::size_t>(threads, n));
    if (pieces == 1) {
        work(std::size_t{0}, n);
        return;
    }
    std::vector<std::exception_ptr> failures(pieces);
    const auto guarded = [&](std::size_t piece) {
        try {
            work(piece * n / pieces, (piece + 1) * n / pieces);
        } catch (...) {
            failures[piece] = std::current_exception();
        }
    };
    {
        std::vector<std::jthread> others;
        for (std::size_t piece = 1; piece < pieces; ++piece) others.emplace_back(guarded, piece);
        guarded(0);
    }
    for (const auto& failure : failures) {
        if (failure) std::rethrow_exception(failure);
    }
}

}  // namespace evenfall::stats
