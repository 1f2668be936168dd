// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reports/print/page_flow.h"

#include <string>
#include <vector>

namespace evenfall::reports {

/// What Qt's PDF writer cannot do: bookmarks, a language, and bytes that are the same for the same
/// report. Dates become `created` (or go when it is empty) in the document information and in the
/// XMP packet, and the file identifier is computed from the content. Done with libqpdf.
/// @param pdf  as Qt wrote it
/// @throws std::runtime_error  when the file cannot be read or written
void finish_pdf(const std::string& pdf, const std::string& created,
                const std::vector<Bookmark>& bookmarks, const PageGeometry& geometry,
                const std::string& path);

}  // namespace evenfall::reports
