// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/workflow/whole_file.h"

#include <fstream>
#include <stdexcept>
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
            throw std::runtime_error(path.string() + " could not be written");
        }
    }
    std::filesystem::rename(part, path);
}

}  // namespace evenfall::workflow
