// SPDX-License-Identifier: MIT
#include "cli/world.hpp"

#include <sys/auxv.h>
#include <unistd.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <system_error>

namespace pelt::cli {
namespace {

std::optional<std::string> variable(const char* name) {
    const char* value = std::getenv(name);
    return value == nullptr ? std::nullopt : std::optional<std::string>(value);
}

std::string folder_of_program() {
    namespace fs = std::filesystem;
    std::error_code error;
    fs::path program = fs::read_symlink("/proc/self/exe", error);
    if (error) { // a bare root has no /proc, but the kernel tells the path that was started
        const auto* started = reinterpret_cast<const char*>(::getauxval(AT_EXECFN));
        error.clear();
        program = started == nullptr ? fs::path() : fs::canonical(started, error);
    }
    return error ? std::string() : program.parent_path().string();
}

} // namespace

bool speaks_utf8(const World& world) {
    for (const char* name : {"LC_ALL", "LC_CTYPE", "LANG"}) {
        std::string value = world.variable(name).value_or("");
        if (value.empty())
            continue;
        std::transform(value.begin(), value.end(), value.begin(),
                       [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c; });
        return value.find("utf-8") != std::string::npos || value.find("utf8") != std::string::npos;
    }
    return false;
}

World real_world() {
    return {variable, ::isatty(STDIN_FILENO) == 1, ::isatty(STDOUT_FILENO) == 1,
            ::isatty(STDERR_FILENO) == 1, folder_of_program()};
}

} // namespace pelt::cli
