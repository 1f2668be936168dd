# SPDX-License-Identifier: GPL-3.0-or-later
# Writes OUT, a C++ file that holds each of FILES (relative to ROOT) as text.
set(body "// Made by schemas/embed.cmake; do not edit.\n#include \"schemas/schemas.h\"\n\n#include <array>\n#include <stdexcept>\n#include <string>\n\nnamespace evenfall::schemas {\nnamespace {\nstruct File { std::string_view name; std::string_view text; };\n")
set(count 0)
set(table "")
foreach(name IN LISTS FILES)
  file(READ "${ROOT}/${name}" text)
  string(APPEND body "constexpr char file_${count}[] = R\"_data_(${text})_data_\";\n")
  string(APPEND table "    File{\"${name}\", {file_${count}, sizeof file_${count} - 1}},\n")
  math(EXPR count "${count} + 1")
endforeach()
string(APPEND body "constexpr std::array<File, ${count}> files{{\n${table}}};\n}  // namespace\n\nstd::string_view text(std::string_view name) {\n    for (const File& f : files) {\n        if (f.name == name) return f.text;\n    }\n    throw std::logic_error(\"no schema file \" + std::string(name));\n}\n\nstd::vector<std::string_view> names(std::string_view folder) {\n    std::vector<std::string_view> found;\n    for (const File& f : files) {\n        if (f.name.starts_with(folder)) found.push_back(f.name);\n    }\n    return found;\n}\n}  // namespace evenfall::schemas\n")
file(WRITE "${OUT}" "${body}")
