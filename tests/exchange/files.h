// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <atomic>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <string_view>

#include <unistd.h>

/// Files for one test, gone when it ends.
namespace evenfall::tests {

class Folder {
  public:
    Folder() {
        static std::atomic<int> next{0};
        path_ = std::filesystem::temp_directory_path() /
                ("evenfall-" + std::to_string(::getpid()) + "-" + std::to_string(next++));
        std::filesystem::create_directories(path_);
    }
    ~Folder() {
        std::error_code ignored;
        std::filesystem::permissions(path_, std::filesystem::perms::owner_all, ignored);
        std::filesystem::remove_all(path_, ignored);
    }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;

    const std::filesystem::path& path() const { return path_; }
    std::filesystem::path operator/(const std::string& name) const { return path_ / name; }
    std::filesystem::path write(const std::string& name, std::string_view text) const {
        std::ofstream out(path_ / name, std::ios::binary);
        out.write(text.data(), static_cast<std::streamsize>(text.size()));
        return path_ / name;
    }

  private:
    std::filesystem::path path_;
};

inline std::string bytes_of(const std::filesystem::path& path) {
    std::ifstream in(path, std::ios::binary);
    std::ostringstream out;
    out << in.rdbuf();
    return out.str();
}

}  // namespace evenfall::tests
