// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/workflow/export.h"
#include "core/exchange/areas_geojson.h"

#include <string>
#include <vector>

/// What a map is told of each area, site by site, so that memory does not grow with the book. Units
/// stand in the names; what is not known is null. For export.cpp.
/// Tests: tests/app/export_command_test.cpp
namespace evenfall::workflow {

/// Writes a feature for every area of the book.
/// @param gaps  gets a sentence for each site whose season could not be worked out
void write_area_map(const store::Book& book, const ExportOrder& order, exchange::FeatureFile& file,
                    std::vector<std::string>& gaps);

}  // namespace evenfall::workflow
