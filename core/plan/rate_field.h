// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/raster.h"
#include "core/plan/sprinkler.h"

#include <cstdint>
#include <map>
#include <optional>
#include <span>
#include <tuple>
#include <vector>

/// The rate of application at every cell centre when all heads run, mm/h, and how many heads reach
/// each cell.
///
/// Each head is painted row by row: the run of cells inside its circle and arc is found exactly, and
/// the rate comes from its profile tabulated in 256 steps. A profile that does not end at zero is
/// softened over one cell at the end of the throw. The table is scaled so that its own integral is
/// the head's flow. A part circle, or any head with fewer than 24 cells to its radius, is then scaled
/// once more so that its cells add up to its flow, since a straight edge can cut a row of cells on
/// the wrong side; the largest such correction is reported. So water is conserved at any cell size.
/// Cells are single precision: 5,000 overlapping heads lose less than 1e-6 of the total that way.
///
/// Threads: bands of rows, the heads added to each cell in one fixed order, so the result is the
/// same to the bit for any number of threads. Not for use by two callers at once.
/// Tests: tests/plan/rate_field_test.cpp. Speed: tests/bench/overlap_bench.cpp
namespace evenfall::plan {

/// A block of cells, the last ones included.
struct CellBlock {
    int first_column = 0, last_column = -1;
    int first_row = 0, last_row = -1;
};

class RateField {
  public:
    /// @throws InputError  an arc so narrow that it holds no cell centre
    RateField(Sprinklers all, const PatternMap& map, const Raster& raster, unsigned threads);

    RateField(RateField&&) noexcept;
    RateField& operator=(RateField&&) noexcept;
    ~RateField();

    const Raster& raster() const { return raster_; }
    const Sprinklers& sprinklers() const { return all_; }
    const PatternMap& map() const { return map_; }
    /// mm/h, row by row from the south.
    std::span<const float> rates() const { return rates_; }
    /// Heads whose circle and arc hold the cell centre, whatever their rate there.
    std::span<const std::uint16_t> counts() const { return counts_; }
    /// Largest |factor - 1| by which a head was scaled to keep its flow on this raster.
    double largest_correction() const;

    /// Paints all rates, or all counts, again.
    void repaint(unsigned threads);
    void recount(unsigned threads);

    /// Puts another head in place of one and repaints only what the two reach; the field is then
    /// the same to the bit as one made anew.
    /// @return the cells that changed; nothing, and no change, when the new head reaches beyond the
    ///         raster and a new field is needed
    std::optional<CellBlock> replace(std::size_t head, const Sprinkler& with);

  private:
    struct Painted;
    using TableKey = std::tuple<std::size_t, double>;

    const std::vector<float>& table_for(std::size_t profile, double softened_share);
    Painted prepare(const Sprinkler& head);
    void paint(const CellBlock& block);
    void paint_counts(const CellBlock& block);
    void sort_heads();

    Sprinklers all_;
    PatternMap map_;
    Raster raster_;
    std::vector<float> rates_;
    std::vector<std::uint16_t> counts_;
    std::map<TableKey, std::vector<float>> tables_;
    std::vector<Painted> painted_;      ///< in plan order
    std::vector<std::size_t> order_;    ///< from south to north, then plan order
};

}  // namespace evenfall::plan
