// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/workflow/whole_file.h"

#include "core/sentence_error.h"

#include <fstream>
#include <system_error>

namespace evenfall::workflow {

void write_whole_file(const std::filesystem::path& path, std::string_view bytes) {
    std::filesystem::path part = path;
    part += ".part";
    {
        std::ofstream out(part, std::ios::binary | std::ios::trunc);
        out.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
        out.close();
        if (!out) {
            std::error_code ignored;
            std::filesystem::remove(part, ignored);
            throw SentenceError({phrase("workflow", "%1 could not be written"), path.string()});
        }
    }
    std::filesystem::rename(part, path);
}

}  // namespace evenfall::workflow
