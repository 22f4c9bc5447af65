// SPDX-License-Identifier: MIT
#include "cli/modeline.hpp"

#include <algorithm>
#include <filesystem>
#include <string_view>
#include <system_error>

namespace pelt::cli {
namespace {

namespace fs = std::filesystem;

/// What language servers for YAML look for, whatever editor they serve.
constexpr std::string_view mark = "# yaml-language-server: $schema=";

} // namespace

std::string with_schema_found(const Source& file) {
    if (file.text.rfind(mark, 0) != 0 || file.name == "-")
        return file.text;
    const std::size_t end = std::min(file.text.find_first_of("\r\n"), file.text.size());
    const fs::path named(file.text.substr(mark.size(), end - mark.size()));
    std::error_code error;
    const fs::path folder = fs::absolute(fs::path(file.name).parent_path(), error);
    const fs::path schema = (folder / named).lexically_normal();
    if (error || named.is_absolute() || !fs::is_regular_file(schema, error))
        return file.text;
    return std::string(mark) + schema.string() + file.text.substr(end);
}

} // namespace pelt::cli
