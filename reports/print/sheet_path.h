// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPainterPath>

#include <string>

namespace evenfall::reports {

/// The path data of a sheet: M and L with one point, l with a step, A with equal radii, Z (SVG 1.1,
/// section 8.3). @throws InputError for anything else
/// Tests: tests/reports/sheet_test.cpp
QPainterPath sheet_path(const std::string& data);

}  // namespace evenfall::reports
